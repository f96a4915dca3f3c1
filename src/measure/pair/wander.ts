import { wanderIn, wanderVariance } from '../../math/slow-wander.ts';

/**
 * Slow wander of the ratio of two honest meters, as a logarithm: one standard deviation, and its time constant,
 * s. Readings move by 0.40 to 0.65 % per °C (Gardner et al. 2004, Med Sci Sports Exerc 36:1252-1258); a meter
 * that strays by half a degree around its course, for ten minutes or so, strays by 0.28 % (common practice, no
 * source), and two of them by 0.4 %.
 */
const usual = { spread: 0.004, seconds: 600 };

/**
 * Variance of the slow wander of a pair: no less than usual, and more where what a fit leaves over says so. A
 * ride holds few waves that slow, so that their absence says little.
 *
 * @param residuals logarithms of a ratio, wild ones made small
 * @param at middles of the blocks, s
 */
export function pairWander(residuals: Float64Array, at: Float64Array): number {
  const n = at.length;
  const span = ((at[n - 1]! - at[0]!) * n) / (n - 1);
  return Math.max(usual.spread ** 2, wanderIn(residuals, span, usual.seconds));
}

/** Variance that a wander gives to the sum of the blocks' values, each times its weight. */
export function varianceByWander(wander: number, weights: Float64Array, at: Float64Array): number {
  return wander * wanderVariance(weights, at, usual.seconds);
}
