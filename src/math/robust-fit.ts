import { leastSquares } from './least-squares.ts';
import { robustSpread } from './robust-spread.ts';
import { studentQuantile } from './student.ts';

export interface RobustFit {
  readonly coefficients: Float64Array;
  /** Standard errors, widened for residuals that resemble their neighbours. */
  readonly errors: Float64Array;
  /** Multiplies a standard error into half a 95 % interval: t at the effective degrees of freedom. */
  readonly reach: number;
  readonly residuals: Float64Array;
  /** How far each regressor can be told from the others: 1 wholly, above 5 hardly (variance inflation). */
  readonly inflation: Float64Array;
  readonly effectiveCount: number;
}

/** Tukey's constant for 95 % efficiency at the normal distribution (Beaton & Tukey 1974). */
const tuning = 4.685;
const rounds = 30;

/**
 * Linear fit that single bad blocks cannot turn: iteratively reweighted least squares with Tukey's
 * biweight, from a start by Huber weights. Rows are taken to be in order of time: the errors are widened
 * by √((1+ρ)/(1-ρ)) for a lag-1 correlation ρ of the residuals (never narrowed).
 *
 * @param columns regressors without the intercept, which is added as the first coefficient
 * @returns null when there are fewer than 4 rows a coefficient or the regressors are not independent
 */
export function robustFit(columns: readonly Float64Array[], y: Float64Array): RobustFit | null {
  const size = columns.length + 1;
  if (y.length < 4 * size) return null;
  const design = [new Float64Array(y.length).fill(1), ...columns];
  let fit = leastSquares(design, y);
  if (fit === null) return null;
  let weights = new Float64Array(y.length).fill(1);
  for (let round = 0; round < rounds; round++) {
    const scale = robustSpread(fit.residuals);
    if (scale === 0) break;
    const weigh = round < 3 ? huber : biweight;
    const next = fit.residuals.map((residual) => weigh(residual / scale));
    const change = next.reduce((most, w, i) => Math.max(most, Math.abs(w - weights[i]!)), 0);
    weights = next;
    const refit = leastSquares(design, y, weights);
    if (refit === null) return null;
    fit = refit;
    if (round > 3 && change < 1e-6) break;
  }
  return describe(design, fit, weights);
}

function describe(
  design: readonly Float64Array[],
  fit: NonNullable<ReturnType<typeof leastSquares>>,
  weights: Float64Array,
): RobustFit | null {
  const total = weights.reduce((a, b) => a + b, 0);
  const rho = Math.max(0, neighbourCorrelation(fit.residuals, weights));
  const effectiveCount = (total * (1 - rho)) / (1 + rho);
  const freedom = Math.max(1, effectiveCount - design.length);
  const squares = fit.residuals.reduce((sum, residual, i) => sum + weights[i]! * residual ** 2, 0);
  const variance = (squares / Math.max(1, total - design.length)) * ((1 + rho) / (1 - rho));
  return {
    coefficients: fit.coefficients,
    errors: fit.coefficients.map((_, k) => Math.sqrt(variance * fit.inverse[k]![k]!)),
    reach: studentQuantile(0.975, freedom),
    residuals: fit.residuals,
    inflation: Float64Array.from(
      design.slice(1),
      (column, k) => fit.inverse[k + 1]![k + 1]! * squaresAround(column, weights),
    ),
    effectiveCount,
  };
}

const huber = (z: number) => Math.min(1, 1.345 / Math.abs(z));
const biweight = (z: number) => (Math.abs(z) < tuning ? (1 - (z / tuning) ** 2) ** 2 : 0);

function neighbourCorrelation(residuals: Float64Array, weights: Float64Array): number {
  let products = 0;
  let squares = 0;
  for (let i = 0; i < residuals.length; i++) {
    squares += weights[i]! * residuals[i]! ** 2;
    if (i > 0) products += Math.sqrt(weights[i]! * weights[i - 1]!) * residuals[i]! * residuals[i - 1]!;
  }
  return squares > 0 ? Math.min(0.9, products / squares) : 0;
}

function squaresAround(column: Float64Array, weights: Float64Array): number {
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = column.reduce((sum, value, i) => sum + weights[i]! * value, 0) / total;
  return column.reduce((sum, value, i) => sum + weights[i]! * (value - mean) ** 2, 0);
}
