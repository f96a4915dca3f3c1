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
  const rows = y.length;
  const size = columns.length;
  const roots = weights?.map(Math.sqrt);
  const a = columns.map((column) => scaled(column, roots));
  const b = scaled(y, roots);
  const diagonal = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    const norm = lengthFrom(a[k]!, k);
    if (!(norm > 1e-12 * lengthFrom(a[k]!, 0)) || k >= rows) return null;
    const pivot = a[k]![k]! > 0 ? -norm : norm;
    a[k]![k]! -= pivot;
    diagonal[k] = pivot;
    const squared = -pivot * a[k]![k]!;
    for (const other of [...a.slice(k + 1), b]) reflect(a[k]!, other, k, squared);
  }
  const upper = (i: number, j: number) => (i === j ? diagonal[i]! : a[j]![i]!);
  const coefficients = backSubstitute(upper, b, size);
  const inverse = invertedSquare(upper, size);
  const residuals = y.slice();
  for (let k = 0; k < size; k++) {
    const column = columns[k]!;
    const coefficient = coefficients[k]!;
    for (let i = 0; i < rows; i++) residuals[i]! -= column[i]! * coefficient;
  }
  return { coefficients, residuals, inverse };
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

function backSubstitute(
  upper: (i: number, j: number) => number,
  right: Float64Array,
  size: number,
): Float64Array {
  const solution = new Float64Array(size);
  for (let i = size - 1; i >= 0; i--) {
    let value = right[i]!;
    for (let j = i + 1; j < size; j++) value -= upper(i, j) * solution[j]!;
    solution[i] = value / upper(i, i);
  }
  return solution;
}

/** R⁻¹·R⁻ᵀ. */
function invertedSquare(upper: (i: number, j: number) => number, size: number): Float64Array[] {
  const unit = (k: number) => Float64Array.from({ length: size }, (_, i) => (i === k ? 1 : 0));
  const inverted = Array.from({ length: size }, (_, k) => backSubstitute(upper, unit(k), size));
  return Array.from({ length: size }, (_, i) =>
    Float64Array.from({ length: size }, (_, j) =>
      inverted.reduce((sum, column) => sum + column[i]! * column[j]!, 0),
    ),
  );
}
