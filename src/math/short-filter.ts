/** One series as a short filter over another, and how much of it that leaves. */
export interface ShortFilter {
  readonly intercept: number;
  /** One weight a tap: how much of y[t] comes from x[t - lag - tap]. */
  readonly weights: Float64Array;
  /** Seconds that entered. */
  readonly count: number;
}

/**
 * Least squares fit of y[t] = intercept + Σ weight·x[t - lag - tap], over the seconds from `from` to `to` in
 * which nothing of it is missing. One pass gathers the sums around the means of the first value, so that
 * nothing is copied; the normal equations are solved by Cholesky's decomposition.
 *
 * @param counts which seconds may enter; all of them when left out
 * @returns null when the taps cannot be told apart, or no second enters
 */
export function shortFilter(
  y: Float64Array,
  x: Float64Array,
  lag: number,
  taps: readonly number[],
  from: number,
  to: number,
  counts: (t: number) => boolean = () => true,
): ShortFilter | null {
  const size = taps.length + 1;
  // Row of the design in the making: the taps, then y itself.
  const row = new Float64Array(size);
  const sums = new Float64Array(size);
  const products = new Float64Array(size * size);
  const origin = new Float64Array(size);
  let count = 0;
  const first = Math.max(0, from, lag + Math.max(...taps));
  const end = Math.min(to, y.length, x.length + lag + Math.min(...taps));
  for (let t = first; t < end; t++) {
    let whole = y[t]!;
    row[size - 1] = whole;
    for (let k = 0; k < size - 1; k++) {
      const value = x[t - lag - taps[k]!]!;
      row[k] = value;
      whole += value;
    }
    if (Number.isNaN(whole) || !counts(t)) continue;
    if (count === 0) origin.set(row);
    count++;
    for (let i = 0; i < size; i++) {
      const deviation = row[i]! - origin[i]!;
      row[i] = deviation;
      sums[i]! += deviation;
      for (let j = 0; j <= i; j++) products[i * size + j]! += deviation * row[j]!;
    }
  }
  if (count === 0) return null;
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) products[i * size + j]! -= (sums[i]! * sums[j]!) / count;
  const weights = solve(products, size);
  if (weights === null) return null;
  const centre = (k: number) => origin[k]! + sums[k]! / count;
  const intercept = weights.reduce((left, weight, k) => left - weight * centre(k), centre(size - 1));
  return { intercept, weights, count };
}

/**
 * Solves the leading block of a symmetric matrix (lower half, row by row) against its last row: Cholesky.
 * Null when a pivot is lost to rounding.
 */
function solve(matrix: Float64Array, size: number): Float64Array | null {
  const n = size - 1;
  const lower = matrix.slice();
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= Math.min(i, n - 1); j++) {
      let value = lower[i * size + j]!;
      for (let k = 0; k < j; k++) value -= lower[i * size + k]! * lower[j * size + k]!;
      if (i > j) lower[i * size + j] = value / lower[j * size + j]!;
      else if (value > 1e-10 * matrix[i * size + i]!) lower[i * size + i] = Math.sqrt(value);
      else return null;
    }
  }
  const weights = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let value = lower[n * size + i]!;
    for (let k = i + 1; k < n; k++) value -= lower[k * size + i]! * weights[k]!;
    weights[i] = value / lower[i * size + i]!;
  }
  return weights;
}
