import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { meterOf, racing } from './pair.ts';

const shared = {
  rules: ['odd-one-out', 'mean-bias'],
  measure: 'primary apart from two others, share',
  strengths: { borderline: 0.06, moderate: 0.12, clear: 0.2 },
  needs: ['third recording', 'second recording'],
  source: practice,
  wish: racing,
} as const;

/** The primary reads high, two others agree. */
export const oddHigh: Fault = {
  ...shared,
  name: 'primary high, two others agree',
  before: (draft, strength) => withPrimaryMeter(draft, { gain: meterOf(draft, 0).gain * (1 + strength) }),
};

/** The primary sways where two others do not. */
export const oddOffset: Fault = {
  ...shared,
  name: 'primary adds a torque, two others do not',
  rules: ['odd-one-out', 'mean-bias', 'zero-offset'],
  before(draft, strength) {
    const watts = strength * 0.8 * draft.today.ability.cp;
    return withPrimaryMeter(draft, { torqueOffset: watts / ((88 * 2 * Math.PI) / 60) });
  },
};
