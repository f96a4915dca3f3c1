import { lstatSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { whyNot } from './trouble.ts';

/**
 * Refuses a path that leads out of a folder, by itself or by a link anywhere on its way below the folder.
 * What does not exist yet passes: it can be made there.
 *
 * @throws Problem `file-refused`
 */
export async function refuseOutside(root: string, file: string): Promise<void> {
  const way = path.relative(root, path.resolve(root, file));
  const parts = way.split(path.sep);
  if (path.isAbsolute(way) || parts[0] === '..') {
    throw refused(file, 'it lies outside the folder that may be used');
  }
  let at = root;
  for (const part of parts) {
    at = path.join(at, part);
    try {
      if (lstatSync(at).isSymbolicLink()) throw refused(file, 'it is, or lies behind, a link');
    } catch (error) {
      if (whyNot(error)?.code === 'missing') return;
      throw error;
    }
  }
}

function refused(where: string, what: string): Problem {
  return new Problem({ code: 'file-refused', what, where });
}
