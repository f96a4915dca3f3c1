import { checksum, limits } from '../files/index.ts';
import { canonical } from '../json.ts';
import { Problem, sentence } from '../problem.ts';
import { tool } from '../tool.ts';
import type { Entry, NamedBytes, RuleSet, UnreadableFile } from '../types.ts';
import type { EventFiles } from './event-disk.ts';
import { program } from './program.ts';

/** A file of a submission by its content. */
export interface Summed {
  readonly name: string;
  readonly sha256: string;
}

/** The recordings that an entry names, and the seconds among them that could not be opened. */
export interface Recordings<T extends Summed> {
  readonly primary: T;
  readonly seconds: readonly T[];
  readonly unopened: readonly Pick<UnreadableFile, 'name' | 'why'>[];
}

/** How a recording is taken in, by its place. */
type TakeIn<T extends Summed> = (place: string) => Promise<T>;

/** With its bytes, to be audited. */
export const opened =
  (files: EventFiles): TakeIn<NamedBytes & Summed> =>
  async (place) => {
    const file = await files.read(place);
    return { ...file, sha256: checksum(file.bytes) };
  };

/** By its checksum alone: most runs find nothing changed. */
export const summed =
  (files: EventFiles): TakeIn<Summed> =>
  async (place) => ({ name: nameOf(place), sha256: await files.checksum(place) });

/**
 * Takes in what an entry names. A second that cannot be opened makes a submission incomplete; the others are
 * audited all the same.
 *
 * @param entry has a primary
 * @throws Problem when the primary cannot be opened
 */
export async function recordingsOf<T extends Summed>(
  entry: Entry,
  takeIn: TakeIn<T>,
): Promise<Recordings<T>> {
  const primary = await takeIn(entry.primary!);
  const seconds: T[] = [];
  const unopened: Recordings<T>['unopened'][number][] = [];
  for (const place of entry.seconds) {
    try {
      seconds.push(await takeIn(place));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      unopened.push({ name: nameOf(place), why: sentence(error) });
    }
  }
  return { primary, seconds, unopened };
}

const nameOf = (place: string) => place.split('/').at(-1)!;

/** Digest of everything that the report of an entry depends on. */
export async function keyOf(
  entry: Entry,
  { event, redacted }: { readonly event: string; readonly redacted: boolean },
  rules: RuleSet,
  { primary, seconds, unopened }: Recordings<Summed>,
  files: EventFiles,
): Promise<string> {
  const inputs = [
    ...[primary, ...seconds].map(({ name, sha256 }) => ['recording', name, sha256]),
    ...(await pastInputs(entry.history, files)),
  ];
  const { number, name, race, rider, factInputs, secondsAbove } = entry;
  const depends = { number, name, race, rider, factInputs, secondsAbove, inputs, unopened, event, redacted };
  return checksum(canonical({ tool, program, rules: rules.sha256, ...depends }));
}

/** Checksums of a history, file by file: a rider's past can be larger than memory. */
async function pastInputs(
  history: string | null,
  files: EventFiles,
): Promise<[role: string, name: string, sha256: string][]> {
  if (history === null) return [];
  const inputs: [string, string, string][] = [];
  for (const place of await files.pastFiles(history)) {
    try {
      inputs.push(['history', place, await files.checksum(place, limits.archiveBytes)]);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      inputs.push(['history', place, 'unreadable']);
    }
  }
  return inputs;
}
