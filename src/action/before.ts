import { EventFiles } from '../cli/event-disk.ts';
import type { EventDisk } from '../event.ts';
import { Problem } from '../problem.ts';
import type { PlaceSet } from './places.ts';

/**
 * An event's files as they were: those that changed from a folder in which they were laid out as they were before,
 * all others as they are now.
 */
export class FilesBefore implements EventDisk {
  private readonly now: EventFiles;
  private readonly before: EventFiles;
  private readonly changed: PlaceSet;

  /**
   * @param root the event's folder in the folder that holds what changed as it was
   * @param changed paths, from the event's folder, of what is not as it was
   */
  constructor(now: EventFiles, root: string, changed: PlaceSet) {
    this.now = now;
    this.before = new EventFiles(root, now.terms);
    this.changed = changed;
  }

  readText(place: string): ReturnType<EventDisk['readText']> {
    return this.of(place).readText(place);
  }

  readTerms(place: string): ReturnType<EventDisk['readTerms']> {
    return this.now.terms === this.now.root ? this.readText(place) : this.now.readTerms(place);
  }

  whyNot(place: string): ReturnType<EventDisk['whyNot']> {
    return this.of(place).whyNot(place);
  }

  isOtherTable(place: string): Promise<boolean> {
    return this.of(place).isOtherTable(place);
  }

  async filesBelow(folder: string): Promise<readonly string[]> {
    const [now, before] = await Promise.all([below(this.now, folder), below(this.before, folder)]);
    return [...now.filter((place) => !this.changed.holds(place)), ...before];
  }

  private of(place: string): EventFiles {
    return this.changed.holds(place) ? this.before : this.now;
  }
}

async function below(files: EventFiles, folder: string): Promise<readonly string[]> {
  try {
    return await files.filesBelow(folder);
  } catch (error) {
    if (error instanceof Problem && error.code === 'file-missing') return [];
    throw error;
  }
}
