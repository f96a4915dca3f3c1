import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Build } from '../make/meters.ts';
import type { Options } from './options.ts';
import type { Target, TargetId } from './results.ts';

/** One run. Every run of the generator that reports is kept for ever, whatever it showed. */
export interface RunRecord {
  /** Calendar day: as given, else that of the commit. */
  readonly date: string;
  readonly commit: string;
  readonly build: Build;
  readonly seed: string;
  /** What was drawn: "all", "honest", "faults", "coverage", or a rule. */
  readonly part: string;
  readonly scale: Options['scale'];
  readonly rules: number;
  readonly submissions: number;
  readonly cost: Cost;
  /** Share measured for each target, and those met out of those that the run could speak about. */
  readonly figures: { readonly [T in TargetId]?: number };
  readonly met: readonly [met: number, of: number];
}

export interface Cost {
  readonly workers: number;
  readonly seconds: number;
  /** Highest resident memory of the whole process, bytes. */
  readonly memory: number;
  /** Draws that could not be made or audited, and are in no figure. */
  readonly broken: number;
}

export type RunLog = readonly RunRecord[];

export function runRecord(
  options: Pick<Options, 'build' | 'seed' | 'scale' | 'date'>,
  part: string,
  run: Pick<RunRecord, 'rules' | 'submissions' | 'cost'>,
  targets: readonly Target[],
): RunRecord {
  const { build, seed, scale } = options;
  const { rules, submissions, cost } = run;
  return {
    ...stamp(options),
    build,
    seed,
    part,
    scale,
    rules,
    submissions,
    cost: { ...cost, seconds: Math.round(cost.seconds), memory: Math.round(cost.memory / 1e6) * 1e6 },
    figures: Object.fromEntries(targets.map(({ id, share }) => [id, share.share])),
    met: [targets.filter(({ outcome }) => outcome === 'met').length, targets.length],
  };
}

/** When and of what a figure was measured. */
export function stamp({ date }: Pick<Options, 'date'>): Pick<RunRecord, 'date' | 'commit'> {
  return { date: date ?? git('log', '-1', '--format=%cs') ?? 'unknown', commit: commit() };
}

export function readLog(file: string): RunLog {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as RunLog) : [];
}

/** Adds a run of the generator that reports; others leave no trace. */
export function logged(file: string, run: RunRecord): RunLog {
  const log = readLog(file);
  if (run.build !== 'reporting') return log;
  const longer = [...log, run];
  writeFileSync(file, `${JSON.stringify(longer, null, 2)}\n`);
  return longer;
}

/** The commit that runs, marked where files were changed since. */
function commit(): string {
  const head = git('rev-parse', '--short', 'HEAD');
  if (head === null) return 'unknown';
  const changed = git('status', '--porcelain', '--untracked-files=no', '--', 'src', 'rules', 'test');
  return changed === '' ? head : `${head} +`;
}

function git(...args: string[]): string | null {
  try {
    return execFileSync('git', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
  } catch {
    return null;
  }
}
