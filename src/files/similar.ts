import { opendir } from 'node:fs/promises';
import path from 'node:path';
import { nearest } from '../math/nearest.ts';

/** Entries of a folder that are looked through for a name that was meant. */
const most = 2000;

/** The name of a file in the same folder that is almost the one that is not there; null when none is. */
export async function similarName(file: string): Promise<string | null> {
  const folder = path.dirname(file);
  const names: string[] = [];
  try {
    for await (const entry of await opendir(folder)) {
      names.push(entry.name);
      if (names.length >= most) break;
    }
  } catch {
    return null; // The folder cannot be read either: then there is nothing to suggest.
  }
  return nearest(path.basename(file), names.sort());
}
