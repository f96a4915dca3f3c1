import { createHash } from 'node:crypto';
import {
  closeSync,
  constants,
  fstatSync,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  type Stats,
} from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { KiB } from '../sizes.ts';
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
export async function readFileSafely(file: string, options: ReadOptions): Promise<NamedBytes> {
  const { most, shown = file } = options;
  const read = (descriptor: number, size: number) => readAtMost(descriptor, size, most, shown);
  return { name: path.basename(file), bytes: await withFile(file, options, read) };
}

/** SHA-256 of a file in lower-case hex, read piece by piece: nothing of it is kept. @throws Problem as above */
export function checksumSafely(file: string, options: ReadOptions): Promise<string> {
  const { most, shown = file } = options;
  return withFile(file, options, (descriptor, size) => {
    if (size > most) throw tooLarge(shown, most);
    const sum = createHash('sha256');
    let all = 0;
    for (;;) {
      const length = readSync(descriptor, piece, 0, piece.length, null);
      if (length === 0) return sum.digest('hex');
      all += length;
      if (all > most) throw tooLarge(shown, most);
      sum.update(piece.subarray(0, length));
    }
  });
}

/** Whether a file holds these bytes and no others, read piece by piece. @throws Problem as above */
export function holdsSafely(file: string, bytes: Uint8Array, options: ReadOptions): Promise<boolean> {
  return withFile(file, options, (descriptor, size) => {
    if (size !== bytes.length) return false;
    for (let at = 0; ; ) {
      const length = readSync(descriptor, piece, 0, piece.length, null);
      if (length === 0) return at === bytes.length;
      if (Buffer.compare(piece.subarray(0, length), bytes.subarray(at, at + length)) !== 0) return false;
      at += length;
    }
  });
}

/** What is read at once of a file of which nothing is kept. */
const piece = new Uint8Array(256 * KiB);

/**
 * Every step asks the system without waiting in between: an event has thousands of small files, and a promise for
 * each of seven steps costs several times what the disk does.
 */
async function withFile<T>(
  file: string,
  { root, shown = file }: ReadOptions,
  read: (descriptor: number, size: number) => T,
): Promise<T> {
  try {
    const real = root === undefined ? realpathSync.native(file) : placeInside(file, root, shown);
    refuseIrregular(lstatSync(real), shown);
    const descriptor = openSync(real, flags);
    try {
      const stats = fstatSync(descriptor);
      refuseIrregular(stats, shown);
      return read(descriptor, stats.size);
    } finally {
      closeSync(descriptor);
    }
  } catch (error) {
    throw await asProblem(error, file, shown);
  }
}

/** The file's place with every link before it resolved; the file itself is not, a link would be refused. */
function placeInside(file: string, root: string, shown: string): string {
  const realRoot = realpathSync.native(root);
  const from = path.resolve(root, file);
  const real = path.join(realpathSync.native(path.dirname(from)), path.basename(from));
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
function readAtMost(descriptor: number, size: number, most: number, file: string): Uint8Array {
  if (size > most) throw tooLarge(file, most);
  let buffer = new Uint8Array(Math.min(size, most) + 1);
  let filled = 0;
  for (;;) {
    const bytesRead = readSync(descriptor, buffer, filled, buffer.length - filled, null);
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
  return refused(file, `it is larger than ${Math.round(most / KiB).toLocaleString('en')} kB`);
}

function refused(file: string, what: string, hint?: string): Problem {
  return new Problem({ code: 'file-refused', what, where: file, ...(hint === undefined ? {} : { hint }) });
}

function isLink(file: string): boolean {
  try {
    return lstatSync(file).isSymbolicLink();
  } catch {
    return false;
  }
}

async function asProblem(error: unknown, file: string, shown: string): Promise<unknown> {
  if (error instanceof Problem) return error;
  const why = whyNot(error);
  if (why === null) return error;
  if (why.code !== 'missing') return refused(shown, why.what, why.hint);
  if (isLink(file))
    return refused(shown, 'it is a link to a file that is not there', 'Hand in the file itself');
  const similar = await similarName(file);
  return new Problem({
    code: 'file-missing',
    what: 'there is no such file',
    where: shown,
    ...(similar === null ? {} : { hint: `Did you mean ${similar}?` }),
  });
}
