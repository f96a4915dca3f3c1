import { constants, type Stats } from 'node:fs';
import { type FileHandle, lstat, open, realpath } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import type { NamedBytes } from '../types.ts';
import { similarName } from './similar.ts';
import { whyNot } from './trouble.ts';

export interface ReadOptions {
  /** Bytes beyond which the file is refused. */
  readonly most: number;
  /**
   * The folder that the file must lie in, for paths that a stranger wrote: then no link is followed out
   * of it, and a link as the file itself is refused. Left out for a path that the user typed.
   */
  readonly root?: string;
  /** How the file is called in a sentence; its path when left out. */
  readonly shown?: string;
}

/** Not to follow a link and not to wait for a pipe, where the system knows how: Windows has neither. */
const flags = constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);

/**
 * Reads one regular file, at most so many bytes of it.
 *
 * @throws Problem `file-missing`, or `file-refused` for a folder, a link, a device, a pipe, a file that
 *   lies outside, is too large or may not be read
 */
export async function readFileSafely(
  file: string,
  { most, root, shown = file }: ReadOptions,
): Promise<NamedBytes> {
  const name = path.basename(file);
  try {
    const real = root === undefined ? await realpath(file) : await placeInside(file, root, shown);
    refuseIrregular(await lstat(real), shown);
    const handle = await open(real, flags);
    try {
      const stats = await handle.stat();
      refuseIrregular(stats, shown);
      return { name, bytes: await readAtMost(handle, stats.size, most, shown) };
    } finally {
      await handle.close();
    }
  } catch (error) {
    throw await asProblem(error, file, shown);
  }
}

/** The file's place with every link before it resolved; the file itself is not, a link would be refused. */
async function placeInside(file: string, root: string, shown: string): Promise<string> {
  const realRoot = await realpath(root);
  const from = path.resolve(root, file);
  const real = path.join(await realpath(path.dirname(from)), path.basename(from));
  const way = path.relative(realRoot, real);
  if (way === '' || way === '..' || way.startsWith(`..${path.sep}`) || path.isAbsolute(way)) {
    throw refused(shown, 'it lies outside the folder that may be read');
  }
  return real;
}

function refuseIrregular(stats: Stats, file: string): void {
  if (stats.isSymbolicLink()) throw refused(file, 'it is a link', 'Hand in the file itself');
  if (stats.isDirectory()) throw refused(file, 'it is a folder, and a file is wanted');
  if (!stats.isFile()) throw refused(file, 'it is no ordinary file');
}

/** Reads to the end, one byte past the cap at most: what the file claims about its size is not trusted. */
async function readAtMost(handle: FileHandle, size: number, most: number, file: string): Promise<Uint8Array> {
  if (size > most) throw tooLarge(file, most);
  let buffer = new Uint8Array(Math.min(size, most) + 1);
  let filled = 0;
  for (;;) {
    const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled);
    if (bytesRead === 0) return buffer.subarray(0, filled);
    filled += bytesRead;
    if (filled > most) throw tooLarge(file, most);
    // One byte more was asked for and did not come: it is as large as it says.
    if (filled === size) return buffer.subarray(0, filled);
    if (filled === buffer.length) {
      // The file has grown since its size was asked.
      const larger = new Uint8Array(Math.min(buffer.length * 2, most + 1));
      larger.set(buffer);
      buffer = larger;
    }
  }
}

function tooLarge(file: string, most: number): Problem {
  return refused(file, `it is larger than ${Math.round(most / 1024).toLocaleString('en')} kB`);
}

function refused(file: string, what: string, hint?: string): Problem {
  return new Problem({ code: 'file-refused', what, where: file, ...(hint === undefined ? {} : { hint }) });
}

async function asProblem(error: unknown, file: string, shown: string): Promise<unknown> {
  if (error instanceof Problem) return error;
  const why = whyNot(error);
  if (why === null) return error;
  if (why.code !== 'missing') return refused(shown, why.what, why.hint);
  const similar = await similarName(file);
  return new Problem({
    code: 'file-missing',
    what: 'there is no such file',
    where: shown,
    ...(similar === null ? {} : { hint: `Did you mean ${similar}?` }),
  });
}
