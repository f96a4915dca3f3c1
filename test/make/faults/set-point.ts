import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['flat-setpoint'],
  measure: 'share of the ride',
  strengths: { borderline: 0.1, moderate: 0.3, clear: 1 },
  needs: [],
  source: practice,
} as const;

/** The trainer writes down the power it was told to hold. */
export const reportsTarget: Fault = {
  ...shared,
  name: 'set-point reporting',
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

/** Reporting is smoothed towards the target: slow ramps with a watt of dither, in several parts of the ride. */
export const smoothedTarget: Fault = {
  ...shared,
  name: 'target with dither, in several parts',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const parts = strength >= 1 ? 1 : random.integer(2, 4);
    const length = Math.floor((power.length * strength) / parts);
    const spacing = Math.floor(power.length / parts);
    for (let part = 0; part < parts; part++) {
      const first = part * spacing + random.integer(0, Math.max(0, spacing - length));
      for (let from = first; from < first + length; ) {
        const end = Math.min(first + length, from + random.integer(45, 180));
        const level = power.subarray(from, end).reduce((sum, watts) => sum + (watts || 0), 0) / (end - from);
        for (let k = from; k < end; k++) power[k] = Math.round(level) + random.integer(-1, 1);
        from = end;
      }
    }
    return toldOtherwise(submission, { power });
  },
};
