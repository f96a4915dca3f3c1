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
  let beliefs: Hypothesis[] = model.shares.map((share) => ({
    share,
    evidence: 0,
    belief: { ...prior, weights: prior.weights.slice() },
  }));
  let age = used[0]?.age ?? 0;
  for (const window of used) {
    if (age - window.age >= stepDays) {
      beliefs = beliefs.map((one) => ({
        ...one,
        belief: blurred(one.belief, driftOver(age - window.age, model)),
      }));
      age = window.age;
    }
    learn(beliefs, window, cut, model.spread);
  }
  return blurred(mixed(prior, beliefs), driftOver(age, model));
}

/** A belief that holds one share of all-out efforts for true, and the log of how well that share explains. */
interface Hypothesis {
  readonly share: number;
  readonly belief: Belief;
  evidence: number;
}

function mixed(grid: Belief, beliefs: readonly Hypothesis[]): Belief {
  const best = beliefs.reduce((most, { evidence }) => Math.max(most, evidence), -Infinity);
  const weights = new Float64Array(grid.weights.length);
  for (const { belief, evidence } of beliefs) {
    const weight = Math.exp(evidence - best);
    for (let i = 0; i < weights.length; i++) weights[i]! += weight * belief.weights[i]!;
  }
  normaliseWeights(weights);
  return { ...grid, weights };
}

const driftOver = (days: number, { drift }: AbilityModel) => drift * Math.sqrt(days / 30);

/** Multiplies every belief by the likelihood of one window, in place. */
function learn(beliefs: readonly Hypothesis[], window: PastWindow, cut: number, spread: number): void {
  const { first, step, weights } = beliefs[0]!.belief;
  for (let i = 0; i < weights.length; i++) {
    const ability = first + i * step;
    const z = (ability - window.value) / spread;
    const reached = tabledProbability(z);
    const allOut = tabledDensity(z) / spread;
    // Half a spread keeps the even density finite where ability lies near the cut.
    const held = reached / Math.max(ability - cut, spread / 2);
    for (const { share, belief } of beliefs)
      belief.weights[i]! *= window.heldBack ? reached : share * allOut + (1 - share) * held;
  }
  for (const one of beliefs) one.evidence += Math.log(normaliseWeights(one.belief.weights));
}
