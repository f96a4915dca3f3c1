import { randomBytes } from 'node:crypto';
import { lstat, open, rename, unlink } from 'node:fs/promises';
import path from 'node:path';
import { Problem } from '../problem.ts';
import { whyNot } from './trouble.ts';

/**
 * Writes a whole file or nothing: into a new file beside it first, which then takes its name. A file
 * that is there is replaced.
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
    await refuseOther(file);
    const handle = await open(beside, 'wx');
    begun = true;
    try {
      await handle.writeFile(content);
    } finally {
      await handle.close();
    }
    await rename(beside, file);
  } catch (error) {
    if (begun) await unlink(beside).catch(() => {}); // What went wrong before is what must be told.
    throw whyUnwritable(error, file);
  }
}

/** A name that is taken by a folder or a device must not be replaced by a file. */
async function refuseOther(file: string): Promise<void> {
  let stats: Awaited<ReturnType<typeof lstat>>;
  try {
    stats = await lstat(file);
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
