import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['implied-mass'],
  measure: 'mass that rides below the mass declared, share',
  strengths: { borderline: 0.06, moderate: 0.12, clear: 0.2 },
  needs: [],
  source: practice,
} as const;

/** On a simulated course the rider entered less than they weigh: speed is that of somebody lighter. */
export const massUnderstated: Fault = {
  ...shared,
  name: 'mass understated to the course',
  wish: () => ({ kind: 'long climb', minutes: 40, places: ['trainer', 'pedal'] }),
  before: (draft, strength) => ({
    ...draft,
    demand: { ...draft.demand, indoors: true },
    today: { ...draft.today, mass: draft.today.mass * (1 - strength) },
  }),
};

/** The same, for this race alone: in earlier ones the rider entered what they weigh. */
export const massLowered: Fault = {
  ...massUnderstated,
  name: 'mass lowered for the race',
  needs: ['history'],
};

/** In a race with shorter climbs the mass was changed at the weigh-in alone: declared is more than rides. */
export const massOverstated: Fault = {
  ...shared,
  name: 'mass declared above the one that rides',
  wish: () => ({ kind: 'bunch race', minutes: 60, places: ['trainer', 'pedal'] }),
  before(draft, strength) {
    const massKg = Math.round((10 * draft.rider.mass) / (1 - strength)) / 10;
    return { ...draft, facts: { ...draft.facts, massKg } };
  },
};
