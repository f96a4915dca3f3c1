import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { whyNoPath } from '../event/event-file.ts';
import { limits, writeWhole } from '../files/index.ts';
import { type Git, partsOf } from './git.ts';

/** Files taken from the repository at once: more are no event's terms, and no change that anybody looks through. */
const mostFiles = 500;

/** An ordinary file as a commit holds it: no link and no other repository. */
export interface KeptFile {
  /** From the top folder of the repository, with `/`. */
  readonly path: string;
  readonly object: string;
}

/** What a commit holds at a place: a file, or the files that lie in a folder itself; null when nothing is there. */
export async function keptAt(
  git: Git,
  commit: string,
  place: string,
): Promise<{ readonly kind: 'file' | 'folder'; readonly files: readonly KeptFile[] } | null> {
  const [only] = place === '' ? [] : await list(git, commit, place);
  if (place !== '' && only === undefined) return null;
  if (only?.kind === 'blob') return { kind: 'file', files: ordinary([only]) };
  return { kind: 'folder', files: ordinary(await list(git, commit, place === '' ? '' : `${place}/`)) };
}

interface Listed extends KeptFile {
  readonly mode: string;
  readonly kind: string;
}

const ordinary = (found: readonly Listed[]) => found.filter(({ mode }) => mode.startsWith('100'));

async function list(git: Git, commit: string, place: string): Promise<readonly Listed[]> {
  const named = place === '' ? [] : [place];
  const answer = await git.ask('ls-tree', '-z', '--full-tree', commit, '--', ...named);
  return partsOf(answer ?? Buffer.alloc(0)).map((part) => {
    const tab = part.indexOf('\t');
    const [mode, kind, object] = part.slice(0, tab).split(' ') as [string, string, string];
    return { mode, kind, object, path: part.slice(tab + 1) };
  });
}

/**
 * Writes files as the repository holds them below a folder of our own.
 *
 * @param whole which are wanted with what they hold; the others are written empty
 * @returns false when that cannot be done, or is more than is sensible: then nothing is known
 */
export async function layOut(
  git: Git,
  files: readonly KeptFile[],
  into: string,
  whole: (path: string) => boolean = () => true,
): Promise<boolean> {
  if (files.length > mostFiles) return false;
  for (const { path: place, object } of files) {
    // No commit should hold such a name, and some systems read more into it than others.
    if (whyNoPath(place) !== null || place.includes(':')) return false;
    const bytes = whole(place) ? await git.ask('cat-file', 'blob', object) : new Uint8Array();
    if (bytes === null || bytes.length > limits.archiveBytes) return false;
    const file = path.join(into, ...place.split('/'));
    await mkdir(path.dirname(file), { recursive: true });
    await writeWhole(file, bytes);
  }
  return true;
}
