/**
 * `npm run truth`: draws submissions whose truth is known, audits them, and counts how often each rule finds
 * what is wrong and how often it asks honest riders.
 */
import { createWriteStream, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isMainThread, workerData } from 'node:worker_threads';
import { ruleSet } from '../../src/rules.ts';
import type { Rule } from '../../src/types.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import { type CoverageRow, coverageRides, coverageRowsOf, designCount } from './coverage.ts';
import { type CoverageTally, countCoverage, coveragePage } from './coverage-page.ts';
import { rowsOf } from './draw.ts';
import { resultsPage } from './markdown.ts';
import { type Options, parseOptions, usage } from './options.ts';
import { type Plan, planOf, tasksOf } from './plan.ts';
import { inWorkers, work } from './pool.ts';
import { Progress } from './progress.ts';
import { realPage } from './real.ts';
import { cohorts, targetsOf } from './results.ts';
import type { Row } from './row.ts';
import { commit, figuresOf, type RunRecord, readLog, writeLog } from './runs.ts';
import { count, newTally } from './tally.ts';

const home = path.join('test', 'truth');

if (isMainThread) await main(parseOptions(process.argv.slice(2)));
else await workOn((workerData as { plan: Plan }).plan);

function workOn(plan: Plan): Promise<void> {
  return plan.lots[0]?.sort === 'coverage' ? work(plan, coverageRowsOf) : work(plan, rowsOf);
}

async function main(options: Options | null): Promise<void> {
  if (options === null) {
    process.stdout.write(usage);
    return;
  }
  const set = await ruleSet();
  const { rules } = set;
  // Real people's rides: what is said of them stays out of the repository.
  if (options.real !== null)
    put(options.out ?? path.join('out', 'truth'), 'REAL.md', await realPage(options.real, set));
  else if (options.coverage) await coverage(options, rules);
  else await detection(options, rules);
}

async function detection(options: Options, rules: readonly Rule[]): Promise<void> {
  const { build, seed, scale, only } = options;
  const wanted = faults.filter(({ rules: names }) => only === null || names.includes(only));
  const plan = planOf({
    build,
    seed,
    scale,
    kinds: honestKinds.map(({ name }) => name),
    faults: options.honest ? [] : wanted.map(({ name }) => name),
    cohorts: options.faults ? [] : cohorts,
    rides: [],
  });
  const tally = newTally();
  const dump = options.dump === null ? null : createWriteStream(options.dump);
  const cost = await runAll<Row>(plan, options.workers, (row) => {
    count(tally, plan, row, rules);
    dump?.write(`${JSON.stringify({ ...plan.lots[row.lot], ...row })}\n`);
  });
  dump?.end();
  const run: RunRecord = {
    ...stamp(options, rules),
    ...cost,
    submissions: tally.rows,
    figures: figuresOf(targetsOf(tally, rules)),
  };
  const whole = only === null && !options.honest && !options.faults;
  const logFile = path.join(home, 'runs.json');
  const log = [...readLog(logFile), ...(build === 'reporting' ? [run] : [])];
  if (build === 'reporting') writeLog(logFile, log);
  const out = options.out ?? (whole ? home : path.join('out', 'truth'));
  put(out, 'RESULTS.md', resultsPage(tally, rules, run, log));
}

async function coverage(options: Options, rules: readonly Rule[]): Promise<void> {
  const { build, seed, scale } = options;
  const plan = planOf({ build, seed, scale, kinds: [], faults: [], cohorts: [], rides: coverageRides });
  const tally: CoverageTally = new Map();
  const cost = await runAll<CoverageRow>(plan, options.workers, (row) => countCoverage(tally, row));
  const figures = { claims: '', found: '', clear: '', moderate: '', met: '' };
  const submissions = plan.lots.reduce((sum, lot) => sum + lot.count * designCount, 0);
  const run: RunRecord = { ...stamp(options, rules), ...cost, submissions, figures };
  put(options.out ?? home, 'COVERAGE.md', coveragePage(tally, plan, run));
}

async function runAll<R>(
  plan: Plan,
  workers: number,
  onRow: (row: R) => void,
): Promise<Pick<RunRecord, 'seconds' | 'memory'>> {
  const tasks = tasksOf(plan);
  const progress = new Progress(tasks.reduce((sum, { from, to }) => sum + to - from, 0));
  const began = performance.now();
  let memory = 0;
  await inWorkers<R>(plan, tasks, workers, ({ task, rows, memory: used }) => {
    rows.forEach(onRow);
    memory = Math.max(memory, used);
    progress.step(task.to - task.from);
  });
  progress.end();
  return { seconds: (performance.now() - began) / 1000, memory };
}

function stamp(options: Options, rules: readonly Rule[]) {
  const { build, seed, scale, workers } = options;
  const date = new Date().toISOString().slice(0, 10);
  return { date, commit: commit(), build, seed, scale, rules: rules.length, workers };
}

function put(folder: string, name: string, text: string): void {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, name);
  writeFileSync(file, text);
  process.stderr.write(`${file}\n`);
}
