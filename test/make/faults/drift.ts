import type { MeterSpec } from '../meter.ts';
import type { Draft } from '../submission.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { meterOf, racing, withMeterOf } from './pair.ts';

const shared = {
  rules: ['late-drift'],
  strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
  needs: ['second recording'],
  wish: racing,
} as const;

/** The primary's gain rises evenly through the race. */
export const drift: Fault = {
  ...shared,
  name: 'drift',
  measure: 'rise over the race, share',
  source: practice,
  before: (draft, strength) =>
    withPrimaryMeter(draft, { driftPerHour: driftBetween(draft.demand.window, strength) }),
};

/**
 * Straight change of the gain, share an hour, with which a meter reads this share more at the later of two
 * moments (s) than at the earlier: by when it has gained something already, of which it is a share too.
 */
export function driftBetween([from, to]: readonly [number, number], rise: number): number {
  return (3600 * rise) / (to - (1 + rise) * from);
}

/** The primary warms up without compensation: most of the change comes early. */
export const warming: Fault = {
  ...shared,
  name: 'warming',
  rules: ['late-drift', 'warmup-crossing'],
  measure: 'rise over the race, share; more of it early',
  source: '0.40–0.65 %/°C (Gardner et al. 2004)',
  before: (draft, strength) => withPrimaryMeter(draft, { temperature: warmingBy(draft, strength, 900) }),
};

/** A warming whose reading rises by this share from the first second of the race to the last. */
function warmingBy(draft: Draft, rise: number, tau: number): MeterSpec['temperature'] {
  // The upper published coefficient; the degrees make the rise.
  const perDegree = 0.0065;
  const [from, to] = draft.demand.window;
  const [atStart, atEnd] = [from, to].map((second) => 1 - Math.exp(-second / tau)) as [number, number];
  // (1 + w·atEnd) / (1 + w·atStart) = 1 + rise.
  return { perDegree, warming: rise / (atEnd - (1 + rise) * atStart) / perDegree, tau };
}

/** The second cools as the race goes outdoors, or a fan comes on: it falls away below the primary. */
export const secondFalls: Fault = {
  ...shared,
  name: 'second falls away',
  measure: 'fall over the race, share of the second',
  source: '0.40–0.65 %/°C (Gardner et al. 2004)',
  before: (draft, strength) =>
    withMeterOf(draft, 1, { driftPerHour: driftBetween(draft.demand.window, 1 / (1 + strength) - 1) }),
};

/** A zero offset lost in mid-ride: from one second to the next the primary adds a torque. */
export const offsetLost: Fault = {
  ...shared,
  name: 'zero offset lost in mid-race',
  most: 'query',
  rules: ['late-drift', 'zero-offset', 'mean-bias'],
  measure: 'step at the rider’s mean power, share',
  source: '1 N·m is 9.4 W at 90 rpm (computed)',
  before(draft, strength, random) {
    const [from, to] = draft.demand.window;
    const watts = strength * 0.8 * draft.today.ability.cp;
    const at = Math.round(from + (to - from) * random.between(0.35, 0.6));
    return withPrimaryMeter(draft, { offsetStep: { at, torque: watts / ((90 * 2 * Math.PI) / 60) } });
  },
};

/** One pedal of the second drops out for good: half the power is gone from there on. */
export const pedalDropsOut: Fault = {
  name: 'one pedal of the second drops out',
  most: 'query',
  rules: ['late-drift', 'mean-bias', 'wide-spread'],
  measure: 'always half the power',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['second recording'],
  source: practice,
  wish: (random) => ({ ...racing(random), places: ['trainer', 'pedal'] }),
  before: (draft, _, random) =>
    withMeterOf(draft, 1, {
      sides: 2,
      twist: fromMoment(draft.demand.window, random.between(0.25, 0.7), 0.5),
    }),
};

/** Left and right are counted twice from some moment on. */
export const doublesFromThere: Fault = {
  name: 'primary doubles in mid-race',
  most: 'query',
  rules: ['late-drift', 'mean-bias', 'wide-spread'],
  measure: 'always twice the power',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['second recording'],
  source: practice,
  wish: (random) => ({ ...racing(random), places: ['pedal', 'crank'], kind: 'time trial' }),
  before: (draft, _, random) =>
    withPrimaryMeter(draft, { twist: fromMoment(draft.demand.window, random.between(0.3, 0.7), 2) }),
};

function fromMoment([from, to]: readonly [number, number], share: number, factor: number) {
  return (power: Float64Array, truth: { readonly step: number }) => {
    const at = Math.round((from + (to - from) * share) / truth.step);
    for (let i = at; i < power.length; i++) power[i]! *= factor;
  };
}

const crossing = {
  rules: ['warmup-crossing'],
  strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
  measure: 'rise over the race, share; half of it below, half above the second',
  needs: ['second recording'],
  wish: racing,
} as const;

/** Reads low when cold, high when warm. */
export const crossesWarming: Fault = {
  ...crossing,
  name: 'low when cold, high when warm',
  source: '0.40–0.65 %/°C (Gardner et al. 2004)',
  before(draft, strength) {
    // Half of a warming with this time constant is done a third through an hour.
    const temperature = warmingBy(draft, fromBelowToAbove(strength), 1100);
    const { perDegree, warming, tau } = temperature;
    const atStart = 1 + perDegree * warming * (1 - Math.exp(-draft.demand.window[0] / tau));
    const gain = (meterOf(draft, 1).gain * (1 - strength / 2) * chain(draft)) / atStart;
    return withPrimaryMeter(draft, { gain, temperature });
  },
};

/** Rises evenly from below to above. */
export const crossesEvenly: Fault = {
  ...crossing,
  name: 'rises evenly from below to above',
  source: practice,
  before(draft, strength) {
    const { window } = draft.demand;
    const gain = meterOf(draft, 1).gain * (1 - strength / 2) * chain(draft);
    const driftPerHour = driftBetween(window, fromBelowToAbove(strength));
    return withPrimaryMeter(draft, { gain: gain / (1 + (driftPerHour * window[0]) / 3600), driftPerHour });
  },
};

/** By what share a reading rises that begins half of this below another and ends half of it above. */
const fromBelowToAbove = (strength: number) => strength / (1 - strength / 2);

/** What the chain takes between the two meters. */
function chain(draft: Draft): number {
  const loss = (k: number) => {
    const { place, drivetrainLoss } = meterOf(draft, k);
    return place === 'trainer' || place === 'hub' ? 1 - drivetrainLoss : 1;
  };
  return loss(1) / loss(0);
}
