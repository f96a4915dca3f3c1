import { nextBalance } from '../ability.ts';
import { type Draft, rideOf } from '../submission.ts';
import { torqueOf } from '../torque.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shape = {
  rules: ['sprint-shape', 'above-history'],
  measure: 'sprints above those that were ridden, share',
  strengths: { borderline: 0.3, moderate: 0.6, clear: 1 },
  needs: ['history', 'sprints in history'],
  source: practice,
  wish: () => ({ kind: 'bunch race' as const, minutes: 45 }),
} as const;

/** The meter reads sprints far too high. */
export const sprintsLifted: Fault = {
  ...shape,
  name: 'sprints out of proportion: the meter',
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    return withPrimaryMeter(draft, { sprint: { error: strength, from: cp * 1.5, full: cp * 2 } });
  },
};

/** The last effort was rewritten. */
export const sprintsRewritten: Fault = {
  ...shape,
  name: 'sprints out of proportion: rewritten',
  after(submission, strength) {
    const ridden = submission.primary.channels.power!;
    // Best 5 s: as much as their share of it gives is added there, and elsewhere what stands above in proportion.
    const at = bestStart(ridden, 5);
    const best = sum(ridden, at, 5);
    // Where nobody sprinted, the best is little above that: a fifth of it at least is multiplied.
    const from = Math.min(1.5 * submission.truth.draft.rider.ability.cp, (0.8 * best) / 5);
    const above = ridden.map((watts) => Math.max(0, watts - from) || 0);
    const added = (strength * best) / Math.max(sum(above, at, 5), 1);
    return toldOtherwise(submission, {
      power: ridden.map((watts, k) => Math.round(watts + above[k]! * added)),
    });
  },
};

/** First of the `width` records that hold most. */
function bestStart(power: Float64Array, width: number): number {
  let best = 0;
  for (let k = 1; k + width <= power.length; k++)
    if (sum(power, k, width) > sum(power, best, width)) best = k;
  return best;
}

function sum(column: Float64Array, from: number, width: number): number {
  return column.subarray(from, from + width).reduce((a, b) => a + (b || 0), 0);
}

const reserve = {
  rules: ['reserve-overdrawn', 'above-history'],
  measure: 'critical power and reserve that the race asks for, above the rider’s own, share',
  strengths: { borderline: 0.1, moderate: 0.2, clear: 0.35 },
  needs: ['history'],
  source: practice,
} as const;

/** The meter reads everything above CP too high. */
export const hardPartsHigh: Fault = {
  ...reserve,
  name: 'everything above CP reads high',
  wish: () => ({ kind: 'bunch race', minutes: 45 }),
  before(draft, strength) {
    const from = 0.95 * draft.rider.ability.cp;
    const gain = gainThatEmpties(draft, strength, from);
    return withPrimaryMeter(draft, {
      twist(power) {
        for (let i = 0; i < power.length; i++) if (power[i]! > from) power[i]! *= gain;
      },
    });
  },
};

/** All of a time trial reads high. */
export const allOfItHigh: Fault = {
  ...reserve,
  name: 'all of an all-out ride reads high',
  wish: (random) => ({ kind: random.pick(['time trial', 'short race'] as const) }),
  before: (draft, strength) => withPrimaryMeter(draft, { gain: gainThatEmpties(draft, strength, 0) }),
};

/**
 * Readings over truth, for power above `from` (W), with which the ride just empties the reserve of somebody
 * whose critical power and reserve are this share above the rider's. Few races take all that their rider
 * has; without this, a stated excess would hide behind what an easy race leaves in reserve.
 */
function gainThatEmpties(draft: Draft, strength: number, from: number): number {
  const { secondPower } = rideOf(draft);
  const { cp, wPrime, pMax } = draft.rider.ability;
  const stronger = { cp: cp * (1 + strength), wPrime: wPrime * (1 + strength), pMax };
  const empties = (gain: number) => {
    let left = stronger.wPrime;
    return secondPower.some((watts) => {
      left = nextBalance(stronger, left, watts > from ? watts * gain : watts, 1);
      return left === 0;
    });
  };
  let [low, high] = [0.5, 4];
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (empties(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const torque = {
  rules: ['impossible-torque', 'power-spike'],
  measure: 'crank torque above 326 - 1.04·rpm N·m, share',
  strengths: { borderline: 0.05, moderate: 0.2, clear: 0.5 },
  needs: ['cadence'],
  source: 'torque of 266 ± 20 N·m, slope -1.04 N·m/rpm, seven elite men (Gardner et al. 2007)',
} as const;

const limitAt = (rpm: number) => 326 - 1.04 * rpm;
const watts = (newtonMetres: number, rpm: number) => (newtonMetres * rpm * 2 * Math.PI) / 60;

/** A meter that saturates upwards in slow, hard pedalling: some seconds of torque that no leg has. */
export const torqueBeyondLegs: Fault = {
  ...torque,
  name: 'torque beyond legs for some seconds',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const cadence = submission.primary.channels.cadence!.slice();
    for (let burst = 0, count = random.integer(2, 5); burst < count; burst++) {
      const from = random.integer(60, power.length - 60);
      const rpm = random.integer(50, 85);
      for (let k = from; k < from + random.integer(5, 10); k++) {
        cadence[k] = rpm;
        power[k] = Math.round(watts(limitAt(rpm) * (1 + strength) * random.normal(1.04, 0.01), rpm));
      }
    }
    return toldOtherwise(submission, { power, cadence });
  },
};

/** The magnet counts half of the turns in hard efforts: half the cadence is twice the torque. */
export const halfTheTurns: Fault = {
  ...torque,
  name: 'sprints that are too high at half the cadence',
  wish: () => ({ kind: 'bunch race', minutes: 40, rider: { recordClass: 'open', standard: 'racer' } }),
  after(submission, strength) {
    const power = submission.primary.channels.power!.slice();
    const cadence = submission.primary.channels.cadence!.slice();
    const best = Math.max(...power);
    for (let k = 0; k < power.length; k++) {
      if (power[k]! < 0.7 * best) continue;
      const rpm = Math.max(45, Math.round(cadence[k]! / 2));
      cadence[k] = rpm;
      const least = limitAt(rpm) * (1 + strength) * 1.03;
      if (torqueOf(power[k]!, rpm) < least) power[k] = Math.round(watts(least, rpm));
    }
    return toldOtherwise(submission, { power, cadence });
  },
};
