import { cusum } from './cusum.ts';
import { mean } from './mean.ts';

export interface ChangePoint {
  /** Index of the first value after the change. */
  readonly at: number;
  readonly before: number;
  readonly after: number;
  /** Sum of squared residuals around the two means, and around one mean. */
  readonly squares: number;
  readonly squaresOfOne: number;
}

/**
 * The one change of mean that leaves the smallest sum of squares, each side holding at least `least`
 * values. Null when there are fewer than 2·least values.
 */
export function changePoint(values: Float64Array, least: number): ChangePoint | null {
  const n = values.length;
  if (n < 2 * least) return null;
  const centre = mean(values);
  const sums = cusum(values, centre);
  const squaresOfOne = values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
  let best: ChangePoint | null = null;
  for (let at = least; at <= n - least; at++) {
    const total = sums[at - 1]!;
    const squares = squaresOfOne - total ** 2 / at - total ** 2 / (n - at);
    if (best !== null && squares >= best.squares) continue;
    best = { at, before: centre + total / at, after: centre - total / (n - at), squares, squaresOfOne };
  }
  return best;
}
