import type { Series, Stretch } from '../types.ts';
import { bestLag, detrend } from './by-channel.ts';
import { settings } from './settings.ts';

/**
 * Least trend-free agreement (correlation) that lets a stretch be of one ride: one channel is enough, for meters
 * fail and so do straps.
 */
const least = [
  ['power', settings.sameStretch],
  ['cadence', settings.sameStretch],
  ['heartRate', settings.sameHeart],
] as const;

/**
 * Tells whether a stretch may be of one ride on both, at a lag, although no lag explains the fine detail of its
 * power: an even ride has little, yet power as a whole, legs or heart go up and down together. Where both recorded
 * something and none of it does, one of them holds another ride there, and nothing may be concluded from it.
 */
export function belongsBy(primary: Series, second: Series): (stretch: Stretch, lag: number) => boolean {
  const known = new Map<Float64Array, Float64Array>();
  const even = (column: Float64Array) => {
    const detrended = known.get(column) ?? detrend(column);
    known.set(column, detrended);
    return detrended;
  };
  return ([start, end], lag) => {
    const from = Math.max(start, lag, 0);
    const to = Math.min(end, primary.length, second.length + lag);
    if (to - from < settings.leastSegmentSeconds) return true;
    const found = least.flatMap(([channel, needed]) => {
      const own = primary.channels[channel];
      const other = second.channels[channel];
      if (own === undefined || other === undefined) return [];
      const best = bestLag(
        even(own).subarray(from, to),
        even(other).subarray(from - lag, to - lag),
        settings.channelLag[channel],
      );
      return best === null ? [] : [best.correlation >= needed];
    });
    return found.length === 0 || found.some((agrees) => agrees);
  };
}
