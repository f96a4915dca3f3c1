import { longRunMean } from './long-run.ts';
import { mean } from './mean.ts';

export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

export interface LineWithErrors extends Line {
  /** Standard errors. */
  readonly slopeError: number;
  readonly interceptError: number;
  /** Multiplies an error into half a 95 % interval. */
  readonly reach: number;
}

/** Sums around a fixed centre, from which a Deming line follows; taking a point out is a subtraction. */
interface Sums {
  readonly n: number;
  readonly centre: readonly [x: number, y: number];
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/**
 * Line through points that err in both coordinates (Deming 1943). With λ = var(error of y) / var(error
 * of x): slope = (s_yy - λ·s_xx + √((s_yy - λ·s_xx)² + 4λ·s_xy²)) / (2·s_xy). Errors by the jackknife: they are
 * those of the mean of its pseudo-values, which resemble their neighbours as the points do.
 *
 * @param x in order of time, as y
 * @returns null with fewer than 8 points or when x and y do not move together
 */
export function deming(x: Float64Array, y: Float64Array, errorRatio = 1): LineWithErrors | null {
  const n = x.length;
  const all = sums(x, y);
  const line = n < 8 ? null : lineOf(all, errorRatio);
  if (line === null) return null;
  const slopes = new Float64Array(n);
  const intercepts = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const without = lineOf(plus(all, x[i]!, y[i]!, -1), errorRatio);
    if (without === null) return null;
    slopes[i] = n * line.slope - (n - 1) * without.slope;
    intercepts[i] = n * line.intercept - (n - 1) * without.intercept;
  }
  const slope = longRunMean(slopes, cosines);
  const intercept = longRunMean(intercepts, cosines);
  return { ...line, slopeError: slope.error, interceptError: intercept.error, reach: intercept.reach };
}

/** Low ones alone: what is slow moves a line most. */
const cosines = 6;

function sums(x: Float64Array, y: Float64Array): Sums {
  const centre = [mean(x), mean(y)] as const;
  let all: Sums = { n: 0, centre, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  for (let i = 0; i < x.length; i++) all = plus(all, x[i]!, y[i]!, 1);
  return all;
}

function plus(to: Sums, x: number, y: number, sign: 1 | -1): Sums {
  const dx = x - to.centre[0];
  const dy = y - to.centre[1];
  return {
    n: to.n + sign,
    centre: to.centre,
    x: to.x + sign * dx,
    y: to.y + sign * dy,
    xx: to.xx + sign * dx * dx,
    yy: to.yy + sign * dy * dy,
    xy: to.xy + sign * dx * dy,
  };
}

function lineOf({ n, centre, x, y, xx, yy, xy }: Sums, errorRatio: number): Line | null {
  const sxx = xx - (x * x) / n;
  const syy = yy - (y * y) / n;
  const sxy = xy - (x * y) / n;
  if (!(Math.abs(sxy) > 1e-12 * Math.sqrt(sxx * syy))) return null;
  const difference = syy - errorRatio * sxx;
  const slope = (difference + Math.sqrt(difference ** 2 + 4 * errorRatio * sxy ** 2)) / (2 * sxy);
  return { slope, intercept: centre[1] + y / n - slope * (centre[0] + x / n) };
}
