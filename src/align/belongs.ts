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

/** Tells something of a stretch of the primary at a lag. */
type Ask = (stretch: Stretch, lag: number) => boolean;

/**
 * Asks what else than the fine detail of power was recorded.
 *
 * `belongs`: whether a stretch may be of one ride on both, at a lag, although no lag explains that detail: an even
 * ride has little, yet power as a whole, legs or heart go up and down together. Where both recorded something and none
 * of it does, one of them holds another ride there, and nothing may be concluded from it.
 *
 * `bearsOut`: whether a lag that was found elsewhere holds here as well. Of a workout's steps power is at any lag like
 * that of others: where legs can be compared, they alone tell.
 */
export function recordedBeside(
  primary: Series,
  second: Series,
): { readonly belongs: Ask; readonly bearsOut: Ask } {
  const known = new Map<Float64Array, Float64Array>();
  const even = (column: Float64Array) => {
    const detrended = known.get(column) ?? detrend(column);
    known.set(column, detrended);
    return detrended;
  };
  const agreement = (channel: (typeof least)[number][0], [start, end]: Stretch, lag: number) => {
    const own = primary.channels[channel];
    const other = second.channels[channel];
    if (own === undefined || other === undefined) return null;
    const from = Math.max(start, lag, 0);
    const to = Math.min(end, primary.length, second.length + lag);
    if (to - from < settings.leastSegmentSeconds) return null;
    const best = bestLag(
      even(own).subarray(from, to),
      even(other).subarray(from - lag, to - lag),
      settings.channelLag[channel],
    );
    return best?.correlation ?? null;
  };
  const belongs: Ask = (stretch, lag) => {
    const found = least.flatMap(([channel, needed]) => {
      const correlation = agreement(channel, stretch, lag);
      return correlation === null ? [] : [correlation >= needed];
    });
    return found.length === 0 || found.some((agrees) => agrees);
  };
  const bearsOut: Ask = (stretch, lag) => {
    const legs = agreement('cadence', stretch, lag);
    return legs === null ? belongs(stretch, lag) : legs >= settings.sameEnd;
  };
  return { belongs, bearsOut };
}
