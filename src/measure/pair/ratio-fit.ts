import { medianSorted } from 'simple-statistics';
import { changePoint } from '../../math/change-point.ts';
import { mean } from '../../math/mean.ts';
import { normalReach } from '../../math/normal.ts';
import { type RobustFit, reachOf, robustFit } from '../../math/robust-fit.ts';
import type { Blocks } from './blocks.ts';
import { pairWander, varianceByWander } from './wander.ts';

/**
 * What the ratio of two meters may depend on. `power` is its logarithm above the median, where errors that grow
 * with power show; `below` is that under the median, where a zero offset shows, which is not to pass for one.
 * `step` is one change for good, the whole of it its coefficient. `bend` is Legendre's second polynomial of time,
 * which hardly moves with time itself. `lag` is how power changes within a block, and `averaging` how that change
 * changes: what is left of them where a block begins and ends.
 */
export type Effect = 'time' | 'bend' | 'step' | 'power' | 'below' | 'cadence' | 'speed' | 'lag' | 'averaging';

/** What tells the logarithm of the ratio of two meters: effects fitted together. */
export interface RatioFit {
  readonly fit: RobustFit;
  /** Which effects the ride has range enough for, in the order of the coefficients after the intercept. */
  readonly effects: readonly Effect[];
  /** Middle of the blocks and half their span, s: time runs from -1 to 1 in the fit. */
  readonly middle: number;
  readonly halfSpan: number;
  /** Middles of the blocks, s. */
  readonly middles: Float64Array;
  /** Variance of the pair's slow wander, of the ratio's logarithm. */
  readonly wander: number;
}

/**
 * What is fitted together, for what is asked. Dependences are told from blocks so short that a lag between the
 * meters counts where they begin and end. Speed is asked for by itself alone: it follows power late, so that
 * what is left of a lag passes for a dependence on it, and takes power's along. Where scatter is asked for,
 * no slope is fitted below the median: a block of which one meter lost half is one of low power as well, so that
 * such a slope takes scatter for a dependence.
 */
const together = {
  time: ['time', 'power', 'below', 'cadence'],
  bend: ['time', 'bend', 'power', 'below', 'cadence'],
  power: ['time', 'power', 'below', 'cadence', 'lag', 'averaging'],
  cadence: ['time', 'power', 'below', 'cadence', 'lag', 'averaging'],
  speed: ['time', 'power', 'below', 'speed', 'lag', 'averaging'],
  scatter: ['time', 'power', 'cadence'],
} as const satisfies Readonly<Record<string, readonly Effect[]>>;

/** What a fit can be made for. */
export type Asked = keyof typeof together;

/** A regressor that hardly moves (logarithm of power, rpm, km/h) explains nothing, and would only widen the others. */
const leastSpread: Readonly<Record<Effect, number>> = {
  time: 0,
  bend: 0,
  step: 0,
  power: 0.03,
  below: 0.03,
  cadence: 2,
  speed: 1,
  lag: 0,
  averaging: 0,
};

const kept = new WeakMap<Blocks, Map<string, RatioFit | null>>();

/**
 * Fits log(own/other) = a + b·time + c·max(0, log(P/P_median)) + e·min(0, log(P/P_median)) + d·cadence over
 * blocks, robustly; speed in place of cadence where it is asked for, and lag and averaging beside dependences. P is the mean of both meters: banding by one of them
 * makes a slope out of noise. Null when there are too few blocks. Worked out once for the same blocks.
 */
export function fitRatio(blocks: Blocks, asked: Asked): RatioFit | null {
  const wanted = together[asked];
  const key = wanted.join(' ');
  const fits = kept.get(blocks) ?? new Map<string, RatioFit | null>();
  kept.set(blocks, fits);
  const known = fits.get(key);
  if (known !== undefined) return known;
  const fitted = blocks.count < 2 ? null : fitAnew(blocks, wanted);
  fits.set(key, fitted);
  return fitted;
}

/** A fit with one change of level in place of a trend. */
export interface StepFit extends RatioFit {
  /** Where the change is, s: between two blocks. */
  readonly at: number;
  /** Share of the blocks after it. */
  readonly after: number;
}

/**
 * Fits one change of level in place of the trend, where it explains most; the parts of power and cadence are
 * taken out and the place is looked for once more. Unlike a line it holds when half of the ride is far off.
 * Where half of the power is lost, the step is one of power as well: then power stays out of it.
 *
 * @param least blocks on either side
 * @param mostInflation of the step, beside power
 */
export function fitStep(blocks: Blocks, least: number, mostInflation: number): StepFit | null {
  const alone = fitStepIn(blocks, logRatio(blocks), least, ['step', 'cadence']);
  if (alone === null) return null;
  const step = alone.fit.coefficients[1]!;
  const adjusted = alone.fit.residuals.map((residual, i) => residual + (blocks.at[i]! < alone.at ? 0 : step));
  const beside = fitStepIn(blocks, adjusted, least, ['step', 'power', 'below', 'cadence']);
  return beside === null || effectOf(beside, 'step')!.inflation > mostInflation ? alone : beside;
}

