import { cosineProjection } from './cosine-projection.ts';

/**
 * Variance of Σ weight·x(at) for a first-order wander x around zero (Ornstein–Uhlenbeck) of variance 1, whose
 * values `tau` apart correlate with 1/e.
 *
 * @param at moments in ascending order, in the unit of `tau`
 */
export function wanderVariance(weights: Float64Array, at: Float64Array, tau: number): number {
  let variance = 0;
  let remembered = 0;
  let apart = 0;
  let keep = 1;
  for (let i = 0; i < weights.length; i++) {
    // Most are as far apart as those before.
    if (i > 0 && at[i]! - at[i - 1]! !== apart) {
      apart = at[i]! - at[i - 1]!;
      keep = Math.exp(-apart / tau);
    }
    remembered *= keep;
    variance += weights[i]! * (weights[i]! + 2 * remembered);
    remembered += weights[i]!;
  }
  return variance;
}

/** Cosines that tell of a slow wander: the first half wave passes for a trend, which a fit has taken out. */
const slow = { from: 2, to: 7 };

/**
 * Variance of the first-order wander of time constant `tau` in the residuals of a fit: squared projections on
 * slow cosines, as far as they stand above what neighbours differ by, in proportion to the wander's spectrum
 * (least squares). Six cosines tell little: no more than about what size it has. At least 0.
 *
 * @param span time that the residuals cover, evenly but for gaps, in the unit of `tau`
 */
export function wanderIn(residuals: Float64Array, span: number, tau: number): number {
  const n = residuals.length;
  let quick = 0;
  for (let i = 1; i < n; i++) quick += (residuals[i]! - residuals[i - 1]!) ** 2 / (2 * (n - 1));
  let along = 0;
  let unit = 0;
  for (let j = slow.from; j <= slow.to; j++) {
    const projection = cosineProjection(residuals, j);
    const spectrum = (2 * tau * n) / span / (1 + ((Math.PI * j * tau) / span) ** 2);
    along += ((2 / n) * projection ** 2 - quick) * spectrum;
    unit += spectrum ** 2;
  }
  return Math.max(0, along / unit);
}
