import { type Fault, withPrimaryMeter } from './fault.ts';

/** The primary's gain rises evenly through the race. */
export const drift: Fault = {
  name: 'drift',
  rules: ['late-drift'],
  measure: 'rise over the race, share',
  strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
  needs: ['second recording'],
  before(draft, strength) {
    const [from, to] = draft.demand.window;
    return withPrimaryMeter(draft, { driftPerHour: (strength * 3600) / (to - from) });
  },
};

/** The primary warms up without compensation: most of the change comes early. */
export const warming: Fault = {
  name: 'warming',
  rules: ['late-drift', 'warmup-crossing'],
  measure: 'rise from the first minute to the last, share',
  strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
  needs: ['second recording'],
  before(draft, strength) {
    // 0.65 %/°C is the upper published coefficient (Gardner et al. 2004); the degrees make the strength.
    const perDegree = 0.0065;
    return withPrimaryMeter(draft, { temperature: { perDegree, warming: strength / perDegree, tau: 900 } });
  },
};
