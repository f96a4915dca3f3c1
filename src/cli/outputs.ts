import { lstat, readdir, realpath } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Io } from './io.ts';

/** A place that is written to, with the option that named it. */
export interface Output {
  readonly option: string;
  readonly file: string;
}

/** A folder that files are written into whose names are known only when there is something to write. */
export interface OutputFolder {
  readonly option: string;
  readonly folder: string;
  /** Whether a file of this name may be written. */
  readonly gives: (name: string) => boolean;
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
  folders: readonly OutputFolder[] = [],
): Promise<void> {
  const sources: Source[] = [];
  for (const input of inputs) {
    if (input === undefined) continue;
    const { place, takes } = typeof input === 'string' ? { place: input, takes: () => false } : input;
    sources.push({ place: await placeOf(io, place), takes });
  }
  const written = new Set<string>();
  const claim = async ({ option, file }: Output) => {
    const place = await placeOf(io, file);
    if (sources.some((source) => source.place === place))
      throw refused(option, file, 'it would be written over, and it is read here');
    if (sources.some((source) => holds(source, place)) && (await isThere(place)))
      throw refused(option, file, 'it would be written over, and its folder is read here');
    if (written.has(place)) throw refused(option, file, 'two outputs would be written to it');
    written.add(place);
  };
  for (const output of outputs) await claim(output);
  for (const { option, folder, gives } of folders) {
    const place = await placeOf(io, folder);
    const others = [...written].filter((one) => path.dirname(one) === place).map((one) => path.basename(one));
    const names = new Set([...(await namesIn(place)), ...others].filter(gives));
    for (const name of names) await claim({ option, file: path.join(folder, name) });
  }
}

/** What stands in a folder, links as well; nothing where there is none. */
const namesIn = (folder: string) => readdir(folder).catch(() => []);

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
