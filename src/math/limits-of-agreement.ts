import { longRunMean } from './long-run.ts';

export interface LimitsOfAgreement {
  readonly mean: number;
  /** Standard deviation of the differences, n - 1. */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  /** Half the 95 % interval of each, of differences that resemble their neighbours. */
  readonly half: { readonly mean: number; readonly low: number; readonly high: number };
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
 * 1:307-310): mean ± 1.96 standard deviations. Intervals by what each difference adds to mean and limits, which
 * for independent ones comes to the error that they state (`limitError`).
 *
 * @param differences in order of time, more than 6
 */
export function limitsOfAgreement(differences: readonly number[]): LimitsOfAgreement {
  const n = differences.length;
  const mean = differences.reduce((a, b) => a + b, 0) / n;
  const squares = differences.reduce((sum, difference) => sum + (difference - mean) ** 2, 0);
  const spread = Math.sqrt(squares / (n - 1));
  const reachOf = (sign: -1 | 0 | 1) => {
    const added = Float64Array.from(differences, (difference) => {
      const from = difference - mean;
      const ofSpread = spread > 0 ? (from * from - spread * spread) / (2 * spread) : 0;
      return from + sign * limitReach * ofSpread;
    });
    const { error, reach } = longRunMean(added);
    return reach * error;
  };
  return {
    mean,
    spread,
    low: mean - limitReach * spread,
    high: mean + limitReach * spread,
    half: { mean: reachOf(0), low: reachOf(-1), high: reachOf(1) },
  };
}
