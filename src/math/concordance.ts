import { longRunMean } from './long-run.ts';
import { momentsOf, type PairedSums, pairedSums, withPoint } from './paired-sums.ts';

export interface Concordance {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** What x and y share: the mean product of their distances from their means. */
  readonly shared: number;
}

/**
 * How near points lie to the line on which y is x: 2·s_xy / (s_xx + s_yy + (x̄ - ȳ)²), of moments over n (Lin 1989,
 * Biometrics 45:255-268). 1 where they lie on it; it falls with what sets them apart, and for the same distance the
 * further the narrower their range. The 95 % interval is symmetric in Fisher's z; its error is that of the mean of
 * the jackknife's pseudo-values, which resemble their neighbours as the points do.
 *
 * @param x in order of time, as y; more than 6
 * @returns null when nothing varies, or no point lies off that line
 */
export function concordance(x: Float64Array, y: Float64Array): Concordance | null {
  const n = x.length;
  const all = pairedSums(x, y);
  const z = zOf(all);
  if (!Number.isFinite(z)) return null;
  const pseudo = x.map((value, i) => n * z - (n - 1) * zOf(withPoint(all, value, y[i]!, -1)));
  const { error, reach } = longRunMean(pseudo);
  return {
    value: Math.tanh(z),
    low: Math.tanh(z - reach * error),
    high: Math.tanh(z + reach * error),
    shared: momentsOf(all).xy,
  };
}

/**
 * Concordance of two columns that share so much, lie `apart` in their means, and scatter around each other.
 *
 * @param shared variance that both have in common
 * @param scatter standard deviation of their difference
 */
export function concordanceOf(shared: number, apart: number, scatter: number): number {
  return (2 * shared) / (2 * shared + scatter ** 2 + apart ** 2);
}

/** Fisher's z of the concordance. */
function zOf(sums: PairedSums): number {
  const { meanX, meanY, xx, yy, xy } = momentsOf(sums);
  return Math.atanh((2 * xy) / (xx + yy + (meanX - meanY) ** 2));
}
