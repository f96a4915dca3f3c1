import type { Draft } from '../submission.ts';
import { powerAt } from '../torque.ts';
import { type Fault, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['above-history'],
  measure: 'power above the rider’s own ability over 5–20 min, share',
  strengths: { borderline: 0.06, moderate: 0.12, clear: 0.2 },
  needs: ['history'],
} as const;

/** Somebody stronger, or something, did the pedalling. */
export const strongerThanHistory: Fault = {
  ...shared,
  name: 'stronger than the history',
  before(draft, strength) {
    return withAbility(draft, 1 + strength);
  },
};

/** The rider is the same, the meter of the race reads high: the one that made the history does not. */
export const readsAboveHistory: Fault = {
  ...shared,
  name: 'reads above the history',
  before(draft, strength) {
    const meter = draft.meters[draft.recordings[0]!.meter]!;
    return withPrimaryMeter(draft, { gain: meter.gain * (1 + strength) });
  },
};

/** Demand and ability both grow: the effort is as hard for this rider as it was before. */
function withAbility(draft: Draft, factor: number): Draft {
  const { today, demand } = draft;
  const { cp, wPrime, pMax } = today.ability;
  const torque = { standstill: today.torque.standstill * factor, slope: today.torque.slope * factor };
  const most = powerAt(torque, today.cadence);
  return {
    ...draft,
    today: { ...today, torque, ability: { cp: cp * factor, wPrime: wPrime * factor, pMax: pMax * factor } },
    demand: { ...demand, effort: demand.effort.map((watts) => Math.min(most, watts * factor)) },
  };
}
