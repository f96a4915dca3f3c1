import { leaps, ramp } from '../meter/error.ts';
import { type Draft, rideOf } from '../submission.ts';
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

/** Where the power of a hard effort begins, and where all of it counts, as multiples of critical power. */
const hard = { from: 1.25, full: 1.6 };

function hardOf({ rider }: Draft): { readonly from: number; readonly full: number } {
  const { cp } = rider.ability;
  return { from: cp * hard.from, full: cp * hard.full };
}

/** Reads high at sprint power: all of a hard effort is too high. */
export const sprintHigh: Fault = {
  ...shared,
  name: 'sprint high',
  source: 'trainers in set-power mode: 13 % (-24 to 50 %) at 750–999 W (Zadow et al. 2016)',
  before(draft, strength) {
    const { from, full } = hardOf(draft);
    const error = excessOf(
      strength,
      sharesOf(draft, (power) => power.map((watts) => ramp(watts, from, full))),
    );
    return withPrimaryMeter(draft, { sprint: { error, from, full } });
  },
};

/** Overshoots while power leaps up: the first seconds of a hard effort are too high. */
export const sprintOvershoot: Fault = {
  ...shared,
  name: 'sprint overshoot',
  source: practice,
  before(draft, strength) {
    const { from, full } = hardOf(draft);
    const leapsOf = (power: Float64Array, step: number) => leaps(power, step, from, full);
    const overshoot = excessOf(strength, sharesOf(draft, leapsOf));
    return withPrimaryMeter(draft, {
      twist(power, { step }) {
        leapsOf(power, step).forEach((leap, i) => {
          power[i]! *= 1 + overshoot * leap;
        });
      },
    });
  },
};

/** What an error's share of each moment's power comes to, of the work of all-out seconds and of all others. */
interface Shares {
  readonly sprints: number;
  readonly rest: number;
}

function sharesOf(draft: Draft, of: (power: Float64Array, step: number) => Float64Array): Shares {
  const { power, step, demand } = rideOf(draft);
  const shares = of(power, step);
  const sums = { sprints: [0, 0], rest: [0, 0] } as const satisfies Record<string, [number, number]>;
  for (let i = 0; i < power.length; i++) {
    const sum = demand.allOut[Math.floor(i * step)] === 1 ? sums.sprints : sums.rest;
    sum[0] += shares[i]! * power[i]!;
    sum[1] += power[i]!;
  }
  return { sprints: sums.sprints[0] / sums.sprints[1], rest: sums.rest[0] / sums.rest[1] };
}

/** The error e of which (1 + e·sprints) / (1 + e·rest), sprints over the rest, is as much more as the strength says. */
function excessOf(strength: number, { sprints, rest }: Shares): number {
  return strength / (sprints - (1 + strength) * rest);
}

/** The second loses power in hard efforts: in a low gear, or because the tyre slips. */
export const secondLosesSprints: Fault = {
  ...shared,
  name: 'second loses sprints',
  source: 'a pedal meter 36.9 % low in a 5 s sprint in a low gear (Bouillod et al. 2017, IJSPP 12:1023)',
  before(draft, strength) {
    const { from, full } = hardOf(draft);
    // What the primary reads above the second is to be the same as in the other mechanisms.
    const shares = sharesOf(draft, (power) => power.map((watts) => ramp(watts, from, full)));
    const error = excessOf(1 / (1 + strength) - 1, shares);
    return withMeterOf(draft, 1, { sprint: { error, from, full } });
  },
};
