import { realpath } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { Io } from './io.ts';

/** A place that is written to, with the option that named it. */
export interface Output {
  readonly option: string;
  readonly file: string;
}

/**
 * Sees to it that nothing is written over what is read, and nothing twice to one place, before anything is
 * done: a recording that is overwritten by its own report is evidence lost. Links are followed to their files.
 *
 * @throws Problem `usage`
 */
export async function keepApart(
  io: Io,
  inputs: readonly (string | undefined)[],
  outputs: readonly Output[],
): Promise<void> {
  const read = new Set<string>();
  for (const file of inputs) if (file !== undefined) read.add(await placeOf(io, file));
  const written = new Set<string>();
  for (const { option, file } of outputs) {
    const place = await placeOf(io, file);
    if (read.has(place)) throw refused(option, file, 'it would be written over, and it is read here');
    if (written.has(place)) throw refused(option, file, 'two outputs would be written to it');
    written.add(place);
  }
}

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
  return new Problem({ code: 'usage', what, where: `${option} ${file}`, hint: 'Name another file' });
}
