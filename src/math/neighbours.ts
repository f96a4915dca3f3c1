/**
 * Standard error of a mean, from half the mean square of successive differences (von Neumann 1941, Ann Math Stat
 * 12:367-395): what goes from value to value is in it, what makes neighbours alike is not.
 */
export function errorBetweenNeighbours(values: Float64Array): number {
  const n = values.length;
  let squares = 0;
  for (let i = 1; i < n; i++) squares += (values[i]! - values[i - 1]!) ** 2;
  return Math.sqrt(squares / (2 * (n - 1)) / n);
}
