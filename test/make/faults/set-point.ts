import { type Fault, withPrimaryMeter } from './fault.ts';

/** The trainer writes down the power it was told to hold. */
export const reportsTarget: Fault = {
  name: 'set-point reporting',
  rules: ['flat-setpoint'],
  measure: 'share of the ride',
  strengths: { borderline: 0.1, moderate: 0.3, clear: 1 },
  needs: [],
  before(draft, strength, random) {
    const seconds = draft.demand.effort.length;
    const length = Math.round(seconds * strength);
    const from = random.integer(0, seconds - length);
    return withPrimaryMeter(draft, {
      reportsTarget: { stretches: [[from, from + length]], noise: random.between(0, 0.8), hold: 120 },
      kernel: { shape: 'box', seconds: 1 },
    });
  },
};
