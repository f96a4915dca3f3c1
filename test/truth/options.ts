import { parseArgs } from 'node:util';
import type { Build } from '../make/meters.ts';

/** What is to be done; `detection` where nothing else is asked for. */
export type Job = 'detection' | 'coverage' | 'real' | 'pages' | 'rates' | 'slice';

export interface Options {
  readonly job: Job;
  readonly build: Build;
  readonly seed: string;
  /** 1: sizes that can show the targets. */
  readonly scale: { readonly honest: number; readonly faults: number };
  readonly only: string | null;
  readonly honest: boolean;
  readonly faults: boolean;
  readonly workers: number;
  /** After so many minutes no further draws are begun. */
  readonly minutes: number;
  /** Calendar day to be kept with the run; null: that of the commit. */
  readonly date: string | null;
  readonly dump: string | null;
  readonly keep: boolean;
  readonly out: string | null;
  /** Folder of recordings that the user has. */
  readonly real: string | null;
  /** Counts of an earlier run; null: of the last one. */
  readonly counts: string | null;
}

export const usage = `npm run truth -- [options]

What to draw
  --reporting       draw from the generator that reports (another structure than the one for tuning)
  --seed TEXT       default "1"
  --scale NUMBER    1: sizes that can show the targets; default 0.02
  --honest-scale NUMBER, --fault-scale NUMBER
                    the same for honest submissions and for faults alone
  --only RULE       faults of this rule, and what it does to honest submissions
  --honest          honest submissions alone
  --faults          faults alone
  --workers N       default 2
  --minutes N       begin no draws after so long: lots are mixed, so that what was drawn by then is a fair part
  --date DAY        kept with the run, like 2026-03-14; default: the day of the commit

What to make of it
  --keep            write RESULTS.md and charts.html where they are committed, in test/truth;
                    without it they go to out/truth
  --out FOLDER      or to this folder
  --dump FILE       every answer of every rule, one submission a line (JSON)

Instead of drawing submissions
  --coverage        how often intervals hold the true value
  --real FOLDER     hold the simulator against the recordings in FOLDER, and plant faults into them
  --pages           make the pages anew from the counts of the last run
  --write-rates     write how often each rule asks honest riders into rules/, from the counts of the last run
  --counts FILE     … of the run whose counts.json this is
  --write-slice     record what the tests' small corpus shows today in slice.json
`;

export function parseOptions(args: readonly string[]): Options | null {
  const { values } = parseArgs({
    args: [...args],
    options: {
      reporting: { type: 'boolean', default: false },
      seed: { type: 'string', default: '1' },
      scale: { type: 'string', default: '0.02' },
      'honest-scale': { type: 'string' },
      'fault-scale': { type: 'string' },
      only: { type: 'string' },
      honest: { type: 'boolean', default: false },
      faults: { type: 'boolean', default: false },
      workers: { type: 'string', default: '2' },
      minutes: { type: 'string' },
      date: { type: 'string' },
      dump: { type: 'string' },
      keep: { type: 'boolean', default: false },
      out: { type: 'string' },
      coverage: { type: 'boolean', default: false },
      real: { type: 'string' },
      pages: { type: 'boolean', default: false },
      'write-rates': { type: 'boolean', default: false },
      'write-slice': { type: 'boolean', default: false },
      counts: { type: 'string' },
      help: { type: 'boolean', default: false },
    },
  });
  if (values.help) return null;
  const jobs: Job[] = [
    ...(values.coverage ? (['coverage'] as const) : []),
    ...(values.real === undefined ? [] : (['real'] as const)),
    ...(values.pages ? (['pages'] as const) : []),
    ...(values['write-rates'] ? (['rates'] as const) : []),
    ...(values['write-slice'] ? (['slice'] as const) : []),
  ];
  if (jobs.length > 1) throw new Error('one of --coverage, --real, --pages, --write-rates, --write-slice');
  if (values.honest && values.faults) throw new Error('--honest leaves out what --faults asks for');
  if (values.date !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(values.date))
    throw new Error('--date takes a calendar day like 2026-03-14');
  return {
    job: jobs[0] ?? 'detection',
    build: values.reporting ? 'reporting' : 'tuning',
    seed: values.seed,
    scale: {
      honest: above0('--honest-scale', values['honest-scale'] ?? values.scale),
      faults: above0('--fault-scale', values['fault-scale'] ?? values.scale),
    },
    only: values.only ?? null,
    honest: values.honest,
    faults: values.faults,
    workers: Math.max(1, Math.floor(above0('--workers', values.workers))),
    minutes: values.minutes === undefined ? Infinity : above0('--minutes', values.minutes),
    date: values.date ?? null,
    dump: values.dump ?? null,
    keep: values.keep,
    out: values.out ?? null,
    real: values.real ?? null,
    counts: values.counts ?? null,
  };
}

function above0(name: string, text: string): number {
  const number = Number(text);
  if (!(number > 0 && number < Infinity)) throw new Error(`${name} takes a number above 0, not “${text}”`);
  return number;
}
