import { quantileSorted } from 'simple-statistics';
import type { Truth } from '../ride.ts';
import { type Draft, rideOf } from '../submission.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { trainerAndPedals, withMeterOf } from './pair.ts';

const hinge = {
  // What grows above 350 W is largest in sprints.
  rules: ['power-dependent-bias', 'sprint-overshoot'],
  measure: 'W more for each W above 350',
  strengths: { borderline: 0.1, moderate: 0.2, clear: 0.4 },
  needs: ['second recording'],
  // Above 350 W only the strong ride for long.
  wish: () => ({
    kind: 'bunch race' as const,
    minutes: 50,
    rider: { recordClass: 'open' as const, standard: 'elite' as const },
  }),
} as const;

const above350 = (slope: number) => (power: Float64Array) => {
  for (let i = 0; i < power.length; i++) power[i]! += slope * Math.max(0, power[i]! - 350);
};

/** The primary reads ever higher beyond 350 W. */
export const risesAbove: Fault = {
  ...hinge,
  name: 'primary rises above 350 W',
  source: 'trainers in set-power mode: -1.1 % at 250–700 W, 13 % at 750–999 W (Zadow et al. 2016)',
  before: (draft, strength) => withPrimaryMeter(draft, { twist: above350(strength) }),
};

/** The second gives way beyond 350 W: its tyre or belt slips, its bridge saturates. */
export const slipsAbove: Fault = {
  ...hinge,
  name: 'second slips above 350 W',
  source: practice,
  // What the primary reads above the second is to be the same as in the other mechanism.
  before: (draft, strength) => withMeterOf(draft, 1, { twist: above350(-strength / (1 + strength)) }),
};

const cadence = {
  rules: ['cadence-dependent-bias'],
  measure: 'change over the range of cadence or flywheel speed in the ride, share',
  strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
  needs: ['second recording', 'cadence'],
} as const;

/** How far apart the middle nine tenths of what is ridden at lie, over the seconds of the race with power. */
function middleRange(draft: Draft, of: (truth: Truth) => (second: number) => number): number {
  const truth = rideOf(draft);
  const at = of(truth);
  const [from, to] = draft.demand.window;
  const values: number[] = [];
  for (let second = from; second < to; second++) if (truth.secondPower[second]! > 0) values.push(at(second));
  values.sort((a, b) => a - b);
  return quantileSorted(values, 0.95) - quantileSorted(values, 0.05);
}

/** Error with cadence. */
export const highCadenceHigh: Fault = {
  ...cadence,
  name: 'primary reads high at high cadence',
  source: 'error growing by 0.8 % per 10 rpm (Pallarés & Lillo-Bevia 2018, JSSM 17:305)',
  wish: () => ({ kind: 'bunch race', minutes: 50, ...trainerAndPedals }),
  before(draft, strength) {
    const rpm = middleRange(draft, ({ cadence, step }) => {
      const perSecond = Math.round(1 / step);
      return (second) => cadence[second * perSecond]!;
    });
    return withPrimaryMeter(draft, { cadenceSlope: strength / (rpm / 10) });
  },
};

/** Error with flywheel speed, which a climb slows and a descent speeds up. */
export const flywheelSpeed: Fault = {
  ...cadence,
  name: 'primary reads high at high flywheel speed',
  source: practice,
  rules: ['cadence-dependent-bias', 'power-dependent-bias'],
  wish: () => ({ kind: 'bunch race', minutes: 50, ...trainerAndPedals }),
  before(draft, strength) {
    const metresPerSecond = middleRange(
      draft,
      ({ speed }) =>
        (second) =>
          speed[second]!,
    );
    return withPrimaryMeter(draft, { speedSlope: strength / (metresPerSecond / 10) });
  },
};
