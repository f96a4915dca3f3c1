import { type Fault, practice } from './fault.ts';
import { meterOf, racing, withMeterOf } from './pair.ts';
import { averagedBy } from './smoothed.ts';

const shared = {
  rules: ['response-lag', 'over-smoothed'],
  needs: ['second recording'],
  source: practice,
  wish: racing,
} as const;

/** The primary answers ever later: its averaging leans on the past. */
export const slowPrimary: Fault = {
  ...shared,
  name: 'primary answers slowly',
  measure: 'seconds of averaging',
  strengths: { borderline: 5, moderate: 10, clear: 30 },
  before: (draft, strength) =>
    withMeterOf(draft, 0, averagedBy(meterOf(draft, 0), { shape: 'box', seconds: strength })),
};

/** The same with a memory that fades, in the second. */
export const slowSecond: Fault = {
  ...shared,
  name: 'second answers slowly',
  measure: 'seconds of averaging',
  strengths: { borderline: 5, moderate: 10, clear: 30 },
  before: (draft, strength) =>
    withMeterOf(draft, 1, averagedBy(meterOf(draft, 1), { shape: 'exponential', seconds: strength })),
};
