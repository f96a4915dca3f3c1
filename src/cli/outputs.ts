import { lstat, realpath } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Io } from './io.ts';

/** A place that is written to, with the option that named it. */
export interface Output {
  readonly option: string;
  readonly file: string;
}

/** A place that is read: a file, or a folder and whatever its reader takes from it. */
export interface Source {
  readonly place: string;
  /** Whether a file of the folder is read, by its place below it with `/`. */
  readonly takes: (name: string) => boolean;
}

/**
 * Sees to it that nothing is written over what is read, and nothing twice to one place, before anything is
 * done: a recording that is overwritten by its own report is evidence lost. Links are followed to their files.
 * A new file may lie among others that are read.
 *
 * @throws Problem `usage`
 */
export async function keepApart(
  io: Io,
  inputs: readonly (string | Source | undefined)[],
  outputs: readonly Output[],
): Promise<void> {
  const sources: Source[] = [];
  for (const input of inputs) {
    if (input === undefined) continue;
    const { place, takes } = typeof input === 'string' ? { place: input, takes: () => false } : input;
    sources.push({ place: await placeOf(io, place), takes });
  }
  const written = new Set<string>();
  for (const { option, file } of outputs) {
    const place = await placeOf(io, file);
    if (sources.some((source) => source.place === place))
      throw refused(option, file, 'it would be written over, and it is read here');
    if (sources.some((source) => holds(source, place)) && (await isThere(place)))
      throw refused(option, file, 'it would be written over, and its folder is read here');
    if (written.has(place)) throw refused(option, file, 'two outputs would be written to it');
    written.add(place);
  }
}

function holds({ place, takes }: Source, file: string): boolean {
  const way = path.relative(place, file).split(path.sep);
  return way[0] !== '..' && !path.isAbsolute(way.join(path.sep)) && takes(way.join('/'));
}

const isThere = (place: string) =>
  lstat(place).then(
    () => true,
    () => false,
  );

/** Where a file lies in truth; of one that is not there yet, where it would. */
async function placeOf({ cwd }: Io, file: string): Promise<string> {
  const place = path.resolve(cwd, file);
  return await realpath(place).catch(() =>
    realpath(path.dirname(place)).then(
      (folder) => path.join(folder, path.basename(place)),
      () => place,
    ),
  );
}

function refused(option: string, file: string, what: string): Problem {
  return new Problem({ code: 'usage', what, where: `${option} ${file}`, hint: 'Name another place' });
}
