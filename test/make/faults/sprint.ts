import { leaps } from '../meter/error.ts';
import type { Truth } from '../ride.ts';
import { rideOf } from '../submission.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { withMeterOf } from './pair.ts';

const shared = {
  rules: ['sprint-overshoot'],
  measure: 'error of sprints beyond the steady one, share',
  strengths: { borderline: 0.08, moderate: 0.15, clear: 0.27 },
  needs: ['second recording'],
  wish: (random: { integer(low: number, high: number): number }) => ({
    kind: 'bunch race' as const,
    minutes: random.integer(35, 60),
  }),
} as const;

/** Reads high at sprint power: all of a hard effort is too high. */
export const sprintHigh: Fault = {
  ...shared,
  name: 'sprint high',
  source: 'trainers in set-power mode: 13 % (-24 to 50 %) at 750–999 W (Zadow et al. 2016)',
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    return withPrimaryMeter(draft, { sprint: { error: strength, from: cp * 1.25, full: cp * 1.6 } });
  },
};

/** Overshoots while power leaps up: the first seconds of a hard effort are too high. */
export const sprintOvershoot: Fault = {
  ...shared,
  name: 'sprint overshoot',
  source: practice,
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    const leapsOf = (power: Float64Array, step: number) => leaps(power, step, cp * 1.25, cp * 1.6);
    const truth = rideOf(draft);
    const { sprints, rest } = sharesOf(leapsOf(truth.power, truth.step), truth);
    // Sprints read (1 + o·sprints) / (1 + o·rest) of the rest: as much more as the strength says.
    const overshoot = strength / (sprints - (1 + strength) * rest);
    return withPrimaryMeter(draft, {
      twist(power, { step }) {
        leapsOf(power, step).forEach((leap, i) => {
          power[i]! *= 1 + overshoot * leap;
        });
      },
    });
  },
};

/** What a share of each moment's power comes to, of the work of all-out seconds and of all others. */
function sharesOf(shares: Float64Array, { power, step, demand }: Truth): { sprints: number; rest: number } {
  const sums = { sprints: [0, 0], rest: [0, 0] } as const satisfies Record<string, [number, number]>;
  for (let i = 0; i < power.length; i++) {
    const sum = demand.allOut[Math.floor(i * step)] === 1 ? sums.sprints : sums.rest;
    sum[0] += shares[i]! * power[i]!;
    sum[1] += power[i]!;
  }
  return { sprints: sums.sprints[0] / sums.sprints[1], rest: sums.rest[0] / sums.rest[1] };
}

/** The second loses power in hard efforts: in a low gear, or because the tyre slips. */
export const secondLosesSprints: Fault = {
  ...shared,
  name: 'second loses sprints',
  source: 'a pedal meter 36.9 % low in a 5 s sprint in a low gear (Bouillod et al. 2017, IJSPP 12:1023)',
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    const sprint = { error: 1 / (1 + strength) - 1, from: cp * 1.25, full: cp * 1.6 };
    return withMeterOf(draft, 1, { sprint });
  },
};
