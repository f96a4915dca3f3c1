import { quickselect } from 'simple-statistics';

/**
 * The value that would stand at place `n`, from 0, if all were in ascending order; NaN of none. Orders them in place
 * so far that none before it is greater and none after it less.
 */
export function nthSmallest(values: Float64Array, n: number): number {
  // It orders any array, though its type names one kind only.
  quickselect(values as unknown as number[], n);
  return values[n] ?? Number.NaN;
}
