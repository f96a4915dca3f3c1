import { type Fault, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['sprint-overshoot'],
  measure: 'error of sprints beyond the steady one, share',
  strengths: { borderline: 0.08, moderate: 0.15, clear: 0.27 },
  needs: ['second recording'],
} as const;

/** Reads high at sprint power: all of a hard effort is too high. */
export const sprintHigh: Fault = {
  ...shared,
  name: 'sprint high',
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    return withPrimaryMeter(draft, { sprint: { error: strength, from: cp * 1.25, full: cp * 1.6 } });
  },
};

/** Overshoots while power leaps up: the first seconds of an effort are too high. */
export const sprintOvershoot: Fault = {
  ...shared,
  name: 'sprint overshoot',
  before(draft, strength) {
    return withPrimaryMeter(draft, { overshoot: strength * 2 });
  },
};
