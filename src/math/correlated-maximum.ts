import { normalProbability } from './normal.ts';

/**
 * Chance that the highest of several standard normal values, each correlated with the one before it, is at
 * least `height`: Hunter's bound (1976, J. Appl. Prob. 13:597) over neighbours, P(A₁) + Σ P(Aₖ and not
 * Aₖ₋₁). Never too low; close for high values, where two neighbours are all that matters.
 *
 * @param correlations between each value and its predecessor, one fewer than values
 */
export function chanceOfMaximum(height: number, correlations: readonly number[]): number {
  const single = normalProbability(-height);
  const sum = correlations.reduce((total, r) => total + single - chanceOfBoth(height, r), single);
  return Math.min(1, sum);
}

/** The height that the highest of them reaches with this chance, by bisection. */
export function heightOfMaximum(chance: number, correlations: readonly number[]): number {
  let low = -8;
  let high = 8;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (chanceOfMaximum(middle, correlations) > chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Nodes and weights of Gauss and Legendre's rule on [-1, 1], 8 points (Abramowitz & Stegun table 25.4). */
const nodes = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const weights = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

/**
 * Chance that two standard normal values with correlation r (0 to 1) are both at least h: Plackett's
 * integral, Φ(-h)² + (1/2π) ∫ exp(-h²/(1 + sin a)) da from 0 to arcsin r.
 */
export function chanceOfBoth(h: number, r: number): number {
  const half = Math.asin(r) / 2;
  let integral = 0;
  for (let k = 0; k < nodes.length; k++) {
    for (const node of [nodes[k]!, -nodes[k]!])
      integral += weights[k]! * Math.exp((-h * h) / (1 + Math.sin(half * (1 + node))));
  }
  return normalProbability(-h) ** 2 + (half * integral) / (2 * Math.PI);
}
