export interface LimitsOfAgreement {
  readonly mean: number;
  /** Standard deviation of the differences, n - 1. */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  /** Standard error of either limit. */
  readonly error: number;
}

/** Standard deviations between the mean and either limit: the normal quantile of 97.5 %, as rounded by the authors. */
export const limitReach = 1.96;

/**
 * Standard error of a limit of agreement, in standard deviations of the differences: √(1/n + 1.96²/(2(n-1))) (Bland
 * & Altman 1999, Stat Methods Med Res 8:135-160).
 *
 * @param n differences, at least 2
 * @param efficiency share of a normal sample that the standard deviation was found from, 0 to 1
 */
export function limitError(n: number, efficiency = 1): number {
  return Math.sqrt(1 / n + limitReach ** 2 / (2 * efficiency * (n - 1)));
}

/**
 * Limits between which about 95 % of the differences of two methods lie (Bland & Altman 1986, Lancet
 * 1:307-310): mean ± 1.96 standard deviations.
 *
 * @param differences at least 2
 */
export function limitsOfAgreement(differences: readonly number[]): LimitsOfAgreement {
  const n = differences.length;
  const mean = differences.reduce((a, b) => a + b, 0) / n;
  const squares = differences.reduce((sum, difference) => sum + (difference - mean) ** 2, 0);
  const spread = Math.sqrt(squares / (n - 1));
  const half = limitReach * spread;
  return { mean, spread, low: mean - half, high: mean + half, error: spread * limitError(n) };
}
