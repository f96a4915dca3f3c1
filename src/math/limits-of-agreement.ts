export interface LimitsOfAgreement {
  readonly mean: number;
  /** Standard deviation of the differences, n - 1. */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  /** Standard error of either limit. */
  readonly error: number;
}

/** Standard normal quantile of 97.5 %, as rounded by the authors. */
const reach = 1.96;

/**
 * Limits between which about 95 % of the differences of two methods lie (Bland & Altman 1986, Lancet
 * 1:307-310): mean ± 1.96 standard deviations. Error of a limit: s·√(1/n + 1.96²/(2(n-1))) (the same 1999,
 * Stat Methods Med Res 8:135-160).
 *
 * @param differences at least 2
 */
export function limitsOfAgreement(differences: readonly number[]): LimitsOfAgreement {
  const n = differences.length;
  const mean = differences.reduce((a, b) => a + b, 0) / n;
  const squares = differences.reduce((sum, difference) => sum + (difference - mean) ** 2, 0);
  const spread = Math.sqrt(squares / (n - 1));
  const error = spread * Math.sqrt(1 / n + reach ** 2 / (2 * (n - 1)));
  return { mean, spread, low: mean - reach * spread, high: mean + reach * spread, error };
}
