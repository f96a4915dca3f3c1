import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { racing } from './pair.ts';

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
    withPrimaryMeter(draft, { kernel: { shape: 'box', seconds: strength }, every: 0.25 }),
};

/** The same with a memory that fades, in the second. */
export const slowSecond: Fault = {
  ...shared,
  name: 'second answers slowly',
  measure: 'seconds of averaging',
  strengths: { borderline: 5, moderate: 10, clear: 30 },
  before(draft, strength) {
    const at = draft.recordings[1]!.meter;
    const slow = { kernel: { shape: 'exponential', seconds: strength } as const, every: 0.25 };
    return { ...draft, meters: draft.meters.map((meter, k) => (k === at ? { ...meter, ...slow } : meter)) };
  },
};
