import { readFileSync, statSync } from 'node:fs';
import { lstat, mkdir, readdir, rm } from 'node:fs/promises';
import path from 'node:path';
import { emptyRow, listed, reportFolder } from '../event/record.ts';
import { auditEntry, type HandedIn } from '../event.ts';
import { filesBelow, limits, refuseOutside, whyUnwritable, writeWhole } from '../files/index.ts';
import { digestOf } from '../json.ts';
import { sha256 } from '../math/digest.ts';
import { Problem, type ProblemParts, sentence } from '../problem.ts';
import { renderHtml, renderJson, renderLetter } from '../report/index.ts';
import { tool } from '../tool.ts';
import type { Entry, EventRow, NamedBytes, Report, RuleSet } from '../types.ts';
import { EventFiles } from './event-disk.ts';
import { ruleSetOf } from './event-plan.ts';
import type { Io } from './io.ts';
import { historyGiven } from './past-rides.ts';

/** What every task of a run has in common. Plain data: it is sent to worker threads. */
export interface TaskSetting {
  /** The event's folder, the folder that is written to, and where relative paths of options start. */
  readonly root: string;
  readonly out: string;
  readonly cwd: string;
  readonly rules: string | null;
  readonly event: string;
  readonly redacted: boolean;
}

export type TaskResult =
  | { readonly row: EventRow }
  /** Nothing can be written: no fault of this submission, and no use in going on. */
  | { readonly stop: ProblemParts };

/** What a finished submission leaves behind for the next run. Written last: without it nothing is finished. */
const rowFile = 'row.json';
const reportFiles = ['report.html', 'report.json', 'letter.txt'] as const;
const rowBytes = 8 * 1024 * 1024;

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
  const files = new EventFiles(setting.root);
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
  return async (entry) => {
    const kept = keptIn(folderOf(entry, setting));
    if (kept === null || entry.primary === null) return null;
    try {
      const opened = await open(entry, bench.files);
      const key = await keyOf(entry, setting, await bench.rulesOf(entry), opened);
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
  if (entry.primary === null) return named(emptyRow(entry, 'No recording was handed in.'), setting);
  const rules = await bench.rulesOf(entry);
  let opened: Opened;
  try {
    opened = await open(entry, files);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return named(emptyRow(entry, sentence(error)), setting);
  }
  const folder = folderOf(entry, setting);
  await clear(folder);
  const row = await audit(entry, setting, files, rules, opened, folder);
  const key = await keyOf(entry, setting, rules, opened);
  await writeWhole(path.join(folder, rowFile), `${JSON.stringify({ key, row } satisfies Kept)}\n`);
  return row;
}

/** A row fit to publish bears no name. */
function named(row: EventRow, { redacted }: TaskSetting): EventRow {
  return redacted
    ? { ...row, name: null, id: null, why: row.why === null ? null : 'It could not be audited.' }
    : row;
}

/** Recordings opened, the history only listed: most runs find nothing changed and need no more. */
interface Opened {
  readonly primary: NamedBytes;
  readonly seconds: readonly NamedBytes[];
  readonly unopened: Report['submission']['unreadable'];
  readonly inputs: readonly (readonly [role: string, name: string, sha256: string])[];
}

async function open(entry: Entry, files: EventFiles): Promise<Opened> {
  const opening = entry.seconds.map((place) => tryRead(place, files));
  const [primary, past, ...others] = await Promise.all([
    files.read(entry.primary!),
    pastInputs(entry.history, files),
    ...opening,
  ]);
  const seconds = others.filter((one) => 'bytes' in one);
  const recordings = [primary, ...seconds].map(
    async ({ name, bytes }) => ['recording', name, await sha256(bytes)] as const,
  );
  return {
    primary,
    seconds,
    unopened: others.filter((one) => 'why' in one),
    inputs: [...(await Promise.all(recordings)), ...past],
  };
}

/** A second that cannot be opened makes a submission incomplete; the others are audited all the same. */
async function tryRead(
  place: string,
  files: EventFiles,
): Promise<NamedBytes | { name: string; why: string }> {
  try {
    return await files.read(place);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { name: place.split('/').at(-1)!, why: sentence(error) };
  }
}

/** Checksums of a history, file by file: a rider's past can be larger than memory. */
async function pastInputs(history: string | null, files: EventFiles): Promise<Opened['inputs']> {
  if (history === null) return [];
  await refuseOutside(files.root, files.full(history));
  const stats = await lstat(files.full(history)).catch(() => null);
  const places = stats?.isDirectory()
    ? (await filesBelow(files.full(history))).map(({ name }) => `${history}/${name}`)
    : [history];
  const inputs: (readonly [string, string, string])[] = [];
  for (const place of places) {
    try {
      const { bytes } = await files.read(place, limits.archiveBytes);
      inputs.push(['history', place, await sha256(bytes)]);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      inputs.push(['history', place, 'unreadable']);
    }
  }
  return inputs;
}

/** Digest of everything that the report depends on. */
function keyOf(
  entry: Entry,
  { event, redacted }: TaskSetting,
  rules: RuleSet,
  opened: Opened,
): Promise<string> {
  const { number, name, race, rider, factInputs, secondsAbove } = entry;
  const { inputs, unopened } = opened;
  const depends = { number, name, race, rider, factInputs, secondsAbove, inputs, unopened, event, redacted };
  return digestOf({ tool, rules: rules.sha256, ...depends });
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
    if (kept.row.report !== null) for (const name of reportFiles) statSync(path.join(folder, name));
    return kept;
  } catch {
    return null; // Then it is made anew.
  }
}

/** Takes away what an earlier or interrupted run left, the mark that it was finished first. */
async function clear(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
    await rm(path.join(folder, rowFile), { force: true });
    for (const name of await readdir(folder)) {
      if (/^\..*\.part$/.test(name) || (reportFiles as readonly string[]).includes(name)) {
        await rm(path.join(folder, name), { force: true });
      }
    }
  } catch (error) {
    throw whyUnwritable(error, folder);
  }
}

async function audit(
  entry: Entry,
  setting: TaskSetting,
  files: EventFiles,
  rules: RuleSet,
  { primary, seconds, unopened }: Opened,
  folder: string,
): Promise<EventRow> {
  try {
    const { profile, inputs } = await pastOf(entry, files);
    const handedIn: HandedIn = {
      primary,
      seconds,
      unopened,
      profile,
      otherInputs: [...entry.factInputs, ...inputs],
    };
    const { report, row } = await auditEntry(entry, handedIn, rules, setting.redacted);
    await write(folder, report, entry, setting);
    return row;
  } catch (error) {
    if (!(error instanceof Problem) || error.code === 'file-unwritable') throw error;
    return named(emptyRow(entry, sentence(error)), setting);
  }
}

async function pastOf({ history, rider }: Entry, files: EventFiles) {
  if (history === null) return { profile: null, inputs: [] };
  const { devices } = rider;
  const nobody: Io = {
    stdout: { write: () => true },
    stderr: { write: () => true },
    env: {},
    cwd: files.root,
  };
  return historyGiven(nobody, history, {
    ...(devices === undefined ? {} : { devices }),
    onFile: () => {},
    onTrouble: () => {},
  });
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
