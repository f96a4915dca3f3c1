import { laggedSums } from '../math/lagged.ts';
import { laggedCorrelations } from '../math/lagged-correlations.ts';
import type { Alignment, Series } from '../types.ts';
import { settings } from './settings.ts';

/** Channels whose detail a second recorder of the same ride would share. */
const compared = ['power', 'cadence', 'heartRate'] as const;

/**
 * The lag at which each channel of the shifted second agrees best, beyond the offset already applied:
 * sensors and links buffer differently, so that heart rate may lag by seconds where power does not.
 */
export function byChannel(primary: Series, shifted: Series): Alignment['byChannel'] {
  return compared.flatMap((channel) => {
    const own = primary.channels[channel];
    const other = shifted.channels[channel];
    if (own === undefined || other === undefined) return [];
    const best = bestLag(detrend(own), detrend(other), settings.channelLag[channel]);
    return best === null ? [] : [{ channel, ...best }];
  });
}

/** Best lag within ±`reach` seconds of two detrended columns, with its correlation; null without variation. */
export function bestLag(
  own: Float64Array,
  other: Float64Array,
  reach: number,
): { lag: number; correlation: number } | null {
  let best: { lag: number; correlation: number } | null = null;
  for (const [k, correlation] of laggedCorrelations(own, other, reach).entries()) {
    if (correlation > (best?.correlation ?? -Infinity)) best = { lag: k - reach, correlation };
  }
  return best;
}

/** Correlation of columns around zero at one lag; null when either does not vary there. */
export function correlationAt(own: Float64Array, other: Float64Array, lag: number): number | null {
  const { products, squares, otherSquares } = laggedSums(own, other, lag);
  return squares > 0 && otherSquares > 0 ? products / Math.sqrt(squares * otherSquares) : null;
}

/** Takes out the centred moving mean over `channelTrend` seconds; NaN stays NaN. */
export function detrend(column: Float64Array): Float64Array {
  const half = settings.channelTrend / 2;
  const sums = new Float64Array(column.length + 1);
  const counts = new Int32Array(column.length + 1);
  for (let t = 0; t < column.length; t++) {
    const value = column[t]!;
    const valid = !Number.isNaN(value);
    sums[t + 1] = sums[t]! + (valid ? value : 0);
    counts[t + 1] = counts[t]! + (valid ? 1 : 0);
  }
  const rest = new Float64Array(column.length);
  for (let t = 0; t < column.length; t++) {
    const from = Math.max(0, t - half);
    const to = Math.min(column.length, t + half + 1);
    rest[t] = column[t]! - (sums[to]! - sums[from]!) / (counts[to]! - counts[from]!);
  }
  return rest;
}
