import { longRunMean } from './long-run.ts';
import { momentsOf, type PairedSums, pairedSums, withPoint } from './paired-sums.ts';

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

/**
 * Line through points that err in both coordinates (Deming 1943). With λ = var(error of y) / var(error
 * of x): slope = (s_yy - λ·s_xx + √((s_yy - λ·s_xx)² + 4λ·s_xy²)) / (2·s_xy). Errors by the jackknife: they are
 * those of the mean of its pseudo-values, which resemble their neighbours as the points do.
 *
 * @param x in order of time, as y
 * @param weights of the points: where errors grow with what is measured, the inverse square of it (Linnet 1993, Clin
 * Chem 39:424-432); all alike when left out
 * @returns null with fewer than 8 points or when x and y do not move together
 */
export function deming(
  x: Float64Array,
  y: Float64Array,
  errorRatio = 1,
  weights?: Float64Array,
): LineWithErrors | null {
  const n = x.length;
  const all = pairedSums(x, y, weights);
  const line = n < 8 ? null : lineOf(all, errorRatio);
  if (line === null) return null;
  const slopes = new Float64Array(n);
  const intercepts = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const without = lineOf(withPoint(all, x[i]!, y[i]!, -(weights?.[i] ?? 1)), errorRatio);
    if (without === null) return null;
    slopes[i] = n * line.slope - (n - 1) * without.slope;
    intercepts[i] = n * line.intercept - (n - 1) * without.intercept;
  }
  const slope = longRunMean(slopes);
  const intercept = longRunMean(intercepts);
  return { ...line, slopeError: slope.error, interceptError: intercept.error, reach: intercept.reach };
}

function lineOf(sums: PairedSums, errorRatio: number): Line | null {
  const { meanX, meanY, xx, yy, xy } = momentsOf(sums);
  if (!(Math.abs(xy) > 1e-12 * Math.sqrt(xx * yy))) return null;
  const difference = yy - errorRatio * xx;
  const slope = (difference + Math.sqrt(difference ** 2 + 4 * errorRatio * xy ** 2)) / (2 * xy);
  return { slope, intercept: meanY - slope * meanX };
}
