import { type Kernel, smooth } from '../meter/smooth.ts';
import type { MeterSpec } from '../meter.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice } from './fault.ts';
import { meterOf, withMeterOf } from './pair.ts';

const shared = {
  rules: ['over-smoothed'],
  measure: 'seconds of averaging',
  strengths: { borderline: 5, moderate: 10, clear: 30 },
  needs: ['every second'],
  source: practice,
} as const;

/** A head unit that averages before it writes. */
export const headUnitAverages: Fault = {
  ...shared,
  name: 'head unit averages',
  after(submission, strength) {
    const power = meanOver(submission.primary.channels.power!, strength);
    return toldOtherwise(submission, { power });
  },
};

/** A trainer that smooths what it tells, with a memory that fades. */
export const trainerSmooths: Fault = {
  ...shared,
  name: 'trainer smooths',
  before: (draft, strength) =>
    withMeterOf(draft, 0, averagedBy(meterOf(draft, 0), { shape: 'exponential', seconds: strength })),
};

/** Smoothing switched on in mid-ride. */
export const smoothingSwitched: Fault = {
  ...shared,
  name: 'smoothing switched on in mid-ride',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const from = Math.round(power.length * random.between(0.15, 0.4));
    power.set(meanOver(power.subarray(from), strength), from);
    return toldOtherwise(submission, { power });
  },
};

/** What is averaged is what the meter read before: its single errors and what strokes leave average out as well. */
export function averagedBy({ kernel, noise }: MeterSpec, slow: Kernel): Partial<MeterSpec> {
  return {
    kernel: slow,
    every: 0.25,
    noise: noise * Math.sqrt(Math.max(1, kernel.seconds) / slow.seconds),
    ripple: null,
  };
}

/** Whole watts, each the mean of the last seconds; over a dropout the last reading goes on in the mean. */
function meanOver(power: Float64Array, seconds: number): Float64Array {
  let last = 0;
  const held = power.map((watts) => {
    if (!Number.isNaN(watts)) last = watts;
    return last;
  });
  const means = smooth(held, 1, { shape: 'box', seconds });
  return power.map((watts, k) => (Number.isNaN(watts) ? watts : Math.round(means[k]!)));
}
