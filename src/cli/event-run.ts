import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { setImmediate as turn } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { emptyRow } from '../event/record.ts';
import { type Outcome, runTasks } from '../event/workers.ts';
import { Problem } from '../problem.ts';
import type { Entry, EventRow } from '../types.ts';
import { named, type TaskResult, type TaskSetting, takeOver, taskRunner } from './event-task.ts';

/** Beside the built program; run from its sources there is none, and entries are audited in line. */
const workerProgram = new URL('./worker.js', import.meta.url);

/** Seconds. A submission of a day with a long history takes some: whatever takes minutes hangs. */
export const usualPatience = 180;
/** MB of heap for one worker: several times what the longest honest submission needs. */
const memory = 1024;

export interface Run {
  readonly rows: readonly EventRow[];
  /** How many were taken over unchanged from an earlier run. */
  readonly reused: number;
}

export interface RunOptions {
  /** Worker threads; undefined: one a processor. */
  readonly jobs: number | undefined;
  /** Seconds after which a submission is given up; undefined: the usual. */
  readonly patience?: number | undefined;
  readonly onRow: (row: EventRow, done: number) => void;
  /** For tests: another worker program, another limit. */
  readonly workers?: { readonly script: URL; readonly memory: number };
}

/** Audits entries, each by itself; the rows come back in the order of the entries, whatever finished first. */
export async function runEntries(
  entries: readonly Entry[],
  setting: TaskSetting,
  options: RunOptions,
): Promise<Run> {
  const { script, ...bounds } = options.workers ?? { script: workerProgram, memory };
  const patience = 1000 * (options.patience ?? usualPatience);
  const rows: EventRow[] = [];
  let done = 0;
  const keep = (index: number, row: EventRow) => {
    rows[index] = row;
    options.onRow(row, ++done);
  };
  const run = taskRunner(setting);
  const inLine = async (index: number) =>
    keep(index, rowOf(entries[index]!, await outcomeOf(run, entries[index]!), setting));
  const { open, reused } = await withoutUnchanged(entries, setting, keep, inLine);
  if (existsSync(fileURLToPath(script))) {
    const size = options.jobs ?? availableParallelism();
    const tasks = open.map((index) => entries[index]!);
    await runTasks<Entry, TaskResult>(
      tasks,
      { script, data: setting, size, patience, ...bounds },
      (at, outcome) => keep(open[at]!, rowOf(tasks[at]!, outcome, setting)),
    );
  } else {
    for (const index of open) await inLine(index);
  }
  return { rows, reused };
}

/**
 * Takes over what an earlier run finished and nothing has changed, how many that were, and the places of all
 * others in order. Where nothing was handed in there is nothing to audit: no worker is started for it.
 */
async function withoutUnchanged(
  entries: readonly Entry[],
  setting: TaskSetting,
  keep: (index: number, row: EventRow) => void,
  inLine: (index: number) => Promise<void>,
): Promise<{ readonly open: readonly number[]; readonly reused: number }> {
  const take = takeOver(setting);
  const open: number[] = [];
  let reused = 0;
  for (const [index, entry] of entries.entries()) {
    const row = await take(entry);
    if (row !== null) {
      reused++;
      keep(index, row);
    } else if (entry.primary === null) await inLine(index);
    else open.push(index);
    await turn(); // Nothing above waits for anything: whoever stops the run meanwhile must be heard.
  }
  return { open, reused };
}

async function outcomeOf(
  run: (entry: Entry) => Promise<TaskResult>,
  entry: Entry,
): Promise<Outcome<TaskResult>> {
  try {
    return { state: 'done', result: await run(entry) };
  } catch (error) {
    return { state: 'lost', why: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}

const lostBecause = {
  time: 'The audit of these files did not come to an end and was given up',
  memory: 'The audit of these files needs more memory than a submission may have',
  fault: 'The audit of these files broke, by a fault of this program',
} as const;

/** @throws Problem when nothing can be written any more */
function rowOf(entry: Entry, outcome: Outcome<TaskResult>, setting: TaskSetting): EventRow {
  if (outcome.state === 'lost') {
    return named(emptyRow(entry, `${lostBecause[outcome.why]}: ${outcome.message}.`), setting);
  }
  if ('stop' in outcome.result) throw new Problem(outcome.result.stop);
  return outcome.result.row;
}
