import { tabledProbability } from './normal-table.ts';

/** What is believed of one number: weights (summing to 1) on an even grid of its possible values. */
export interface Belief {
  readonly first: number;
  readonly step: number;
  readonly weights: Float64Array;
}

/** Believes every value from `first` to `last` alike. */
export function evenBelief(first: number, last: number, step: number): Belief {
  const size = Math.max(2, Math.round((last - first) / step) + 1);
  return { first, step, weights: new Float64Array(size).fill(1 / size) };
}

/** Scales the weights to sum to 1; returns the sum they had. */
export function normaliseWeights(weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i]!;
  for (let i = 0; i < weights.length; i++) weights[i]! /= sum;
  return sum;
}

/** The belief after the number has moved by an unknown, normal amount: convolution, mass kept at the ends. */
export function blurred(belief: Belief, spread: number): Belief {
  const { first, step, weights } = belief;
  const reach = Math.min(weights.length - 1, Math.ceil((4 * spread) / step));
  if (spread === 0 || reach === 0) return belief;
  const kernel = new Float64Array(reach + 1);
  let total = 0;
  for (let k = 0; k <= reach; k++) {
    kernel[k] = Math.exp(-0.5 * ((k * step) / spread) ** 2);
    total += k === 0 ? kernel[k]! : 2 * kernel[k]!;
  }
  const last = weights.length - 1;
  const moved = new Float64Array(weights.length);
  for (let i = 0; i <= last; i++) {
    const weight = weights[i]! / total;
    if (weight === 0) continue;
    moved[i]! += weight * kernel[0]!;
    for (let k = 1; k <= reach; k++) {
      const part = weight * kernel[k]!;
      moved[Math.max(0, i - k)]! += part;
      moved[Math.min(last, i + k)]! += part;
    }
  }
  return { first, step, weights: moved };
}

/** The belief after the number has turned out higher by an unknown, exponential amount. */
export function raised(belief: Belief, mean: number): Belief {
  const keep = Math.exp(-belief.step / mean);
  const weights = new Float64Array(belief.weights.length);
  let carried = 0;
  for (let i = 0; i < weights.length; i++) {
    carried = carried * keep + belief.weights[i]! * (1 - keep);
    weights[i] = carried;
  }
  normaliseWeights(weights);
  return { ...belief, weights };
}

/** Probability that a fresh observation, off by a normal amount, is at least `value`. */
export function chanceAbove(belief: Belief, value: number, spread: number): number {
  const { first, step, weights } = belief;
  let chance = 0;
  for (let i = 0; i < weights.length; i++) {
    if (weights[i]! < 1e-12) continue;
    chance += weights[i]! * tabledProbability((first + i * step - value) / spread);
  }
  return Math.min(1, chance);
}

/** The value that a fresh observation exceeds with this chance, by bisection. */
export function valueExceeded(belief: Belief, chance: number, spread: number): number {
  let low = belief.first - 8 * spread;
  let high = belief.first + belief.step * belief.weights.length + 8 * spread;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (chanceAbove(belief, middle, spread) > chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The value below which this share of the belief lies, straight between grid points. */
export function beliefQuantile({ first, step, weights }: Belief, share: number): number {
  let below = 0;
  for (let i = 0; i < weights.length; i++) {
    const next = below + weights[i]!;
    if (next >= share) return first + step * (i - 0.5 + (share - below) / weights[i]!);
    below = next;
  }
  return first + step * (weights.length - 1);
}
