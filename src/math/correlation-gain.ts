/**
 * Log-likelihood that two traces share what correlates in them, over that they share nothing: −n/2·ln(1 − r²) for
 * normal values; 0 where they do not go along.
 *
 * @param correlation -1 to 1
 * @param n independent values that it rests on
 */
export function gainOf(correlation: number, n: number): number {
  return correlation > 0 ? (-n / 2) * Math.log(1 - Math.min(correlation, 0.999999) ** 2) : 0;
}
