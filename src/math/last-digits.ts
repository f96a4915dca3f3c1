import { chiSquaredTail } from './chi-squared.ts';

export interface LastDigits {
  /** Chi-squared of the ten counts against equal ones, 9 degrees of freedom. */
  readonly chiSquared: number;
  /** Probability of so much by chance. */
  readonly tail: number;
  /** Share of the numbers that would have to end otherwise for all digits to be as frequent, 0–0.9. */
  readonly uneven: number;
  readonly count: number;
}

/**
 * How evenly the last digits of whole numbers are spread. What is measured far beyond one unit ends on every
 * digit alike; what is made up, or counted in steps, does not (Mosimann et al. 1995).
 */
export function lastDigits(numbers: Iterable<number>): LastDigits {
  const counts = new Float64Array(10);
  let count = 0;
  for (const number of numbers) {
    counts[Math.abs(Math.round(number)) % 10]!++;
    count++;
  }
  if (count === 0) return { chiSquared: 0, tail: 1, uneven: 0, count };
  let chiSquared = 0;
  let uneven = 0;
  for (const one of counts) {
    chiSquared += (one - count / 10) ** 2 / (count / 10);
    uneven += Math.abs(one / count - 0.1) / 2;
  }
  return { chiSquared, tail: chiSquaredTail(chiSquared, 9), uneven, count };
}
