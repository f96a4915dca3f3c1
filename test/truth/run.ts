/**
 * `npm run truth`: draws submissions whose truth is known, audits them, and counts how often each rule finds
 * what is wrong and how often it asks honest riders.
 */
import { createWriteStream, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isMainThread, workerData } from 'node:worker_threads';
import { ruleSet } from '../../src/rules.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import { resultsPage } from './markdown.ts';
import { type Options, parseOptions, usage } from './options.ts';
import { type Plan, planOf, tasksOf } from './plan.ts';
import { inWorkers, work } from './pool.ts';
import { Progress } from './progress.ts';
import { cohorts, targetsOf } from './results.ts';
import { commit, figuresOf, type RunRecord, readLog, writeLog } from './runs.ts';
import { count, newTally } from './tally.ts';

if (isMainThread) await main(parseOptions(process.argv.slice(2)));
else await work((workerData as { plan: Plan }).plan);

async function main(options: Options | null): Promise<void> {
  if (options === null) {
    process.stdout.write(usage);
    return;
  }
  const { build, seed, scale, workers } = options;
  const { rules } = await ruleSet();
  const wanted = faults.filter(({ rules: names }) => options.only === null || names.includes(options.only));
  const plan = planOf({
    build,
    seed,
    scale,
    kinds: honestKinds.map(({ name }) => name),
    faults: options.honest ? [] : wanted.map(({ name }) => name),
    cohorts: options.faults ? [] : cohorts,
  });
  const tasks = tasksOf(plan);
  const tally = newTally();
  const progress = new Progress(tasks.reduce((sum, { from, to }) => sum + to - from, 0));
  const dump = options.dump === null ? null : createWriteStream(options.dump);
  const began = performance.now();
  let memory = 0;
  await inWorkers(plan, tasks, workers, ({ task, rows, memory: used }) => {
    for (const row of rows) {
      count(tally, plan, row, rules);
      dump?.write(`${JSON.stringify({ ...plan.lots[row.lot], ...row })}\n`);
    }
    memory = Math.max(memory, used);
    progress.step(task.to - task.from);
  });
  progress.end();
  dump?.end();

  const run: RunRecord = {
    date: new Date().toISOString().slice(0, 10),
    commit: commit(),
    build,
    seed,
    scale,
    rules: rules.length,
    submissions: tally.rows,
    seconds: (performance.now() - began) / 1000,
    workers,
    memory,
    figures: figuresOf(targetsOf(tally, rules)),
  };
  const whole = options.only === null && !options.honest && !options.faults;
  const home = path.join('test', 'truth');
  const out = options.out ?? (whole ? home : path.join('out', 'truth'));
  mkdirSync(out, { recursive: true });
  const logFile = path.join(home, 'runs.json');
  const log = [...readLog(logFile), ...(build === 'reporting' ? [run] : [])];
  if (build === 'reporting') writeLog(logFile, log);
  writeFileSync(path.join(out, 'RESULTS.md'), resultsPage(tally, rules, run, log));
  process.stderr.write(`${path.join(out, 'RESULTS.md')}\n`);
}
