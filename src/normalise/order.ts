import { longestRide } from '../sizes.ts';
import { settings } from './settings.ts';

/** Which records to use, in order of time, and the second that each belongs to. */
export interface Order {
  /** Indices into the recording. */
  readonly records: Int32Array;
  /** Whole clock seconds, ascending; equal neighbours share a second. */
  readonly seconds: Float64Array;
  readonly backward: number;
  readonly far: number;
  readonly doubled: number;
}

/**
 * Puts records in order of time by one rule: sorted by time (file order where equal); the largest body
 * without a gap longer than `farSeconds`; a record that shares its second with another moves into an
 * empty neighbouring second, as recorders with a jittering clock need; what still shares is averaged later.
 */
export function order(time: Float64Array): Order {
  const { records, backward } = sorted(time);
  const [from, to] = largestBody(time, records);
  const kept = records.subarray(from, to);
  const seconds = new Float64Array(kept.length);
  for (let i = 0; i < seconds.length; i++) seconds[i] = Math.round(time[kept[i]!]!);
  const doubled = spreadDoubles(seconds);
  return { records: kept, seconds, backward, far: records.length - kept.length, doubled };
}

function sorted(time: Float64Array): { records: Int32Array; backward: number } {
  const records = new Int32Array(time.length);
  let count = 0;
  let backward = 0;
  let latest = -Infinity;
  for (let i = 0; i < time.length; i++) {
    const t = time[i]!;
    if (!Number.isFinite(t)) continue;
    records[count++] = i;
    if (t < latest) backward++;
    latest = Math.max(latest, t);
  }
  const used = records.subarray(0, count);
  if (backward > 0) used.sort((a, b) => time[a]! - time[b]! || a - b);
  return { records: used, backward };
}

function largestBody(time: Float64Array, records: Int32Array): readonly [number, number] {
  let best: readonly [number, number] = [0, 0];
  let from = 0;
  for (let i = 1; i <= records.length; i++) {
    const breaks =
      i === records.length ||
      time[records[i]!]! - time[records[i - 1]!]! > settings.farSeconds ||
      time[records[i]!]! - time[records[from]!]! >= longestRide;
    if (!breaks) continue;
    if (i - from > best[1] - best[0]) best = [from, i];
    from = i;
  }
  return best;
}

/** Moves doubled records into free neighbouring seconds, in place; returns how many were doubled. */
function spreadDoubles(seconds: Float64Array): number {
  let doubled = 0;
  for (let i = 1; i < seconds.length; i++) {
    const second = seconds[i]!;
    if (second !== seconds[i - 1]) continue;
    doubled++;
    const next = i + 1 < seconds.length ? seconds[i + 1]! : Infinity;
    const before = i >= 2 ? seconds[i - 2]! : -Infinity;
    if (next > second + 1) seconds[i] = second + 1;
    else if (before < second - 1) seconds[i - 1] = second - 1;
  }
  return doubled;
}
