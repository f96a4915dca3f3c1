import { type RobustFit, robustFit } from '../../math/robust-fit.ts';
import type { Blocks } from './blocks.ts';

/** What tells the logarithm of the ratio of two meters: time, power and cadence, fitted together. */
export interface RatioFit {
  readonly fit: RobustFit;
  /** Regressors in the order of the coefficients after the intercept. */
  readonly of: readonly ('time' | 'power' | 'cadence')[];
  /** Half the span of time, s, and its middle: time runs from -1 to 1 in the fit. */
  readonly middle: number;
  readonly halfSpan: number;
}

/** A regressor that hardly moves cannot explain anything, and would only widen the others. */
const leastSpread = { power: 0.03, cadence: 2 };

/**
 * Fits log(own/other) = a + b·time + c·log(mean power) + d·cadence over blocks, robustly. Power is the
 * mean of both meters (banding by one of them makes a slope out of noise). Null when there are too few
 * blocks.
 */
export function fitRatio(blocks: Blocks): RatioFit | null {
  const n = blocks.count;
  if (n < 2) return null;
  const ratio = blocks.own.map((watts, i) => Math.log(watts / blocks.other[i]!));
  const middle = (blocks.at[0]! + blocks.at[n - 1]!) / 2;
  const halfSpan = (blocks.at[n - 1]! - blocks.at[0]!) / 2;
  const candidates = [
    { of: 'time' as const, column: blocks.at.map((at) => (at - middle) / halfSpan), least: 0 },
    {
      of: 'power' as const,
      column: blocks.own.map((w, i) => Math.log((w + blocks.other[i]!) / 2)),
      least: leastSpread.power,
    },
    { of: 'cadence' as const, column: blocks.cadence, least: leastSpread.cadence },
  ].filter(({ column, least }) => spread(column) > least);
  const columns = candidates.map(({ column }) => centred(column));
  const fit = robustFit(columns, ratio);
  return fit === null ? null : { fit, of: candidates.map(({ of }) => of), middle, halfSpan };
}

/** Standard deviation; NaN (a column with gaps) is not greater than anything. */
function spread(column: Float64Array): number {
  const mean = column.reduce((a, b) => a + b, 0) / column.length;
  return Math.sqrt(column.reduce((sum, value) => sum + (value - mean) ** 2, 0) / column.length);
}

function centred(column: Float64Array): Float64Array {
  const mean = column.reduce((a, b) => a + b, 0) / column.length;
  return column.map((value) => value - mean);
}
