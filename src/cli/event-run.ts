import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { emptyRow } from '../event/record.ts';
import { type Outcome, runTasks } from '../event/workers.ts';
import { Problem } from '../problem.ts';
import type { Entry, EventRow } from '../types.ts';
import { type TaskResult, type TaskSetting, taskRunner } from './event-task.ts';

/** Beside the built program; run from its sources there is none, and entries are audited in line. */
const workerProgram = new URL('./worker.js', import.meta.url);

/** A submission of a day with a long history takes seconds: whatever takes minutes hangs. */
const patience = 180_000;
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
  readonly onRow: (row: EventRow, done: number) => void;
  /** For tests: another worker program, other limits. */
  readonly workers?: { readonly script: URL; readonly patience: number; readonly memory: number };
}

/** Audits entries, each by itself; the rows come back in the order of the entries, whatever finished first. */
export async function runEntries(
  entries: readonly Entry[],
  setting: TaskSetting,
  options: RunOptions,
): Promise<Run> {
  const { script, ...bounds } = options.workers ?? { script: workerProgram, patience, memory };
  const rows: EventRow[] = [];
  let reused = 0;
  let done = 0;
  const keep = (index: number, outcome: Outcome<TaskResult>) => {
    const row = rowOf(entries[index]!, outcome);
    if (outcome.state === 'done' && 'reused' in outcome.result && outcome.result.reused) reused++;
    rows[index] = row;
    options.onRow(row, ++done);
  };
  if (existsSync(fileURLToPath(script))) {
    const size = options.jobs ?? availableParallelism();
    await runTasks<Entry, TaskResult>(entries, { script, data: setting, size, ...bounds }, keep);
  } else {
    const run = taskRunner(setting);
    for (const [index, entry] of entries.entries()) keep(index, await inLine(run, entry));
  }
  return { rows, reused };
}

async function inLine(
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
function rowOf(entry: Entry, outcome: Outcome<TaskResult>): EventRow {
  if (outcome.state === 'lost') return emptyRow(entry, `${lostBecause[outcome.why]}: ${outcome.message}.`);
  if ('stop' in outcome.result) throw new Problem(outcome.result.stop);
  return outcome.result.row;
}
