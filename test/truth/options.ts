import { parseArgs } from 'node:util';
import type { Build } from '../make/meters.ts';

export interface Options {
  readonly build: Build;
  readonly seed: string;
  readonly scale: number;
  readonly only: string | null;
  readonly workers: number;
  readonly dump: string | null;
  readonly out: string | null;
  readonly real: string | null;
  readonly coverage: boolean;
  readonly honest: boolean;
  readonly faults: boolean;
}

export const usage = `npm run truth -- [options]

  --reporting       draw from the generator that reports (another structure than the one for tuning)
  --seed TEXT       default "1"
  --scale NUMBER    1: sizes that can show the targets; default 0.02
  --only RULE       faults of this rule, and what it does to honest submissions
  --honest          honest submissions alone
  --faults          faults alone
  --coverage        how often intervals hold the true value, instead of detection
  --real FOLDER     hold the simulator against the recordings in FOLDER, and plant faults into them
  --workers N       default 2
  --dump FILE       every answer of every rule, one submission a line (JSON)
  --out FOLDER      where RESULTS.md and charts.html go; default test/truth for a whole run, else out/truth
`;

export function parseOptions(args: readonly string[]): Options | null {
  const { values } = parseArgs({
    args: [...args],
    options: {
      reporting: { type: 'boolean', default: false },
      seed: { type: 'string', default: '1' },
      scale: { type: 'string', default: '0.02' },
      only: { type: 'string' },
      workers: { type: 'string', default: '2' },
      dump: { type: 'string' },
      out: { type: 'string' },
      real: { type: 'string' },
      coverage: { type: 'boolean', default: false },
      honest: { type: 'boolean', default: false },
      faults: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  if (values.help) return null;
  const [scale, workers] = [Number(values.scale), Number(values.workers)];
  if (!(scale > 0) || !(workers >= 1)) throw new Error('--scale and --workers take numbers above 0');
  return {
    build: values.reporting ? 'reporting' : 'tuning',
    seed: values.seed,
    scale,
    only: values.only ?? null,
    workers: Math.floor(workers),
    dump: values.dump ?? null,
    out: values.out ?? null,
    real: values.real ?? null,
    coverage: values.coverage,
    honest: values.honest,
    faults: values.faults,
  };
}
