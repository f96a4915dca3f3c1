import { mean } from './mean.ts';
import { studentQuantile } from './student.ts';

export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

export interface LineWithIntervals extends Line {
  readonly slopeInterval: readonly [number, number];
  readonly interceptInterval: readonly [number, number];
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
 * of x): slope = (s_yy - λ·s_xx + √((s_yy - λ·s_xx)² + 4λ·s_xy²)) / (2·s_xy). Intervals by the jackknife,
 * centred on the estimate, t with n - 2 degrees of freedom.
 *
 * @returns null with fewer than 4 points or when x and y do not move together
 */
export function deming(x: Float64Array, y: Float64Array, errorRatio = 1): LineWithIntervals | null {
  const n = x.length;
  const all = sums(x, y);
  const line = n < 4 ? null : lineOf(all, errorRatio);
  if (line === null) return null;
  let slopeSquares = 0;
  let interceptSquares = 0;
  const pseudo = Array.from({ length: n }, (_, i) => lineOf(plus(all, x[i]!, y[i]!, -1), errorRatio));
  if (pseudo.some((one) => one === null)) return null;
  const meanSlope = mean(pseudo.map((one) => one!.slope));
  const meanIntercept = mean(pseudo.map((one) => one!.intercept));
  for (const one of pseudo) {
    slopeSquares += (one!.slope - meanSlope) ** 2;
    interceptSquares += (one!.intercept - meanIntercept) ** 2;
  }
  const reach = studentQuantile(0.975, n - 2) * Math.sqrt((n - 1) / n);
  const slopeHalf = reach * Math.sqrt(slopeSquares);
  const interceptHalf = reach * Math.sqrt(interceptSquares);
  return {
    ...line,
    slopeInterval: [line.slope - slopeHalf, line.slope + slopeHalf],
    interceptInterval: [line.intercept - interceptHalf, line.intercept + interceptHalf],
  };
}

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