function fitStepIn(
  blocks: Blocks,
  adjusted: Float64Array,
  least: number,
  wanted: readonly Effect[],
): StepFit | null {
  const change = changePoint(adjusted, least);
  const fitted = change === null ? null : fitAnew(blocks, wanted, change.at);
  if (change === null || fitted === null) return null;
  const at = (blocks.at[change.at - 1]! + blocks.at[change.at]!) / 2;
  return { ...fitted, at, after: 1 - change.at / blocks.count };
}

/** @param stepAt index of the first block after the step, where one is fitted */
function fitAnew(blocks: Blocks, wanted: readonly Effect[], stepAt = 0): RatioFit | null {
  const ratio = logRatio(blocks);
  const first = blocks.at[0]!;
  const last = blocks.at[blocks.count - 1]!;
  const middle = (first + last) / 2;
  const halfSpan = (last - first) / 2;
  const power = blocks.own.map((watts, i) => (watts + blocks.other[i]!) / 2);
  const medianPower = medianSorted(Array.from(power.slice().sort()));
  const level = power.map((watts) => Math.log(watts / medianPower));
  const time = blocks.at.map((at) => (at - middle) / halfSpan);
  const columns: Readonly<Record<Effect, Float64Array>> = {
    time,
    bend: time.map(bendAt),
    power: level.map((log) => Math.max(0, log)),
    step: blocks.at.map((_, i) => (i < stepAt ? 0 : 1)),
    below: level.map((log) => Math.min(0, log)),
    cadence: blocks.cadenceOfWork,
    speed: blocks.speedOfWork,
    lag: blocks.rise,
    averaging: blocks.turn,
  };
  const effects = wanted.filter((effect) => spread(columns[effect]) > leastSpread[effect]);
  const fitted = robustFit(
    effects.map((effect) => centred(columns[effect])),
    ratio,
  );
  if (fitted === null) return null;
  const tamed = fitted.residuals.map((residual, i) => fitted.weights[i]! * residual);
  return { fit: fitted, effects, middle, halfSpan, middles: blocks.at, wander: pairWander(tamed, blocks.at) };
}

function logRatio({ own, other }: Blocks): Float64Array {
  return own.map((watts, i) => Math.log(watts / other[i]!));
}

/** Legendre's second polynomial. */
export function bendAt(time: number): number {
  return (3 * time * time - 1) / 2;
}

/** One effect of the fit: coefficient, standard errors, and how far it can be told from the others. */
export function effectOf(ratio: RatioFit, effect: Effect): EffectFound | null {
  const { fit: fitted, effects } = ratio;
  const k = effects.indexOf(effect) + 1;
  if (k === 0) return null;
  return {
    coefficient: fitted.coefficients[k]!,
    error: fitted.errors[k]!,
    quick: fitted.reach * fitted.errors[k]!,
    half: halfInterval(ratio, [[k, 1]]),
    inflation: fitted.inflation[k - 1]!,
  };
}

export interface EffectFound {
  readonly coefficient: number;
  /** Standard error by what is quick: honest spreads hold the wander of meters already. */
  readonly error: number;
  /** Half a 95 % interval by what is quick alone. */
  readonly quick: number;
  /** Half a 95 % interval, the pair's slow wander included. */
  readonly half: number;
  readonly inflation: number;
}

/**
 * Half a 95 % interval of a sum of coefficients, each times a number: what is quick and slow wander add in
 * squares. Regressors are centred, so that the quick errors of coefficients hardly move together.
 *
 * @param multiples of coefficients by their index, 0 for the intercept
 */
export function halfInterval(
  { fit: fitted, middles, wander }: RatioFit,
  multiples: readonly (readonly [coefficient: number, multiple: number])[],
): number {
  const weights = new Float64Array(middles.length);
  let quick = 0;
  for (const [k, multiple] of multiples) {
    quick += (multiple * fitted.errors[k]!) ** 2;
    fitted.influence[k]!.forEach((weight, i) => {
      weights[i]! += multiple * weight;
    });
  }
  return Math.hypot(
    reachOf(fitted, weights) * Math.sqrt(quick),
    normalReach * Math.sqrt(varianceByWander(wander, weights, middles)),
  );
}

/** Standard deviation; NaN (a column with gaps) is not greater than anything. */
function spread(column: Float64Array): number {
  const middle = mean(column);
  let squares = 0;
  for (let i = 0; i < column.length; i++) squares += (column[i]! - middle) ** 2;
  return Math.sqrt(squares / column.length);
}

function centred(column: Float64Array): Float64Array {
  const middle = mean(column);
  const out = new Float64Array(column.length);
  for (let i = 0; i < out.length; i++) out[i] = column[i]! - middle;
  return out;
}
