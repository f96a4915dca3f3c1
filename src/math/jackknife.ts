import { studentReach } from './student.ts';

/**
 * Standard error of an estimate, from the estimates that leave out one block of the data at a time (Tukey's
 * jackknife). Blocks of neighbouring seconds keep what makes seconds alike inside them.
 *
 * @param without one estimate for each block left out, at least 2
 */
export function jackknifeError(without: readonly number[]): number {
  const blocks = without.length;
  const mean = without.reduce((a, b) => a + b, 0) / blocks;
  const squares = without.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return Math.sqrt(((blocks - 1) / blocks) * squares);
}

/** Half of the 95 % interval: t with one degree of freedom less than there are blocks. */
export function jackknifeReach(without: readonly number[]): number {
  return studentReach(without.length - 1) * jackknifeError(without);
}
