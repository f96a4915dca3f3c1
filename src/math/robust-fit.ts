import { invertedSquare, type Solution, solve } from './least-squares.ts';
import { robustSpread } from './robust-spread.ts';
import { studentReach } from './student.ts';

export interface RobustFit {
  readonly coefficients: Float64Array;
  /** Standard errors, widened for residuals that resemble their neighbours. */
  readonly errors: Float64Array;
  /** Multiplies a standard error into half a 95 % interval: t at the effective degrees of freedom. */
  readonly reach: number;
  readonly residuals: Float64Array;
  /** How much each row counts, 0 (wild) to 1. */
  readonly weights: Float64Array;
  /** How far each regressor can be told from the others: 1 wholly, above 5 hardly (variance inflation). */
  readonly inflation: Float64Array;
  readonly effectiveCount: number;
  /** What each row adds to each coefficient for a unit of its value; the first is the intercept. */
  readonly influence: readonly Float64Array[];
}

/** Tukey's constant for 95 % efficiency at the normal distribution (Beaton & Tukey 1974). */
const tuning = 4.685;
const rounds = 30;
/** Rounds by Huber weights, from which the others start. */
const huberRounds = 3;
/** Change of weights from round to round below which they stand. */
const settled = 1e-6;

/**
 * Linear fit that single bad blocks cannot turn: iteratively reweighted least squares with Tukey's
 * biweight, from a start by Huber weights. Rows are taken to be in order of time: the errors are widened
 * by √((1+ρ)/(1-ρ)) for a lag-1 correlation ρ of the residuals (never narrowed). Slower wander than that is
 * not in them.
 *
 * @param columns regressors without the intercept, which is added as the first coefficient
 * @returns null when there are fewer than 4 rows a coefficient or the regressors are not independent
 */
export function robustFit(columns: readonly Float64Array[], y: Float64Array): RobustFit | null {
  const size = columns.length + 1;
  if (y.length < 4 * size) return null;
  const design = [new Float64Array(y.length).fill(1), ...columns];
  let fit = solve(design, y);
  let weights: Float64Array = new Float64Array(y.length).fill(1);
  for (let round = 0; round < rounds && fit !== null; round++) {
    const scale = robustSpread(fit.residuals);
    if (scale === 0) break;
    const next = weigh(fit.residuals, scale, round < huberRounds ? huber : biweight);
    const change = greatestChange(weights, next);
    weights = next;
    fit = solve(design, y, weights);
    if (round > huberRounds && change < settled) break;
  }
  return fit === null ? null : describe(design, fit, weights);
}

/** The weight of every residual. */
function weigh(residuals: Float64Array, scale: number, weightOf: (z: number) => number): Float64Array {
  const weights = new Float64Array(residuals.length);
  for (let i = 0; i < weights.length; i++) weights[i] = weightOf(residuals[i]! / scale);
  return weights;
}

function greatestChange(before: Float64Array, after: Float64Array): number {
  let greatest = 0;
  for (let i = 0; i < after.length; i++) greatest = Math.max(greatest, Math.abs(after[i]! - before[i]!));
  return greatest;
}

/**
 * Multiplies the standard error of a sum of rows, each times its weight, into half a 95 % interval. Where few
 * rows weigh much, t has as many degrees of freedom as these: (Σw²)²/Σw⁴ (Satterthwaite 1946; Imbens & Kolesár
 * 2016, Rev Econ Stat 98:701-712), fewer as neighbours resemble each other.
 */
export function reachOf({ effectiveCount }: RobustFit, weights: Float64Array): number {
  let squares = 0;
  let fourths = 0;
  for (let i = 0; i < weights.length; i++) {
    const square = weights[i]! * weights[i]!;
    squares += square;
    fourths += square * square;
  }
  const rows = squares ** 2 / fourths;
  return studentReach(Math.max(leastFreedom, (rows * effectiveCount) / weights.length - 1));
}

