import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { emptyRow, listed, reportFolder } from '../event/record.ts';
import { auditEntry } from '../event.ts';
import { writeWhole } from '../files/index.ts';
import { Problem, type ProblemParts, sentence } from '../problem.ts';
import { renderHtml, renderJson, renderLetter } from '../report/index.ts';
import { MiB } from '../sizes.ts';
import type { Entry, EventRow, NamedBytes, Report, RuleSet } from '../types.ts';
import { EventFiles } from './event-disk.ts';
import { clearReport, makeFolder, removeReport, reportFiles, rowFile } from './event-folders.ts';
import { keyOf, opened, type Recordings, recordingsOf, type Summed, summed } from './event-inputs.ts';
import { pastOf } from './event-past.ts';
import { ruleSetOf } from './event-plan.ts';
import type { Io } from './io.ts';

/** What every task of a run has in common. Plain data: it is sent to worker threads. */
export interface TaskSetting {
  /** The event's folder, the folder that is written to, and where relative paths of options start. */
  readonly root: string;
  readonly out: string;
  readonly cwd: string;
  /** The folder that the event's rules are read from. */
  readonly terms: string;
  readonly rules: string | null;
  readonly event: string;
  readonly redacted: boolean;
}

export type TaskResult =
  | { readonly row: EventRow }
  /** Nothing can be written: no fault of this submission, and no use in going on. */
  | { readonly stop: ProblemParts };

const rowBytes = 8 * MiB;

interface Kept {
  readonly key: string;
  readonly row: EventRow;
}

/** What one run of entries uses, opened once. */
interface Bench {
  readonly setting: TaskSetting;
  readonly files: EventFiles;
  readonly rulesOf: (entry: Entry) => Promise<RuleSet>;
}

function benchFor(setting: TaskSetting): Bench {
  const files = new EventFiles(setting.root, setting.terms);
  const nowhere = { write: () => true };
  const io: Io = { stdout: nowhere, stderr: nowhere, env: {}, cwd: setting.cwd };
  const sets = new Map<string | null, Promise<RuleSet>>();
  return {
    setting,
    files,
    rulesOf({ rules: folder }) {
      const known = sets.get(folder) ?? ruleSetOf(io, files, folder, setting.rules ?? undefined);
      sets.set(folder, known);
      return known;
    },
  };
}

/** Makes the function that runs one entry after another with the same settings. */
export function taskRunner(setting: TaskSetting): (entry: Entry) => Promise<TaskResult> {
  const bench = benchFor(setting);
  return async (entry) => {
    try {
      return { row: await runEntry(entry, bench) };
    } catch (error) {
      if (!(error instanceof Problem) || error.code !== 'file-unwritable') throw error;
      return { stop: partsOf(error) };
    }
  };
}

/** Makes the function that takes a row over from an earlier run; null where that has to be made anew. */
export function takeOver(setting: TaskSetting): (entry: Entry) => Promise<EventRow | null> {
  const bench = benchFor(setting);
  const { files } = bench;
  return async (entry) => {
    const kept = keptIn(folderOf(entry, setting));
    if (kept === null || entry.primary === null) return null;
    try {
      const recordings = await recordingsOf(entry, summed(files));
      const key = await keyOf(entry, setting, await bench.rulesOf(entry), recordings, files);
      return key === kept.key ? named({ ...kept.row, ...listed(entry) }, setting) : null;
    } catch (error) {
      if (error instanceof Problem) return null; // Told when it is made anew.
      throw error;
    }
  };
}

const folderOf = ({ number }: Entry, { out }: TaskSetting) =>
  path.join(out, ...reportFolder(number).split('/'));

function partsOf({ code, message, where, hint }: Problem): ProblemParts {
  return {
    code,
    what: message,
    ...(where === undefined ? {} : { where }),
    ...(hint === undefined ? {} : { hint }),
  };
}

async function runEntry(entry: Entry, bench: Bench): Promise<EventRow> {
  const { setting, files } = bench;
  const folder = folderOf(entry, setting);
  if (entry.primary === null) return withoutReport(entry, absent(entry), folder, setting);
  const rules = await bench.rulesOf(entry);
  let recordings: Recordings<NamedBytes & Summed>;
  let key: string;
  try {
    recordings = await recordingsOf(entry, opened(files));
    key = await keyOf(entry, setting, rules, recordings, files);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return withoutReport(entry, sentence(error), folder, setting);
  }
  await makeFolder(folder, folder);
  await clearReport(folder);
  const row = await audit(entry, setting, files, rules, recordings, folder);
  await writeWhole(path.join(folder, rowFile), `${JSON.stringify({ key, row } satisfies Kept)}\n`);
  return row;
}

const absent = ({ doubt }: Entry) =>
  doubt === null ? 'No recording was handed in.' : `What was handed in leaves a doubt: ${doubt}.`;

/** A row alone: a report that an earlier run left here would be of files that are no longer there. */
async function withoutReport(
  entry: Entry,
  why: string,
  folder: string,
  setting: TaskSetting,
): Promise<EventRow> {
  await removeReport(folder);
  return named(emptyRow(entry, why), setting);
}

/** A row fit to publish bears no name. */
export function named(row: EventRow, { redacted }: TaskSetting): EventRow {
  return redacted
    ? {
        ...row,
        name: null,
        id: null,
        why: row.why === null ? null : 'An audit that is not redacted says why.',
      }
    : row;
}

/**
 * What an earlier run finished here; null when there is nothing, or not all of it. These are our own files, and
 * small: asked one after the other they come faster than each by way of another thread.
 */
function keptIn(folder: string): Kept | null {
  try {
    const file = path.join(folder, rowFile);
    if (statSync(file).size > rowBytes) return null;
    const kept: Kept = JSON.parse(readFileSync(file, 'utf8'));
    const there = kept.row.report === null ? reportFiles : readdirSync(folder);
    return reportFiles.every((name) => there.includes(name)) ? kept : null;
  } catch {
    return null; // Then it is made anew.
  }
}

async function audit(
  entry: Entry,
  setting: TaskSetting,
  files: EventFiles,
  rules: RuleSet,
  { primary, seconds, unopened }: Recordings<NamedBytes & Summed>,
  folder: string,
): Promise<EventRow> {
  try {
    const { profile, inputs } = await pastOf(entry, files);
    const otherInputs = [...entry.factInputs, ...inputs];
    const submission = { primary, seconds, unopened, profile, otherInputs };
    const { report, row } = await auditEntry(entry, submission, rules, setting.redacted);
    await write(folder, report, entry, setting);
    return row;
  } catch (error) {
    if (!(error instanceof Problem) || error.code === 'file-unwritable') throw error;
    return named(emptyRow(entry, sentence(error)), setting);
  }
}

async function write(
  folder: string,
  report: Report,
  { name }: Entry,
  { event, redacted }: TaskSetting,
): Promise<void> {
  const frame = { event, ...(name === null || redacted ? {} : { rider: name }) };
  await writeWhole(path.join(folder, 'report.json'), renderJson(report));
  await writeWhole(path.join(folder, 'report.html'), await renderHtml(report));
  await writeWhole(path.join(folder, 'letter.txt'), renderLetter(report, frame));
}
