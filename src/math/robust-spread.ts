import { nthSmallest } from './nth-smallest.ts';

/** Median absolute deviation of a normal distribution, in standard deviations: the 75 % quantile. */
export const medianDeviation = 0.6745;

/** Share of a normal sample that its median absolute deviation makes use of (Hampel 1974, J Am Stat Assoc 69:383-393). */
export const medianEfficiency = 0.37;

/**
 * Standard deviation of deviations around zero that a few wild ones cannot move: their median size over that
 * of a standard normal. Missing ones are passed over; NaN of none.
 */
export function robustSpread(deviations: ArrayLike<number>): number {
  const all = new Float64Array(deviations.length);
  let count = 0;
  for (let i = 0; i < deviations.length; i++) {
    const size = Math.abs(deviations[i]!);
    if (!Number.isNaN(size)) all[count++] = size;
  }
  if (count === 0) return Number.NaN;
  const sizes = all.subarray(0, count);
  const middle = count >> 1;
  let median = nthSmallest(sizes, middle);
  if (count % 2 === 0) {
    let below = sizes[0]!;
    for (let i = 1; i < middle; i++) if (sizes[i]! > below) below = sizes[i]!;
    median = (median + below) / 2;
  }
  return median / medianDeviation;
}
