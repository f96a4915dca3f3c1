import { randomBytes } from 'node:crypto';
import { closeSync, lstatSync, openSync, renameSync, type Stats, unlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { whyNot } from './trouble.ts';

/**
 * Writes a whole file or nothing: into a new file beside it first, which then takes its name. A file
 * that is there is replaced. Every step asks the system without waiting in between, as reading does: an event
 * writes thousands of small files.
 *
 * @throws Problem `file-unwritable`
 */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const beside = path.join(
    path.dirname(file),
    `.${path.basename(file).slice(0, 60)}.${randomBytes(6).toString('hex')}.part`,
  );
  let begun = false;
  try {
    refuseOther(file);
    const descriptor = openSync(beside, 'wx');
    begun = true;
    try {
      writeFileSync(descriptor, content);
    } finally {
      closeSync(descriptor);
    }
    renameSync(beside, file);
  } catch (error) {
    if (begun) takeAway(beside);
    throw whyUnwritable(error, file);
  }
}

function takeAway(file: string): void {
  try {
    unlinkSync(file);
  } catch {
    // What went wrong before is what must be told.
  }
}

/** A name that is taken by a folder or a device must not be replaced by a file. */
function refuseOther(file: string): void {
  let stats: Stats;
  try {
    stats = lstatSync(file);
  } catch (error) {
    if (whyNot(error)?.code === 'missing') return;
    throw error;
  }
  if (stats.isFile() || stats.isSymbolicLink()) return;
  throw unwritable(file, stats.isDirectory() ? 'there is a folder of this name' : 'it is no ordinary file');
}

function unwritable(file: string, what: string, hint?: string): Problem {
  return new Problem({ code: 'file-unwritable', what, where: file, ...(hint === undefined ? {} : { hint }) });
}

/** The Problem for an error that stopped something from being written; what is none of the system's stays. */
export function whyUnwritable(error: unknown, file: string): unknown {
  if (error instanceof Problem) return error;
  const why = whyNot(error);
  if (why === null) return error;
  return why.code === 'missing'
    ? unwritable(file, 'its folder is not there', `Make the folder ${path.dirname(file)} first`)
    : unwritable(file, `it cannot be written: ${why.what}`, why.hint);
}
