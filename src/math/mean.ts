/** Mean of all values; NaN of none. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Mean of the values that are not missing, and how many those are; NaN of none. */
export function meanOfValid(column: Float64Array): { mean: number; count: number } {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < column.length; i++) {
    const value = column[i]!;
    if (Number.isNaN(value)) continue;
    sum += value;
    count++;
  }
  return { mean: sum / count, count };
}
