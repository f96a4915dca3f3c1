import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** Folders that are made, not written. */
const made = new Set(['node_modules', 'dist', 'out', 'coverage', '.git']);

/** Every file that people wrote, as paths from the top folder with forward slashes, in order. */
export function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const at = folder === '.' ? entry.name : path.posix.join(folder, entry.name);
      if (!entry.isDirectory()) return [at];
      return made.has(entry.name) ? [] : filesUnder(at);
    })
    .sort();
}

export const readText = (file: string): string => readFileSync(file, 'utf8');

export interface Import {
  readonly file: string;
  /** A path from the top folder for our own modules; else the name as written. */
  readonly target: string;
  readonly typeOnly: boolean;
}

const statement =
  /^\s*(import|export)\s+(type\s+)?(?:[\w*{}\s,$]+?\s+from\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;

/** The imports and re-exports of a module, lazy ones included. */
export function importsOf(file: string): Import[] {
  return [...readText(file).matchAll(statement)].map(([, , type, fixed, lazy]) => {
    const name = fixed ?? lazy ?? '';
    const target = name.startsWith('.') ? path.posix.join(path.posix.dirname(file), name) : name;
    return { file, target, typeOnly: type !== undefined };
  });
}

/** Every module that running the given one loads, with what led to it; lazy imports included. */
export function reachableFrom(entry: string): ReadonlyMap<string, string> {
  const from = new Map([[entry, '']]);
  const queue = [entry];
  for (const file of queue) {
    if (!file.endsWith('.ts')) continue;
    for (const { target, typeOnly } of importsOf(file)) {
      if (typeOnly || from.has(target)) continue;
      from.set(target, file);
      queue.push(target);
    }
  }
  return from;
}
