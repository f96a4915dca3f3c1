import { type Recording, SecondState, type Stretch } from '../types.ts';
import type { Order } from './order.ts';
import { settings } from './settings.ts';

/**
 * Says of every second without a record why it has none: a pause (stated by the file, or begun at a
 * standstill), the rhythm of an irregular recorder, or missing. Seconds with a record are `recorded`.
 */
export function states(recording: Recording, order: Order): Uint8Array {
  const { seconds, records } = order;
  const start = seconds[0]!;
  const state = new Uint8Array(seconds[seconds.length - 1]! - start + 1);
  const irregular = writesIrregularly(seconds);
  const isPaused = pauseTest(recording.pauses);
  for (let i = 1; i < seconds.length; i++) {
    const from = seconds[i - 1]! + 1;
    const to = seconds[i]!;
    if (to <= from) continue;
    const stated = isPaused(from, to);
    const gap = stated ? SecondState.paused : unstated(recording, records[i - 1]!, to - from, irregular);
    state.fill(gap, from - start, to - start);
  }
  return state;
}

/** What a gap of `length` seconds after a record is where the file does not say. */
function unstated(recording: Recording, record: number, length: number, irregular: boolean): number {
  if (irregular && length < settings.bridgeSeconds) return SecondState.bridged;
  if (length >= settings.pauseSeconds && isStill(recording, record)) return SecondState.paused;
  return SecondState.missing;
}

function writesIrregularly(seconds: Float64Array): boolean {
  let wide = 0;
  for (let i = 1; i < seconds.length; i++) {
    const step = seconds[i]! - seconds[i - 1]!;
    if (step > 1 && step <= settings.bridgeSeconds) wide++;
  }
  return wide > settings.irregularShare * (seconds.length - 1);
}

/**
 * Tells whether a gap lies, in its greater part, inside stated pauses. Time paused before a moment is the
 * running time since every start before it, less that since every end: one look-up each, so that a file
 * with as many pauses as gaps costs no more than sorting them.
 */
function pauseTest(pauses: readonly Stretch[]): (from: number, to: number) => boolean {
  const forward = pauses.filter(([a, b]) => b > a);
  const sinceStarts = timeSince(forward.map(([a]) => a));
  const sinceEnds = timeSince(forward.map(([, b]) => b));
  const pausedBefore = (t: number) => sinceStarts(t) - sinceEnds(t);
  return (from, to) => (pausedBefore(to) - pausedBefore(from)) * 2 > to - from;
}

/** Sum of the time from each moment before t to t. */
function timeSince(moments: readonly number[]): (t: number) => number {
  const sorted = Float64Array.from(moments).sort();
  const sums = new Float64Array(sorted.length + 1);
  // Against the first moment, so that sums of clock times stay exact.
  const base = sorted[0] ?? 0;
  for (let i = 0; i < sorted.length; i++) sums[i + 1] = sums[i]! + (sorted[i]! - base);
  return (t) => {
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sorted[middle]! < t) low = middle + 1;
      else high = middle;
    }
    return low * (t - base) - sums[low]!;
  };
}

function isStill(recording: Recording, record: number): boolean {
  const speed = recording.channels.speed?.[record] ?? Number.NaN;
  if (Number.isFinite(speed)) return speed < settings.standstillSpeed;
  const power = recording.channels.power?.[record] ?? Number.NaN;
  const cadence = recording.channels.cadence?.[record] ?? Number.NaN;
  return power === 0 && !(cadence > 0);
}
