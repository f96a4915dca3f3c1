import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { percent, type Target } from './results.ts';

/** One run, as it is kept for ever when it was of the generator that reports. */
export interface RunRecord {
  readonly date: string;
  readonly commit: string;
  readonly build: string;
  readonly seed: string;
  readonly scale: number;
  readonly rules: number;
  readonly submissions: number;
  readonly seconds: number;
  readonly workers: number;
  /** Highest resident memory of the whole process, bytes. */
  readonly memory: number;
  readonly figures: {
    readonly claims: string;
    readonly found: string;
    readonly clear: string;
    readonly moderate: string;
    readonly met: string;
  };
}
export type RunLog = readonly RunRecord[];

export function figuresOf(targets: readonly Target[]): RunRecord['figures'] {
  const of = (start: string) =>
    targets
      .filter(({ what }) => what.startsWith(start))
      .map(({ share }) => percent(share.share, 2))
      .reverse()
      .join(' / ');
  return {
    claims: of('honest, within'),
    found: of('honest, as found'),
    clear: of('clear-cut'),
    moderate: of('moderate'),
    met: `${targets.filter(({ met }) => met).length} of ${targets.length}`,
  };
}

export function readLog(file: string): RunLog {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as RunLog) : [];
}

export function writeLog(file: string, log: RunLog): void {
  writeFileSync(file, `${JSON.stringify(log, null, 2)}\n`);
}

/** The commit that runs, marked where files were changed since. */
export function commit(): string {
  const git = (...args: string[]) => execFileSync('git', args, { encoding: 'utf8' }).trim();
  try {
    const changed = git('status', '--porcelain', '--untracked-files=no', '--', 'src', 'rules', 'test') !== '';
    return `${git('rev-parse', '--short', 'HEAD')}${changed ? ' +' : ''}`;
  } catch {
    return 'unknown';
  }
}
