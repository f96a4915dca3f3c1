import { type Belief, blurred, normaliseWeights } from './belief.ts';
import { tabledDensity, tabledProbability } from './normal-table.ts';

/** One past window: how high it was, and how long before the day in question. */
export interface PastWindow {
  readonly value: number;
  /** days */
  readonly age: number;
  /** True: other evidence shows that the rider held back, so that it is a lower bound and nothing more. */
  readonly heldBack: boolean;
}

export interface AbilityModel {
  /** SD of an all-out effort around the rider's ability of that day. */
  readonly spread: number;
  /** SD by which ability wanders in 30 days; grows with the square root of time. */
  readonly drift: number;
  /** Windows further than this below the highest say nothing and are not looked at. */
  readonly reach: number;
  /** Shares of all-out efforts among the windows in reach that are held possible, alike before the data. */
  readonly shares: readonly number[];
}

/** Ability is followed in steps of this many days. */
const stepDays = 15;

/**
 * What past windows say of a rider's ability today, when every window is a lower bound: an all-out effort
 * scatters normally around ability, any other lies anywhere between `reach` below the highest window and
 * ability, all distances alike. How many were all-out is not known: each share is tried, and weighed by
 * how well it explains the windows. Windows of one time share what ability has since gained or lost.
 *
 * With all windows all-out (share 1) and no drift this is the normal distribution's conjugate update.
 *
 * @param prior belief before the windows; its grid is used
 */
export function abilityFrom(windows: readonly PastWindow[], model: AbilityModel, prior: Belief): Belief {
  const highest = windows.reduce((most, { value }) => Math.max(most, value), -Infinity);
  const cut = highest - model.reach;
  const used = windows.filter(({ value }) => value >= cut).sort((a, b) => b.age - a.age);
  const beliefs = model.shares.map((share) => follow(used, share, cut, model, prior));
  const best = beliefs.reduce((most, { evidence }) => Math.max(most, evidence), -Infinity);
  const mixed = new Float64Array(prior.weights.length);
  for (const { belief, evidence } of beliefs) {
    const weight = Math.exp(evidence - best);
    for (let i = 0; i < mixed.length; i++) mixed[i]! += weight * belief.weights[i]!;
  }
  normaliseWeights(mixed);
  return { ...prior, weights: mixed };
}

/** Goes through the windows from the oldest to the day in question, for one share of all-out efforts. */
function follow(
  windows: readonly PastWindow[],
  share: number,
  cut: number,
  model: AbilityModel,
  prior: Belief,
) {
  let belief: Belief = { ...prior, weights: prior.weights.slice() };
  let age = windows[0]?.age ?? 0;
  let evidence = 0;
  for (const window of windows) {
    if (age - window.age >= stepDays) {
      belief = blurred(belief, driftOver(age - window.age, model));
      age = window.age;
    }
    evidence += learn(belief, window, share, cut, model);
  }
  return { belief: blurred(belief, driftOver(age, model)), evidence };
}

const driftOver = (days: number, { drift }: AbilityModel) => drift * Math.sqrt(days / 30);

/** Multiplies the belief by the likelihood of one window, in place; returns the log of its evidence. */
function learn(
  { first, step, weights }: Belief,
  window: PastWindow,
  share: number,
  cut: number,
  { spread }: AbilityModel,
) {
  for (let i = 0; i < weights.length; i++) {
    const ability = first + i * step;
    const z = (ability - window.value) / spread;
    const reached = tabledProbability(z);
    // Half a spread keeps the even density finite where ability lies near the cut.
    const held = reached / Math.max(ability - cut, spread / 2);
    weights[i]! *= window.heldBack ? reached : (share * tabledDensity(z)) / spread + (1 - share) * held;
  }
  return Math.log(normaliseWeights(weights));
}