const leastFreedom = 3;

function describe(design: readonly Float64Array[], fit: Solution, weights: Float64Array): RobustFit | null {
  const total = weights.reduce((a, b) => a + b, 0);
  const rho = Math.max(0, neighbourCorrelation(fit.residuals, weights));
  const effectiveCount = (total * (1 - rho)) / (1 + rho);
  const freedom = Math.max(1, effectiveCount - design.length);
  const inverse = invertedSquare(fit.upper, design.length);
  const variance = rowVariance(fit.residuals, weights, design.length) * ((1 + rho) / (1 - rho));
  return {
    coefficients: fit.coefficients,
    errors: fit.coefficients.map((_, k) => Math.sqrt(variance * inverse[k]![k]!)),
    reach: studentReach(freedom),
    residuals: fit.residuals,
    weights,
    inflation: Float64Array.from(
      design.slice(1),
      (column, k) => inverse[k + 1]![k + 1]! * squaresAround(column, weights),
    ),
    effectiveCount,
    influence: inverse.map((row) => influenceOf(row, design, weights)),
  };
}

/** What each row adds to one coefficient: its row of the inverse, times the design, times the weight. */
function influenceOf(
  row: Float64Array,
  design: readonly Float64Array[],
  weights: Float64Array,
): Float64Array {
  const influence = new Float64Array(weights.length);
  for (let j = 0; j < design.length; j++) {
    const column = design[j]!;
    for (let i = 0; i < influence.length; i++) influence[i]! += row[j]! * column[i]!;
  }
  for (let i = 0; i < influence.length; i++) influence[i]! *= weights[i]!;
  return influence;
}

/**
 * What the inverse of the weighted squares is multiplied with: (Σψ²/(n-p)) / mean(ψ')², as a share of the mean
 * weight (Huber 1981, Robust Statistics, 7.6). The plain sum of weighted squares tells a twelfth too small an
 * error: what the weights take from wild rows they take from fair ones too.
 */
function rowVariance(residuals: Float64Array, weights: Float64Array, size: number): number {
  const n = residuals.length;
  const scale = robustSpread(residuals);
  if (scale === 0) return 0;
  let squares = 0;
  let steepness = 0;
  let total = 0;
  for (let i = 0; i < n; i++) {
    squares += (weights[i]! * residuals[i]!) ** 2;
    steepness += slopeOfBiweight(residuals[i]! / scale);
    total += weights[i]!;
  }
  return (squares / Math.max(1, n - size)) * (total / n) * (n / steepness) ** 2;
}

const huber = (z: number) => Math.min(1, 1.345 / Math.abs(z));
const biweight = (z: number) => (Math.abs(z) < tuning ? (1 - (z / tuning) ** 2) ** 2 : 0);
/** Derivative of z times its weight. */
const slopeOfBiweight = (z: number) =>
  Math.abs(z) < tuning ? (1 - (z / tuning) ** 2) * (1 - 5 * (z / tuning) ** 2) : 0;

function neighbourCorrelation(residuals: Float64Array, weights: Float64Array): number {
  let products = 0;
  let squares = 0;
  for (let i = 0; i < residuals.length; i++) {
    squares += weights[i]! * residuals[i]! ** 2;
    if (i > 0) products += Math.sqrt(weights[i]! * weights[i - 1]!) * residuals[i]! * residuals[i - 1]!;
  }
  return squares > 0 ? Math.min(0.9, products / squares) : 0;
}

/** Weighted sum of squares around the weighted mean. */
function squaresAround(column: Float64Array, weights: Float64Array): number {
  let total = 0;
  let sum = 0;
  for (let i = 0; i < column.length; i++) {
    total += weights[i]!;
    sum += weights[i]! * column[i]!;
  }
  const mean = sum / total;
  let squares = 0;
  for (let i = 0; i < column.length; i++) squares += weights[i]! * (column[i]! - mean) ** 2;
  return squares;
}
