import { type Dirent, opendirSync } from 'node:fs';
import { lstat, stat } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { limits } from './limits.ts';
import { whyNot } from './trouble.ts';

/** One file found below a folder. */
export interface Found {
  /** Where to read it. */
  readonly path: string;
  /** Its place below the folder, with `/` on every system. */
  readonly name: string;
}

interface Bounds {
  readonly depth: number;
  readonly entries: number;
}

/**
 * Every ordinary file below a folder, in order of name, folder by folder. Links are never followed and
 * hidden entries (a leading dot) are passed over.
 *
 * @throws Problem `file-missing` or `file-refused`, also when there is more than the bounds allow
 */
export async function filesBelow(folder: string, bounds: Bounds = limits): Promise<Found[]> {
  const found: Found[] = [];
  const budget = { entries: bounds.entries };
  await descend(folder, '', bounds.depth, budget, found);
  return found;
}

/** The ordinary files of one folder, in order of name; what lies deeper is not looked at. */
export async function filesIn(folder: string, bounds: Bounds = limits): Promise<Found[]> {
  const found: Found[] = [];
  for (const entry of entriesOf(folder, { entries: bounds.entries })) {
    const place = path.join(folder, entry.name);
    if ((await kindOf(entry, place)) === 'file') found.push({ path: place, name: entry.name });
  }
  return found;
}

/** Whether there is such a folder. What is not there is taken for a file: reading it says what is wrong. */
export function isFolder(place: string): Promise<boolean> {
  return stat(place).then(
    (stats) => stats.isDirectory(),
    () => false,
  );
}

async function descend(
  folder: string,
  prefix: string,
  depth: number,
  budget: { entries: number },
  found: Found[],
): Promise<void> {
  for (const entry of entriesOf(folder, budget)) {
    const below = path.join(folder, entry.name);
    const name = prefix + entry.name;
    const kind = await kindOf(entry, below);
    if (kind === 'file') found.push({ path: below, name });
    else if (kind === 'folder') {
      if (depth === 0) throw tooMuch(below, 'the folders lie too deep in one another');
      await descend(below, `${name}/`, depth - 1, budget, found);
    }
  }
}

/**
 * Sorted by code unit, so that every system sees the same order. Asked one after the other and without waiting in
 * between: an event has a folder a rider, and four promises for each cost more than the disk does.
 */
function entriesOf(folder: string, budget: { entries: number }): Dirent[] {
  const entries: Dirent[] = [];
  try {
    const listing = opendirSync(folder);
    try {
      for (let entry = listing.readSync(); entry !== null; entry = listing.readSync()) {
        if (entry.name.startsWith('.')) continue;
        if (budget.entries-- <= 0) throw tooMuch(folder, 'there are too many files below this folder');
        entries.push(entry);
      }
    } finally {
      listing.closeSync();
    }
  } catch (error) {
    throw asProblem(error, folder);
  }
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Some file systems do not say in a listing what an entry is; then the entry itself is asked. */
async function kindOf(entry: Dirent, place: string): Promise<'file' | 'folder' | 'other'> {
  const known = entry.isFile() || entry.isDirectory() || entry.isSymbolicLink();
  const asked = known ? entry : await lstat(place);
  if (asked.isFile()) return 'file';
  return asked.isDirectory() ? 'folder' : 'other';
}

function tooMuch(where: string, what: string): Problem {
  return new Problem({ code: 'file-refused', what, where, hint: 'Name a smaller folder' });
}

const isFile = (error: unknown) => (error as { code?: unknown }).code === 'ENOTDIR';

function asProblem(error: unknown, folder: string): unknown {
  if (error instanceof Problem) return error;
  const why = whyNot(error);
  if (why === null) return error;
  const missing = why.code === 'missing';
  return new Problem({
    code: missing ? 'file-missing' : 'file-refused',
    what: isFile(error)
      ? 'it is a file, and a folder is wanted'
      : missing
        ? 'there is no such folder'
        : why.what,
    where: folder,
    ...(why.hint === undefined ? {} : { hint: why.hint }),
  });
}
