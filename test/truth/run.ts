/**
 * `npm run truth`: draws submissions whose truth is known, audits them, and counts how often each rule finds
 * what is wrong and how often it asks honest riders.
 */
import { createWriteStream, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isMainThread, workerData } from 'node:worker_threads';
import { ruleSet } from '../../src/rules.ts';
import type { Rule, RuleSet } from '../../src/types.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import { chartsPage } from './charts-page.ts';
import { type Counted, readCounts, writeCounts } from './counts.ts';
import { type CoverageRow, coverageRides, coverageRowsOf, designCount } from './coverage.ts';
import { type CoverageTally, countCoverage, coverageFigures, coveragePage } from './coverage-page.ts';
import { rowsOf } from './draw.ts';
import { keepFigures, readFigures } from './figures.ts';
import { resultsPage } from './markdown.ts';
import { type Options, parseOptions, usage } from './options.ts';
import { cohorts, type Plan, planOf, sizesOf, strengthNames, tasksOf } from './plan.ts';
import { inWorkers, work } from './pool.ts';
import { Progress } from './progress.ts';
import { writeRates } from './rates.ts';
import { heldAgainstReal, realPage } from './real.ts';
import { targetsOf } from './results.ts';
import type { Row } from './row.ts';
import { type Cost, logged, readLog, runRecord, stamp } from './runs.ts';
import { drawSlice } from './slice.ts';
import { count, newTally } from './tally.ts';

/** What is committed lies beside this file; everything else goes to a folder that Git ignores. */
const home = path.join('test', 'truth');
const scratch = path.join('out', 'truth');
const logFile = path.join(home, 'runs.json');
const figuresFile = path.join(home, 'figures.json');

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
  const jobs: { readonly [J in Options['job']]: () => Promise<void> } = {
    detection: () => detection(options, set.rules),
    coverage: () => coverage(options, set.rules),
    real: () => real(options, set),
    pages: () => pages(options, readCounts(countsFile(options)), set.rules),
    rates: async () => {
      const changed = writeRates('rules', readCounts(countsFile(options)), set.rules);
      say(`${changed.length} rule files changed`);
    },
    slice: async () => {
      const drawn = { ...drawSlice('faults', set), ...drawSlice('honest', set) };
      put(home, 'slice.json', `${JSON.stringify(drawn, null, 2)}\n`);
    },
  };
  await jobs[options.job]();
}

async function detection(options: Options, rules: readonly Rule[]): Promise<void> {
  const { build, seed, scale, only } = options;
  const wanted = faults.filter(({ rules: names }) => only === null || names.includes(only));
  const plan = planOf({
    build,
    seed,
    scale,
    kinds: honestKinds.map(({ name }) => name),
    faults: options.honest ? [] : wanted,
    strengths: strengthNames,
    cohorts: options.faults ? [] : cohorts,
    rides: [],
  });
  const { honest, faulty } = sizesOf(plan);
  say(`${honest} honest submissions, ${faulty} with a fault: ${honest + faulty} to draw and audit`);
  const tally = newTally(plan);
  const dump = options.dump === null ? null : createWriteStream(options.dump);
  const cost = await runAll<Row>(plan, options, (row) => {
    count(tally, plan, row, rules);
    dump?.write(`${JSON.stringify({ ...plan.lots[row.lot], ...row })}\n`);
  });
  dump?.end();
  say(`${(tally.rows / cost.seconds).toFixed(1)} submissions a second, at most ${megabytes(cost)}`);
  const part = only ?? (options.honest ? 'honest' : options.faults ? 'faults' : 'all');
  const totals = { rules: rules.length, submissions: tally.rows, cost };
  const run = runRecord(options, part, totals, targetsOf(tally, rules));
  const counted = { plan, run, tally };
  logged(logFile, run);
  mkdirSync(scratch, { recursive: true });
  writeCounts(countsFile(options), counted);
  await pages(options, counted, rules);
}

/** Where the counts of the last run lie. */
function countsFile({ counts }: Options): string {
  return counts ?? path.join(scratch, 'counts.json');
}

async function pages(options: Options, counted: Counted, rules: readonly Rule[]): Promise<void> {
  const folder = folderOf(options);
  put(folder, 'RESULTS.md', resultsPage(counted, rules, readLog(logFile), readFigures(figuresFile)));
  put(folder, 'charts.html', await chartsPage(counted, rules));
}

async function coverage(options: Options, rules: readonly Rule[]): Promise<void> {
  const { build, seed, scale } = options;
  const plan = planOf({
    build,
    seed,
    scale,
    kinds: [],
    faults: [],
    strengths: [],
    cohorts: [],
    rides: coverageRides,
  });
  const planned = plan.lots.reduce((sum, lot) => sum + lot.count * designCount, 0);
  say(`${planned} pairs to draw and audit: ${plan.lots[0]!.count} draws of ${plan.lots.length} rides`);
  const tally: CoverageTally = new Map();
  let submissions = 0;
  const cost = await runAll<CoverageRow>(plan, options, (row) => {
    countCoverage(tally, row);
    submissions++;
  });
  const run = runRecord(options, 'coverage', { rules: rules.length, submissions, cost }, []);
  logged(logFile, run);
  put(folderOf(options), 'COVERAGE.md', coveragePage(tally, plan, run));
  if (options.keep) keepFigures(figuresFile, { coverage: coverageFigures(tally, plan, run) });
}

/** Real people's rides: what is said of them stays out of the repository, but for what all of them share. */
async function real(options: Options, set: RuleSet): Promise<void> {
  const found = await heldAgainstReal(options.real!, set);
  put(options.out ?? scratch, 'REAL.md', realPage(found));
  if (options.keep) keepFigures(figuresFile, { realism: { ...stamp(options), ...found.figures } });
}

async function runAll<R>(plan: Plan, { workers, minutes }: Options, onRow: (row: R) => void): Promise<Cost> {
  const tasks = tasksOf(plan);
  const progress = new Progress(tasks.reduce((sum, { from, to }) => sum + to - from, 0));
  const began = performance.now();
  let memory = 0;
  const broken: string[] = [];
  await inWorkers<R>(plan, tasks, workers, began + 60_000 * minutes, (done) => {
    done.rows.forEach(onRow);
    broken.push(...done.broken);
    memory = Math.max(memory, done.memory);
    progress.step(done.task.to - done.task.from);
  });
  progress.end();
  broken.forEach(say);
  return { workers, seconds: (performance.now() - began) / 1000, memory, broken: broken.length };
}

function megabytes({ memory }: Cost): string {
  return `${Math.round(memory / 1e6)} MB`;
}

function folderOf({ keep, out }: Options): string {
  return out ?? (keep ? home : scratch);
}

function put(folder: string, name: string, text: string): void {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, name);
  writeFileSync(file, text);
  say(file);
}

function say(line: string): void {
  process.stderr.write(`${line}\n`);
}
