import { fastDetail } from '../math/fast-detail.ts';
import type { Alignment, Series } from '../types.ts';
import { bestLag } from './by-channel.ts';
import { settings } from './settings.ts';

/**
 * Whether the legs, or where no cadence can be compared the heart, were those of one rider on one ride. Riders of
 * one race surge together, and whoever rides a workout again follows the same steps: weak agreement in power alone
 * may be theirs. A course and its gears move the cadence alike as well, so that only what is faster counts of it.
 */
export function witnessed(primary: Series, shifted: Series, byChannel: Alignment['byChannel']): boolean {
  const legs = legsAgree(primary.channels.cadence, shifted.channels.cadence);
  if (legs !== null) return legs >= settings.sameLegs;
  const heart = byChannel.find(({ channel }) => channel === 'heartRate');
  return heart !== undefined && heart.correlation >= settings.sameHeart;
}

/** Correlation of what is fast in two columns of cadence; null where either is missing or does not vary. */
function legsAgree(own: Float64Array | undefined, other: Float64Array | undefined): number | null {
  if (own === undefined || other === undefined) return null;
  const fast = (column: Float64Array) => fastDetail(column, settings.legSeconds);
  return bestLag(fast(own), fast(other), settings.channelLag.cadence)?.correlation ?? null;
}
