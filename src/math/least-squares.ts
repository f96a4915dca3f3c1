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
  return { coefficients, residuals, inverse: invertedSquare(upper, columns.length) };
}

/** A solution without the covariance of its coefficients, which most rounds of a robust fit have no use for. */
export interface Solution {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  /** R of the weighted columns' QR decomposition, row by row; zeros below the diagonal. */
  readonly upper: Float64Array;
}

/** The same without `inverse`: see `invertedSquare`. */
export function solve(
  columns: readonly Float64Array[],
  y: Float64Array,
  weights?: Float64Array,
): Solution | null {
  const rows = y.length;
  const size = columns.length;
  // The weighted columns one after the other, y last: many small arrays would cost more than the sums do.
  const space = new Float64Array((size + 1) * rows);
  const roots = weights && rootsOf(weights);
  for (let k = 0; k < size; k++) lay(space, k * rows, columns[k]!, roots);
  lay(space, size * rows, y, roots);
  const upper = new Float64Array(size * size);
  for (let k = 0; k < size; k++) {
    const mirror = k * rows + k;
    const norm = Math.sqrt(product(space, mirror, mirror, rows - k));
    if (!(norm > 1e-12 * Math.sqrt(product(space, k * rows, k * rows, rows))) || k >= rows) return null;
    const pivot = space[mirror]! > 0 ? -norm : norm;
    space[mirror]! -= pivot;
    upper[k * size + k] = pivot;
    const squared = -pivot * space[mirror]!;
    for (let other = k + 1; other <= size; other++) {
      const column = other * rows + k;
      reflect(space, mirror, column, rows - k, squared);
      if (other < size) upper[k * size + other] = space[column]!;
    }
  }
  const coefficients = backSubstitute(upper, space.subarray(size * rows), size);
  const residuals = y.slice();
  for (let k = 0; k < size; k++) subtract(residuals, columns[k]!, coefficients[k]!);
  return { coefficients, residuals, upper };
}

function rootsOf(weights: Float64Array): Float64Array {
  const roots = new Float64Array(weights.length);
  for (let i = 0; i < roots.length; i++) roots[i] = Math.sqrt(weights[i]!);
  return roots;
}

/** Writes a column into the space, each row times its root. */
function lay(space: Float64Array, at: number, column: Float64Array, roots: Float64Array | undefined): void {
  if (roots === undefined) space.set(column, at);
  else for (let i = 0; i < column.length; i++) space[at + i] = column[i]! * roots[i]!;
}

/** Mirrors the rows of one column at those of another, in place. */
function reflect(space: Float64Array, mirror: number, column: number, rows: number, squared: number): void {
  const step = product(space, mirror, column, rows) / squared;
  for (let i = 0; i < rows; i++) space[column + i]! -= step * space[mirror + i]!;
}

/** Σ a·b over so many rows. Every other is summed by itself, so that one addition need not wait for the other. */
function product(space: Float64Array, a: number, b: number, rows: number): number {
  let sum = 0;
  let beside = 0;
  for (let i = 1; i < rows; i += 2) {
    sum += space[a + i - 1]! * space[b + i - 1]!;
    beside += space[a + i]! * space[b + i]!;
  }
  if (rows % 2 === 1) sum += space[a + rows - 1]! * space[b + rows - 1]!;
  return sum + beside;
}

function subtract(from: Float64Array, column: Float64Array, times: number): void {
  for (let i = 0; i < from.length; i++) from[i]! -= column[i]! * times;
}

function backSubstitute(upper: Float64Array, right: Float64Array, size: number): Float64Array {
  const solution = new Float64Array(size);
  for (let i = size - 1; i >= 0; i--) {
    let value = right[i]!;
    for (let j = i + 1; j < size; j++) value -= upper[i * size + j]! * solution[j]!;
    solution[i] = value / upper[i * size + i]!;
  }
  return solution;
}

/** R⁻¹·R⁻ᵀ of the upper triangle of so many columns: (XᵀWX)⁻¹ of what it was solved from, row by row. */
export function invertedSquare(upper: Float64Array, size: number): Float64Array[] {
  const inverted = Array.from({ length: size }, (_, k) => {
    const unit = new Float64Array(size);
    unit[k] = 1;
    return backSubstitute(upper, unit, size);
  });
  return inverted.map((_, i) =>
    Float64Array.from(inverted, (_, j) => inverted.reduce((sum, column) => sum + column[i]! * column[j]!, 0)),
  );
}
