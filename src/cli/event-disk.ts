import { lstat } from 'node:fs/promises';
import path from 'node:path';
import { isRecordingName } from '../event/match.ts';
import type { EventDisk } from '../event.ts';
import {
  checksum,
  checksumSafely,
  filesBelow,
  limits,
  readFileSafely,
  refuseOutside,
} from '../files/index.ts';
import { Problem } from '../problem.ts';
import { decodeText, holdsOtherTable, memberNames, openMember } from '../read/index.ts';
import type { NamedBytes } from '../types.ts';
import { withoutWritten } from './event-folders.ts';

/** A path that goes on into a ZIP as if it were a folder. */
interface Located {
  readonly file: string;
  readonly member: string | null;
}

/** The files of an event, none outside its folder and none behind a link. */
export class EventFiles implements EventDisk {
  readonly root: string;
  /** The folder with the event file and what it names: results, rules. Another one where the event's is not to be trusted. */
  readonly terms: string;
  /** The archive opened last: riders of one ZIP come one after the other. */
  private archive: { readonly file: string; readonly bytes: Promise<Uint8Array> } | null = null;

  /** What was read for the plan: an event may be planned twice, as it is and as it was. */
  private readonly texts = new Map<string, Promise<{ text: string; sha256: string }>>();
  private readonly folders = new Map<string, Promise<readonly string[]>>();

  constructor(root: string, terms = root) {
    this.root = root;
    this.terms = terms;
  }

  readText(place: string): Promise<{ text: string; sha256: string }> {
    return once(this.texts, place, async () => {
      const { bytes } = await this.read(place, limits.factsBytes);
      return { text: decodeText(bytes), sha256: checksum(bytes) };
    });
  }

  readTerms(place: string): ReturnType<EventFiles['readText']> {
    return this.terms === this.root ? this.readText(place) : new EventFiles(this.terms).readText(place);
  }

  /** Files that the plan rests on, where they lie: results and facts. */
  textsRead(): readonly string[] {
    return [...this.texts.keys()].map((place) => this.full(place));
  }

  /** The bytes of a file, or of a member of a ZIP. @throws Problem */
  async read(place: string, most: number = limits.recordingBytes): Promise<NamedBytes> {
    const { file, member } = await this.locate(place);
    const name = place.split('/').at(-1)!;
    if (member === null) {
      const { bytes } = await readFileSafely(this.full(file), { most, root: this.root, shown: place });
      return { name, bytes };
    }
    const bytes = await openMember(await this.open(file), member).catch(placed(place));
    if (bytes === null) throw missing(place);
    return { name, bytes };
  }

  /** SHA-256 of the same bytes, which are not kept. @throws Problem */
  async checksum(place: string, most: number = limits.recordingBytes): Promise<string> {
    const { file, member } = await this.locate(place);
    if (member !== null) return checksum((await this.read(place, most)).bytes);
    return checksumSafely(this.full(file), { most, root: this.root, shown: place });
  }

  async whyNot(place: string): Promise<Problem | null> {
    try {
      const { file, member } = await this.locate(place);
      await refuseOutside(this.root, this.full(file));
      const there = await lstat(this.full(file)).catch(() => null);
      if (there === null) return missing(place);
      if (member === null) return null;
      return memberNames(await this.open(file)).includes(member) ? null : missing(place);
    } catch (error) {
      if (error instanceof Problem) return error;
      throw error;
    }
  }

  filesBelow(folder: string): Promise<readonly string[]> {
    return once(this.folders, folder, () => this.look(folder));
  }

  private async look(folder: string): Promise<readonly string[]> {
    await refuseOutside(this.root, this.full(folder));
    const prefix = folder === '.' ? '' : `${folder.replace(/\/+$/, '')}/`;
    const found: string[] = [];
    const names = (await filesBelow(this.full(folder))).map(({ name }) => name);
    for (const name of withoutWritten(names)) {
      const place = prefix + name;
      if (/\.zip$/i.test(name) && !/(^|\/)history(\.zip|\/)/i.test(name))
        found.push(...(await this.inside(place)));
      else found.push(place);
    }
    return found;
  }

  async isOtherTable(place: string): Promise<boolean> {
    try {
      return holdsOtherTable((await this.read(place)).bytes);
    } catch (error) {
      if (error instanceof Problem) return false; // Told when it is read as a recording.
      throw error;
    }
  }

  /** The files of a rider's past: one, or all of a folder on disk or in a ZIP. */
  async pastFiles(history: string): Promise<readonly string[]> {
    const { file, member } = await this.locate(history);
    await refuseOutside(this.root, this.full(file));
    if (member !== null) {
      const below = memberNames(await this.open(file)).filter((name) => name.startsWith(`${member}/`));
      return below.length === 0 ? [history] : below.map((name) => `${file}/${name}`);
    }
    const stats = await lstat(this.full(file)).catch(() => null);
    if (!stats?.isDirectory()) return [history];
    return (await filesBelow(this.full(file))).map(({ name }) => `${history}/${name}`);
  }

  /** What lies in a ZIP, as if it were a folder. One that holds no recording, or cannot be read, stays one file. */
  private async inside(archive: string): Promise<readonly string[]> {
    try {
      const names = memberNames(await this.open(archive)).filter((name) => !/(^|\/)(\.|__MACOSX)/.test(name));
      return names.some(isRecordingName) ? names.map((name) => `${archive}/${name}`) : [archive];
    } catch (error) {
      if (error instanceof Problem) return [archive];
      throw error;
    }
  }

  private open(file: string): Promise<Uint8Array> {
    if (this.archive?.file !== file) {
      const options = { most: limits.archiveBytes, root: this.root, shown: file };
      const bytes = readFileSafely(this.full(file), options).then((one) => one.bytes);
      this.archive = { file, bytes };
    }
    return this.archive.bytes;
  }

  private async locate(place: string): Promise<Located> {
    const parts = place.split('/');
    for (const [at, part] of parts.slice(0, -1).entries()) {
      if (!/\.zip$/i.test(part)) continue;
      const file = parts.slice(0, at + 1).join('/');
      const stats = await lstat(this.full(file)).catch(() => null);
      if (stats?.isFile()) return { file, member: parts.slice(at + 1).join('/') };
    }
    return { file: place, member: null };
  }

  full(place: string): string {
    return path.join(this.root, ...place.split('/'));
  }
}

function once<T>(known: Map<string, Promise<T>>, place: string, find: () => Promise<T>): Promise<T> {
  const found = known.get(place) ?? find();
  known.set(place, found);
  return found;
}

function missing(where: string): Problem {
  return new Problem({
    code: 'file-missing',
    what: 'there is no such file',
    where,
    hint: 'Look at the spelling; paths start at the event file',
  });
}

function placed(where: string): (error: unknown) => never {
  return (error) => {
    throw error instanceof Problem ? error.at(where) : error;
  };
}
