import { powerFor } from '../ability.ts';
import { ride, type Truth } from '../ride.ts';
import { Script } from '../rides/script.ts';
import { type Draft, oncePerDraft, rideOf } from '../submission.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['above-history'],
  measure: 'best of 5, 12 or 20 min above what the rider can do fresh, share',
  strengths: { borderline: 0.06, moderate: 0.12, clear: 0.2 },
  needs: ['history'],
  source: practice,
} as const;

/** Somebody stronger, or something, did the pedalling. */
export const strongerThanHistory: Fault = {
  ...shared,
  name: 'stronger than the history',
  before(draft, strength) {
    return withAbility(draft, (1 + strength) / shareOfAbility(draft));
  },
};

/** The rider is the same, the meter of the race reads high: the one that made the history does not. */
export const readsAboveHistory: Fault = {
  ...shared,
  name: 'reads above the history',
  before(draft, strength) {
    return withPrimaryMeter(draft, { gain: (1 + strength) / shareOfAbility(draft) });
  },
};

/**
 * How near the honest ride comes to the rider's own limit. Few races are ridden at it for five minutes or
 * more; without this, a stated excess would hide behind an easy race.
 */
function shareOfAbility(draft: Draft): number {
  const truth = rideOf(draft);
  const shares = [300, 720, 1200].map(
    (seconds) => bestOf(truth, seconds) / powerFor(draft.rider.ability, seconds),
  );
  return Math.max(...shares);
}

/** Highest mean crank power (W) over so many seconds. */
export function bestOf({ secondPower }: Pick<Truth, 'secondPower'>, width: number): number {
  let sum = 0;
  let most = 0;
  for (let i = 0; i < secondPower.length; i++) {
    sum += secondPower[i]! - (i >= width ? secondPower[i - width]! : 0);
    if (i >= width - 1 && sum > most) most = sum;
  }
  return most / width;
}

/** Demand and ability grow alike: the effort is as hard as it was, for somebody else. */
function withAbility(draft: Draft, factor: number): Draft {
  const { today, demand } = draft;
  const { cp, wPrime, pMax } = today.ability;
  return {
    ...draft,
    today: {
      ...today,
      torque: { standstill: today.torque.standstill * factor, slope: today.torque.slope * factor },
      ability: { cp: cp * factor, wPrime: wPrime * factor, pMax: pMax * factor },
    },
    demand: { ...demand, effort: demand.effort.map((watts) => watts * factor) },
  };
}

const sprints = {
  rules: ['above-history', 'sprint-shape'],
  measure: 'best 5 s above what the rider can do fresh, share',
  strengths: { borderline: 0.15, moderate: 0.25, clear: 0.4 },
  needs: ['history', 'sprints in history'],
  source: practice,
  wish: () => ({ kind: 'bunch race' as const, minutes: 45 }),
} as const;

/** A sprinter rode it. */
export const sprinterRode: Fault = {
  ...sprints,
  name: 'sprints beyond the history: another rider',
  before(draft, strength) {
    // Legs, gears and reserve answer to a stronger sprint in their own way: a few steps towards the strength.
    let stronger = draft;
    for (let step = 0, factor = 1; step < 4; step++) {
      factor *= (1 + strength) / shareOfSprint(stronger);
      stronger = withSprint(draft, factor);
    }
    return stronger;
  },
};

/** The meter reads sprints high. */
export const sprintsReadHigh: Fault = {
  ...sprints,
  name: 'sprints beyond the history: the meter',
  before(draft, strength) {
    const { cp } = draft.rider.ability;
    const error = (1 + strength) / shareOfSprint(draft) - 1;
    return withPrimaryMeter(draft, { sprint: { error, from: 1.2 * cp, full: 1.6 * cp } });
  },
};

function withSprint(draft: Draft, factor: number): Draft {
  const { today } = draft;
  const { standstill, slope } = today.torque;
  const torque = { standstill: standstill * factor, slope: slope * factor };
  return {
    ...draft,
    today: { ...today, torque, ability: { ...today.ability, pMax: today.ability.pMax * factor } },
  };
}

function shareOfSprint(draft: Draft): number {
  return bestOf(rideOf(draft), 5) / freshSprint(draft);
}

/**
 * Best 5 s (W) of the rider's own sprint on fresh legs. They ride it: riders stand some percent above the end
 * of their power–duration curve, each by as much as legs and gears allow.
 */
const freshSprint = oncePerDraft(({ rider, random }) => {
  const seconds = 240;
  const script = new Script(seconds);
  script.line(0, seconds, 0.7 * rider.ability.cp);
  script.sprint(200, 12);
  const demand = script.done({
    kind: 'bunch race',
    raceKind: 'race',
    indoors: true,
    control: 'free',
    window: [0, seconds],
    roughness: 1,
  });
  return bestOf(ride(rider, demand, random.fork('fresh sprint'), { step: 1 }), 5);
});
