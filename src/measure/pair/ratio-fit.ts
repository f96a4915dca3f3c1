import { medianSorted } from 'simple-statistics';
import { type RobustFit, robustFit } from '../../math/robust-fit.ts';
import type { Blocks } from './blocks.ts';

export type Effect = 'time' | 'power' | 'cadence';

/** What tells the logarithm of the ratio of two meters: time, power and cadence, fitted together. */
export interface RatioFit {
  readonly fit: RobustFit;
  /** Which effects the ride has range enough for, in the order of the coefficients after the intercept. */
  readonly effects: readonly Effect[];
  /** Middle of the blocks and half their span, s: time runs from -1 to 1 in the fit. */
  readonly middle: number;
  readonly halfSpan: number;
  /** Median power of the blocks, W: the effect of power begins above it. */
  readonly medianPower: number;
}

/** A regressor that hardly moves (log power, rpm) cannot explain anything, and would only widen the others. */
const leastSpread = { time: 0, power: 0.03, cadence: 2 };

const kept = new WeakMap<Blocks, RatioFit | null>();

/**
 * Fits log(own/other) = a + b·time + c·max(0, log(P/P_median)) + d·cadence over blocks, robustly. P is the
 * mean of both meters: banding by one of them makes a slope out of noise. Power counts above the median
 * only, where errors that grow with power show, so that a zero offset at low power does not pass for one.
 * Null when there are too few blocks. Worked out once for the same blocks.
 */
export function fitRatio(blocks: Blocks): RatioFit | null {
  const known = kept.get(blocks);
  if (known !== undefined) return known;
  const fitted = blocks.count < 2 ? null : fitAnew(blocks);
  kept.set(blocks, fitted);
  return fitted;
}

function fitAnew(blocks: Blocks): RatioFit | null {
  const ratio = blocks.own.map((watts, i) => Math.log(watts / blocks.other[i]!));
  const first = blocks.at[0]!;
  const last = blocks.at[blocks.count - 1]!;
  const middle = (first + last) / 2;
  const halfSpan = (last - first) / 2;
  const power = blocks.own.map((watts, i) => (watts + blocks.other[i]!) / 2);
  const medianPower = medianSorted(Array.from(power).sort((a, b) => a - b));
  const columns: Readonly<Record<Effect, Float64Array>> = {
    time: blocks.at.map((at) => (at - middle) / halfSpan),
    power: power.map((watts) => Math.max(0, Math.log(watts / medianPower))),
    cadence: blocks.cadence,
  };
  const effects = (['time', 'power', 'cadence'] as const).filter(
    (effect) => spread(columns[effect]) > leastSpread[effect],
  );
  const fitted = robustFit(
    effects.map((effect) => centred(columns[effect])),
    ratio,
  );
  return fitted === null ? null : { fit: fitted, effects, middle, halfSpan, medianPower };
}

/** One effect of the fit: coefficient, standard error, and how far it can be told from the others. */
export function effectOf(
  { fit: fitted, effects }: RatioFit,
  effect: Effect,
): { coefficient: number; error: number; reach: number; inflation: number } | null {
  const k = effects.indexOf(effect);
  if (k < 0) return null;
  return {
    coefficient: fitted.coefficients[k + 1]!,
    error: fitted.errors[k + 1]!,
    reach: fitted.reach * fitted.errors[k + 1]!,
    inflation: fitted.inflation[k]!,
  };
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
