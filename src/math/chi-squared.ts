import { normalProbability } from './normal.ts';

/**
 * Probability that chi-squared with a whole number of degrees of freedom is at least x: the closed sums of
 * Abramowitz & Stegun 26.4.4 (odd) and 26.4.5 (even).
 */
export function chiSquaredTail(x: number, freedom: number): number {
  if (x <= 0) return 1;
  const odd = freedom % 2 === 1;
  const root = Math.sqrt(x);
  let term = odd ? root : 1;
  let sum = odd ? 0 : 1;
  for (let r = 1; r <= (freedom - (odd ? 1 : 2)) / 2; r++) {
    if (odd) {
      if (r > 1) term *= x / (2 * r - 1);
    } else term *= x / (2 * r);
    sum += term;
  }
  if (!odd) return Math.exp(-x / 2) * sum;
  const density = Math.exp(-x / 2) / Math.sqrt(2 * Math.PI);
  return 2 * (1 - normalProbability(root)) + 2 * density * sum;
}
