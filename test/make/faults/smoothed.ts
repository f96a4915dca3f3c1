import { smooth } from '../meter/smooth.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['over-smoothed'],
  measure: 'seconds of averaging',
  strengths: { borderline: 5, moderate: 10, clear: 30 },
  needs: [],
  source: practice,
} as const;

/** A head unit that averages before it writes. */
export const headUnitAverages: Fault = {
  ...shared,
  name: 'head unit averages',
  after(submission, strength) {
    const power = smooth(submission.primary.channels.power!, 1, { shape: 'box', seconds: strength });
    return toldOtherwise(submission, { power: power.map(Math.round) });
  },
};

/** A trainer that smooths what it tells, with a memory that fades. */
export const trainerSmooths: Fault = {
  ...shared,
  name: 'trainer smooths',
  before: (draft, strength) =>
    withPrimaryMeter(draft, { kernel: { shape: 'exponential', seconds: strength }, every: 0.25 }),
};

/** Smoothing switched on in mid-ride. */
export const smoothingSwitched: Fault = {
  ...shared,
  name: 'smoothing switched on in mid-ride',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const from = Math.round(power.length * random.between(0.15, 0.4));
    const after = smooth(power.slice(from), 1, { shape: 'box', seconds: strength });
    power.set(after.map(Math.round), from);
    return toldOtherwise(submission, { power });
  },
};
