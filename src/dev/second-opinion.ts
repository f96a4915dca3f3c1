/**
 * Has NumPy, SciPy and R compute, over simulated pairs, what our numerics compute, and records inputs and answers
 * for the tests: `node src/dev/run.mjs src/dev/second-opinion.ts`. Needs Debian's python3-scipy, r-cran-epir,
 * r-cran-jsonlite and r-cran-strucchange; the tests need only the record.
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import process from 'node:process';
import { ridden } from '../../test/measure/pair/make.ts';
import type { Recording } from '../types.ts';

const [today] = new Date().toISOString().split('T');
const record = 'test/math/second-opinion.json';
const blockSeconds = 30;
const traceSeconds = 900;

const ride = { kind: 'bunch race', minutes: 60 } as const;
const step = { at: 1800, over: 1, torque: 1.2 };
const [sound, rising, stepped] = [
  ridden('second opinion', ride, []),
  ridden('second opinion, rising', ride, [{ driftPerHour: 0.08, cadenceSlope: 0.001 }]),
  ridden('second opinion, stepped', ride, [{ offsetStep: step }]),
];

/** Means of blocks in which both meters were turned; to 0.1 W, so that the record stays small. */
function blocks(own: Recording, other: Recording) {
  const [power, second, cadence] = [column(own, 'power'), column(other, 'power'), column(own, 'cadence')];
  const means = { own: [] as number[], other: [] as number[], cadence: [] as number[] };
  const length = Math.min(power.length, second.length);
  for (let at = 0; at + blockSeconds <= length; at += blockSeconds) {
    const mean = (values: readonly number[]) => {
      const block = values.slice(at, at + blockSeconds);
      return Math.round((10 * block.reduce((a, b) => a + b, 0)) / block.length) / 10;
    };
    const [a, b, turned] = [mean(power), mean(second), mean(cadence)];
    if (!(a > 50 && b > 50 && turned > 40)) continue;
    means.own.push(a);
    means.other.push(b);
    means.cadence.push(turned);
  }
  return means;
}

function column(recording: Recording, channel: 'power' | 'cadence'): number[] {
  return Array.from(recording.channels[channel]!, (value) => (Number.isNaN(value) ? 0 : value));
}

const pairs = [sound, rising, stepped].map(({ primary, seconds: [second] }) => blocks(primary, second!));
const shortest = Math.min(...pairs.map(({ own }) => own.length));
const given = {
  pairs,
  traces: {
    own: column(sound.primary, 'power').slice(0, traceSeconds),
    other: column(sound.seconds[0]!, 'power').slice(7, traceSeconds),
  },
  readings: pairs.map(({ own }, k) =>
    pairs[0]!.own.slice(0, shortest).map((watts, i) => (k === 0 ? watts : own[i]!)),
  ),
};

/** What a program makes of it: JSON in, JSON out. */
function askedOf(program: string, script: string): unknown {
  const input = JSON.stringify(given);
  const { status, stdout, stderr } = spawnSync(program, [script], { input, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

const answers = {
  scipy: askedOf('/usr/bin/python3', 'src/dev/second-opinion.py'),
  r: askedOf('/usr/bin/Rscript', 'src/dev/second-opinion.R'),
};
writeFileSync(record, `${JSON.stringify({ computed: today, given, answers })}\n`);
process.stdout.write(`${record}: written\n`);
