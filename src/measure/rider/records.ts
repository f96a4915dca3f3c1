import type { RiderFacts } from '../../types.ts';

/**
 * Highest mean power of people, W/kg: seconds, then watts. Top of the table in Allen, Coggan & McGregor,
 * "Training and Racing with a Power Meter", 3rd edition, whose last column (threshold) stands for an hour.
 */
const records = {
  open: [
    [5, 25.18],
    [60, 11.5],
    [300, 7.6],
    [3600, 6.4],
  ],
  women: [
    [5, 19.42],
    [60, 9.29],
    [300, 6.74],
    [3600, 5.69],
  ],
} as const;

/** The record for a duration (5 s to an hour, W/kg), straight on logarithmic axes between the published ones. */
export function recordPower(seconds: number, recordClass: NonNullable<RiderFacts['recordClass']>): number {
  const points = records[recordClass];
  const next = points.findIndex(([duration]) => duration >= seconds);
  const [high, low] = [points[Math.max(1, next)]!, points[Math.max(1, next) - 1]!];
  const share = Math.log(seconds / low[0]) / Math.log(high[0] / low[0]);
  return low[1] * (high[1] / low[1]) ** share;
}
