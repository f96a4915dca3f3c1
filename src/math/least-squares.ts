export interface LinearFit {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  /** (XᵀWX)⁻¹, row by row: times the residual variance it is the covariance of the coefficients. */
  readonly inverse: readonly Float64Array[];
}

/**
 * Weighted linear least squares by Householder reflections (Golub 1965), which keep their digits where
 * the normal equations lose theirs.
 *
 * @param columns the regressors, one array each, all as long as `y`; an intercept is a column of ones
 * @param weights not negative; ones when left out
 * @returns null when the columns are not independent to working precision, or too few rows carry weight
 */
export function leastSquares(
  columns: readonly Float64Array[],
  y: Float64Array,
  weights?: Float64Array,
): LinearFit | null {
  const solution = solve(columns, y, weights);
  if (solution === null) return null;
  const { coefficients, residuals, upper } = solution;
  return { coefficients, residuals, inverse: invertedSquare(upper) };
}

/** A solution without the covariance of its coefficients, which most rounds of a robust fit have no use for. */
export interface Solution {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  /** R of the weighted columns' QR decomposition: row i holds its elements from the diagonal on, zeros before. */
  readonly upper: readonly Float64Array[];
}

/** The same without `inverse`: see `invertedSquare`. */
export function solve(
  columns: readonly Float64Array[],
  y: Float64Array,
  weights?: Float64Array,
): Solution | null {
  const rows = y.length;
  const size = columns.length;
  const roots = weights?.map(Math.sqrt);
  const a = columns.map((column) => scaled(column, roots));
  const b = scaled(y, roots);
  const diagonal = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    const mirror = a[k]!;
    const norm = lengthFrom(mirror, k);
    if (!(norm > 1e-12 * lengthFrom(mirror, 0)) || k >= rows) return null;
    const pivot = mirror[k]! > 0 ? -norm : norm;
    mirror[k]! -= pivot;
    diagonal[k] = pivot;
    const squared = -pivot * mirror[k]!;
    for (let other = k + 1; other < size; other++) reflect(mirror, a[other]!, k, squared);
    reflect(mirror, b, k, squared);
  }
  const upper = upperOf(a, diagonal);
  const coefficients = backSubstitute(upper, b);
  const residuals = y.slice();
  for (let k = 0; k < size; k++) subtract(residuals, columns[k]!, coefficients[k]!);
  return { coefficients, residuals, upper };
}

function scaled(column: Float64Array, roots: Float64Array | undefined): Float64Array {
  const out = column.slice();
  if (roots !== undefined) for (let i = 0; i < out.length; i++) out[i]! *= roots[i]!;
  return out;
}

function lengthFrom(column: Float64Array, from: number): number {
  let sum = 0;
  for (let i = from; i < column.length; i++) sum += column[i]! * column[i]!;
  return Math.sqrt(sum);
}

function reflect(mirror: Float64Array, column: Float64Array, from: number, squared: number): void {
  let product = 0;
  for (let i = from; i < column.length; i++) product += mirror[i]! * column[i]!;
  const step = product / squared;
  for (let i = from; i < column.length; i++) column[i]! -= step * mirror[i]!;
}

function subtract(from: Float64Array, column: Float64Array, times: number): void {
  for (let i = 0; i < from.length; i++) from[i]! -= column[i]! * times;
}

function upperOf(reflected: readonly Float64Array[], diagonal: Float64Array): Float64Array[] {
  const size = diagonal.length;
  return Array.from(diagonal, (pivot, i) => {
    const row = new Float64Array(size);
    row[i] = pivot;
    for (let j = i + 1; j < size; j++) row[j] = reflected[j]![i]!;
    return row;
  });
}

function backSubstitute(upper: readonly Float64Array[], right: Float64Array): Float64Array {
  const size = upper.length;
  const solution = new Float64Array(size);
  for (let i = size - 1; i >= 0; i--) {
    const row = upper[i]!;
    let value = right[i]!;
    for (let j = i + 1; j < size; j++) value -= row[j]! * solution[j]!;
    solution[i] = value / row[i]!;
  }
  return solution;
}

/** R⁻¹·R⁻ᵀ of an upper triangle: (XᵀWX)⁻¹ of what it was solved from. */
export function invertedSquare(upper: readonly Float64Array[]): Float64Array[] {
  const inverted = upper.map((_, k) => {
    const unit = new Float64Array(upper.length);
    unit[k] = 1;
    return backSubstitute(upper, unit);
  });
  return upper.map((_, i) =>
    upper[i]!.map((_, j) => inverted.reduce((sum, column) => sum + column[i]! * column[j]!, 0)),
  );
}
