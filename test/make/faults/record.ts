import { rideOf } from '../submission.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { bestOf } from './history.ts';

/** W/kg of 5 s and of about 20 min in a published table's top row (Allen, Coggan & McGregor, 3rd ed.). */
const topRow = {
  open: { sprint: 25.18, long: 6.4 },
  women: { sprint: 19.42, long: 5.69 },
} as const;

const shared = {
  rules: ['above-human-record'],
  measure: 'best 20 min above a published top value, W/kg, share',
  strengths: { borderline: 0.1, moderate: 0.2, clear: 0.4 },
  needs: [],
  source: practice,
  wish: (random: { pick<T>(items: readonly T[]): T }) => ({
    kind: random.pick(['time trial', 'long climb'] as const),
    minutes: 40,
  }),
} as const;

/** A meter so wrong that nobody has ever ridden so. */
export const beyondEverybody: Fault = {
  ...shared,
  name: 'power beyond everybody’s',
  before(draft, strength) {
    const perKg = bestOf(rideOf(draft), 1200) / draft.rider.mass;
    const gain = (topRow[draft.rider.recordClass].long * (1 + strength)) / perKg;
    return withPrimaryMeter(draft, { gain });
  },
};

/** The mass is stated so low that the power of a fit rider becomes more than anybody's. */
export const massFarTooLow: Fault = {
  ...shared,
  name: 'mass stated far too low',
  before(draft, strength) {
    const wanted = topRow[draft.rider.recordClass].long * (1 + strength);
    const massKg = Math.round((10 * bestOf(rideOf(draft), 1200)) / wanted) / 10;
    return { ...draft, facts: { ...draft.facts, massKg } };
  },
  wish: () => ({ kind: 'time trial', minutes: 40, rider: { standard: 'elite' } }),
};

/** A sprint that no rider has in the legs. */
export const sprintBeyondEverybody: Fault = {
  ...shared,
  name: 'sprint beyond everybody’s',
  measure: 'best 5 s above a published top value, W/kg, share',
  rules: ['above-human-record', 'sprint-shape', 'impossible-torque'],
  wish: () => ({ kind: 'bunch race', minutes: 40 }),
  before(draft, strength) {
    const perKg = bestOf(rideOf(draft), 5) / draft.rider.mass;
    const error = (topRow[draft.rider.recordClass].sprint * (1 + strength)) / perKg - 1;
    const { cp } = draft.rider.ability;
    return withPrimaryMeter(draft, { sprint: { error, from: cp * 1.5, full: cp * 2 } });
  },
};
