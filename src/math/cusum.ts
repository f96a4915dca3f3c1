/**
 * Running sum of how far each value lies from a reference (Page 1954, Biometrika 41:100-115). It is level where the
 * values are as expected and leans where they are not: a change shows as a corner.
 */
export function cusum(values: ArrayLike<number>, reference: number): Float64Array {
  const sums = new Float64Array(values.length);
  let sum = 0;
  for (let i = 0; i < sums.length; i++) {
    sum += values[i]! - reference;
    sums[i] = sum;
  }
  return sums;
}
