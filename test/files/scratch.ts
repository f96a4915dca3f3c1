import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { onTestFinished } from 'vitest';

/** A folder of its own for the running test. */
export function scratch(): string {
  const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'wattassay-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export const onWindows = process.platform === 'win32';
/** Whoever is root may read and write everything. */
export const isRoot = process.getuid?.() === 0;
