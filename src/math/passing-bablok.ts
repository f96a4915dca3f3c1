import { medianSorted } from 'simple-statistics';
import { cusum } from './cusum.ts';
import type { Line } from './deming.ts';
import { normalQuantile } from './normal.ts';
import { nthSmallest } from './nth-smallest.ts';

export interface RankedLine extends Line {
  /** The lines at the two ends of the slope's interval: the flattest has the highest intercept. */
  readonly flattest: Line;
  readonly steepest: Line;
}

/**
 * Line through points that err in both coordinates, of the median of the slopes between every two of them
 * (Passing & Bablok 1983, J Clin Chem Clin Biochem 21:709-720): neither stray points nor how much more one
 * coordinate errs than the other moves it far. The median is taken as many places higher as there are slopes below
 * -1, and those of -1 count for nothing, so that x and y may change places; where there are none of either, the
 * line is that of Theil and Sen (Sen 1968, J Am Stat Assoc 63:1379-1389). The intercept is the median of
 * y - slope·x. The interval takes points to be independent of each other; its ranks are rounded to whole ones.
 *
 * @returns null with fewer than 4 points, or when x and y do not rise together
 */
export function passingBablok(x: Float64Array, y: Float64Array, level = 0.95): RankedLine | null {
  const n = x.length;
  const { slopes, below } = slopesBetween(x, y);
  const count = slopes.length;
  if (n < 4 || count === 0) return null;
  const reach = normalQuantile((1 + level) / 2) * Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const first = Math.round((count - reach) / 2);
  const at = (rank: number) => ranked(slopes, rank + below);
  const slope = (at(Math.ceil(count / 2)) + at(Math.floor(count / 2) + 1)) / 2;
  if (!(slope > 0 && slope < Number.POSITIVE_INFINITY)) return null;
  const line = (of: number) => ({ slope: of, intercept: medianIntercept(x, y, of) });
  return { ...line(slope), flattest: line(at(first)), steepest: line(at(count + 1 - first)) };
}

/**
 * How far points bend away from a line: the greatest running sum of their sides of it, taken along the line, over
 * what chance makes of it (Passing & Bablok 1983). It is the distance of the points above from those below as two
 * samples of places (Smirnov 1948, Ann Math Stat 19:279-281): of independent points 5 in 100 lines show 1.36 and
 * more, 1 in 100 shows 1.63.
 *
 * @param line rising
 */
export function bendOf(x: Float64Array, y: Float64Array, { slope, intercept }: Line): number {
  const sides = Array.from(x, (value, i) => ({
    along: y[i]! + value / slope,
    // In the order of the median of y - slope·x, so that the point which that is lies on the line.
    side: Math.sign(y[i]! - slope * value - intercept),
  }))
    .sort((a, b) => a.along - b.along)
    .map(({ side }) => side);
  const above = sides.filter((side) => side > 0).length;
  const under = sides.filter((side) => side < 0).length;
  if (above === 0 || under === 0) return 0;
  const up = Math.sqrt(under / above);
  const sums = cusum(
    sides.map((side) => (side > 0 ? up : side < 0 ? -1 / up : 0)),
    0,
  );
  return Math.max(...sums.map(Math.abs)) / Math.sqrt(above + under);
}

/** Slopes between every two points but those of -1, and how many lie below that. */
function slopesBetween(x: Float64Array, y: Float64Array): { slopes: Float64Array; below: number } {
  const n = x.length;
  const slopes = new Float64Array((n * (n - 1)) / 2);
  let count = 0;
  let below = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const slope = (y[j]! - y[i]!) / (x[j]! - x[i]!);
      // Of one point twice there is none.
      if (Number.isNaN(slope) || slope === -1) continue;
      if (slope < -1) below++;
      slopes[count++] = slope;
    }
  }
  return { slopes: slopes.subarray(0, count), below };
}

/** @param rank from 1; beyond either end, the end */
function ranked(slopes: Float64Array, rank: number): number {
  return nthSmallest(slopes, Math.max(0, Math.min(slopes.length - 1, rank - 1)));
}

function medianIntercept(x: Float64Array, y: Float64Array, slope: number): number {
  const intercepts = y.map((value, i) => value - slope * x[i]!).sort();
  return medianSorted(intercepts as unknown as number[]);
}
