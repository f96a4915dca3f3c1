import { mkdir, readdir, rm, rmdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { marksFile, recordFile, reportFolder } from '../event/record.ts';
import { whyUnwritable } from '../files/index.ts';
import { Problem } from '../problem.ts';
import type { Output } from './outputs.ts';

/** What a finished submission leaves behind for the next run. Written last: without it nothing is finished. */
export const rowFile = 'row.json';
/** What a report folder holds for its readers. */
export const reportFiles = ['report.html', 'report.json', 'letter.txt'] as const;

const isOurs = (name: string) =>
  name === rowFile || (reportFiles as readonly string[]).includes(name) || /^\..*\.part$/.test(name);

/** Makes a folder that is written to. @throws Problem `file-unwritable` */
export async function makeFolder(folder: string, shown: string): Promise<void> {
  try {
    await make(folder);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw noFolder(shown);
    throw whyUnwritable(error, shown);
  }
}

const noFolder = (where: string) =>
  new Problem({
    code: 'file-unwritable',
    what: 'it cannot be written: there is a file of this name, and a folder is wanted',
    where,
    hint: 'Name another folder, or move the file away',
  });

/** One folder after another: making them all by one call does not say that a disk can only be read. */
async function make(folder: string): Promise<void> {
  try {
    await mkdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST' && (await stat(folder)).isDirectory()) return;
    const above = path.dirname(folder);
    if (code !== 'ENOENT' || above === folder) throw error;
    await make(above);
    await make(folder);
  }
}

/** Takes away what an earlier or interrupted run left in a report folder, the mark that it was finished first. */
export async function clearReport(folder: string): Promise<void> {
  try {
    await rm(path.join(folder, rowFile), { force: true });
    for (const name of await namesIn(folder)) {
      if (isOurs(name)) await rm(path.join(folder, name), { force: true });
    }
  } catch (error) {
    throw whyUnwritable(error, folder);
  }
}

/** Takes a whole report away, with its folder unless somebody keeps something in it. */
export async function removeReport(folder: string): Promise<void> {
  await clearReport(folder);
  await rmdir(folder).catch(() => {});
}

/**
 * Takes away the reports of riders who are no longer in the event: whoever withdrew is not kept by oversight.
 *
 * @param numbers the riders whose reports stay
 * @returns how many went
 */
export async function removeOthers(out: string, numbers: readonly string[]): Promise<number> {
  const stay = new Set(numbers.map((number) => path.join(out, ...reportFolder(number).split('/'))));
  const all = path.dirname(path.join(out, ...reportFolder('1').split('/')));
  const others = (await namesIn(all)).map((name) => path.join(all, name)).filter((one) => !stay.has(one));
  let gone = 0;
  for (const folder of others) {
    if (!(await namesIn(folder)).some(isOurs)) continue;
    await removeReport(folder);
    gone++;
  }
  return gone;
}

/** Names in a folder; none where there is no such folder. */
async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR') return [];
    throw error;
  }
}

/** What a run writes beside the reports. */
const written = ['overview.html', 'summary.csv', 'summary.md', marksFile, recordFile];

/**
 * Files that bear one of these names, whatever the case. No others of an event, behind no link, can be written over:
 * where each of thousands lies need not be asked.
 */
export const namedAsWritten = (files: readonly string[]) =>
  files.filter((file) => written.includes(path.basename(file).toLowerCase()));

/** The places of these in the folder that a user names. */
export const writtenInto = (out: string): readonly Output[] =>
  written.map((name) => ({ option: '--out', file: path.join(out, name) }));

/**
 * Files without those that a run wrote: the folder that was named for the reports may lie among the submissions.
 *
 * @param names places with `/`
 */
export function withoutWritten(names: readonly string[]): readonly string[] {
  const outs = names.flatMap((name) => /^((?:.*\/)?)reports\/rider-[^/]+\/row\.json$/.exec(name)?.[1] ?? []);
  const files = new Set(outs.flatMap((out) => written.map((name) => out + name)));
  const reports = [...new Set(outs)].map((out) => `${out}reports/`);
  return names.filter((name) => !files.has(name) && !reports.some((folder) => name.startsWith(folder)));
}
