import type { Stretch } from '../types.ts';
import { stretchesWhere } from './stretches.ts';

/** One series as a short filter over another, and how much of it that leaves. */
export interface ShortFilter {
  readonly intercept: number;
  /** One weight a tap, from -reach to reach: how much of y[t] comes from x[t - lag - tap]. */
  readonly weights: Float64Array;
  /** Seconds that entered. */
  readonly count: number;
}

/**
 * Least squares fit of y[t] = intercept + Σ weight·x[t - lag - tap], tap from -`reach` to `reach`, over the seconds
 * from `from` to `to` in which nothing of it is missing. The sums around the first values are gathered without
 * copying anything; the normal equations are solved by Cholesky's decomposition.
 *
 * @param counts which seconds may enter; all of them when left out
 * @returns null when the taps cannot be told apart, or no second enters
 */
export function shortFilter(
  y: Float64Array,
  x: Float64Array,
  lag: number,
  reach: number,
  from: number,
  to: number,
  counts: (t: number) => boolean = () => true,
): ShortFilter | null {
  const isWhole = (t: number) => {
    let sum = y[t]!;
    for (let tap = -reach; tap <= reach; tap++) sum += x[t - lag - tap]!;
    return !Number.isNaN(sum) && counts(t);
  };
  const first = Math.max(0, from, lag + reach);
  const end = Math.min(to, y.length, x.length + lag - reach);
  const runs = stretchesWhere(first, end, isWhole);
  if (runs.length === 0) return null;
  const { count, origin, sums, products } = gather(y, x, lag, reach, runs);
  const size = sums.length;
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) products[i * size + j]! -= (sums[i]! * sums[j]!) / count;
  const weights = solve(products, size);
  if (weights === null) return null;
  const centre = (k: number) => origin[k]! + sums[k]! / count;
  const intercept = weights.reduce((left, weight, k) => left - weight * centre(k), centre(size - 1));
  return { intercept, weights, count };
}

/** Sums around an origin over the rows of a design: the taps in turn, then y itself. */
interface Gathered {
  readonly count: number;
  readonly origin: Float64Array;
  readonly sums: Float64Array;
  /** Lower half, row by row. */
  readonly products: Float64Array;
}

/**
 * A tap holds what the one before it held a second earlier. So over a run of seconds the products of two taps are
 * those of the two before them, but for the ends of the run: only those with the first tap, and with y, are summed.
 */
function gather(
  y: Float64Array,
  x: Float64Array,
  lag: number,
  reach: number,
  runs: readonly Stretch[],
): Gathered {
  const taps = 2 * reach + 1;
  const size = taps + 1;
  const sums = new Float64Array(size);
  const products = new Float64Array(size * size);
  const start = runs[0]![0];
  const [x0, y0] = [x[start - lag]!, y[start]!];
  let count = 0;
  for (const [from, to] of runs) {
    const length = to - from;
    count += length;
    // Where the run begins in x as a tap sees it.
    const begin = (tap: number) => from - lag + reach - tap;
    for (let d = 0; d < taps; d++) {
      let product = dot(x, begin(d), x0, x, begin(0), x0, length);
      for (let k = 0; ; k++) {
        products[(d + k) * size + k]! += product;
        if (d + k + 1 === taps) break;
        const [i, j] = [begin(d + k), begin(k)];
        product +=
          (x[i - 1]! - x0) * (x[j - 1]! - x0) - (x[i + length - 1]! - x0) * (x[j + length - 1]! - x0);
      }
      products[taps * size + d]! += dot(y, from, y0, x, begin(d), x0, length);
      sums[d]! += total(x, begin(d), x0, length);
    }
    products[taps * size + taps]! += dot(y, from, y0, y, from, y0, length);
    sums[taps]! += total(y, from, y0, length);
  }
  return { count, origin: new Float64Array(size).fill(x0).fill(y0, taps), sums, products };
}

/** Σ of products of deviations, `length` of them from a[i] and b[j] on. */
function dot(
  a: Float64Array,
  i: number,
  aOrigin: number,
  b: Float64Array,
  j: number,
  bOrigin: number,
  length: number,
): number {
  let even = 0;
  let odd = 0;
  let k = 0;
  // Two sums that need not wait for each other.
  for (; k + 1 < length; k += 2) {
    even += (a[i + k]! - aOrigin) * (b[j + k]! - bOrigin);
    odd += (a[i + k + 1]! - aOrigin) * (b[j + k + 1]! - bOrigin);
  }
  if (k < length) even += (a[i + k]! - aOrigin) * (b[j + k]! - bOrigin);
  return even + odd;
}

/** Σ of deviations, `length` of them from a[i] on. */
function total(a: Float64Array, i: number, origin: number, length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += a[i + k]! - origin;
  return sum;
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
