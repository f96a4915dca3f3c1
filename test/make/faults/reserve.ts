import { torqueOf } from '../torque.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shape = {
  rules: ['sprint-shape', 'above-history'],
  measure: 'sprints above what the rider has, share',
  strengths: { borderline: 0.3, moderate: 0.6, clear: 1 },
  needs: ['history'],
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
    const power = submission.primary.channels.power!.slice();
    const { cp } = submission.truth.draft.rider.ability;
    for (let k = 0; k < power.length; k++) {
      const above = Math.max(0, power[k]! - 1.5 * cp);
      power[k] = Math.round(power[k]! + above * strength * 1.6);
    }
    return toldOtherwise(submission, { power });
  },
};

const reserve = {
  rules: ['reserve-overdrawn', 'above-history'],
  measure: 'power above the rider’s own ability in hard efforts, share',
  strengths: { borderline: 0.1, moderate: 0.2, clear: 0.35 },
  needs: ['history'],
  source: practice,
} as const;

/** The meter reads everything above CP too high. */
export const hardPartsHigh: Fault = {
  ...reserve,
  name: 'everything above CP reads high',
  wish: () => ({ kind: 'bunch race', minutes: 45 }),
  before: (draft, strength) =>
    withPrimaryMeter(draft, {
      twist(power) {
        const { cp } = draft.rider.ability;
        for (let i = 0; i < power.length; i++) if (power[i]! > 0.95 * cp) power[i]! *= 1 + strength;
      },
    }),
};

/** All of a time trial reads high. */
export const allOfItHigh: Fault = {
  ...reserve,
  name: 'all of an all-out ride reads high',
  wish: (random) => ({ kind: random.pick(['time trial', 'short race'] as const) }),
  before: (draft, strength) => withPrimaryMeter(draft, { gain: 1 + strength }),
};

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
