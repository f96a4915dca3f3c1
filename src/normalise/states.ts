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
  for (let i = 1; i < seconds.length; i++) {
    const from = seconds[i - 1]! + 1;
    const to = seconds[i]!;
    if (to <= from) continue;
    state.fill(gapState(to - from), from - start, to - start);

    function gapState(length: number): number {
      if (isPaused(recording.pauses, from, to)) return SecondState.paused;
      if (irregular && length < settings.bridgeSeconds) return SecondState.bridged;
      if (length >= settings.pauseSeconds && isStill(recording, records[i - 1]!)) return SecondState.paused;
      return SecondState.missing;
    }
  }
  return state;
}

function writesIrregularly(seconds: Float64Array): boolean {
  let wide = 0;
  for (let i = 1; i < seconds.length; i++) {
    const step = seconds[i]! - seconds[i - 1]!;
    if (step > 1 && step <= settings.bridgeSeconds) wide++;
  }
  return wide > settings.irregularShare * (seconds.length - 1);
}

/** The gap lies, in its greater part, inside a stated pause. */
function isPaused(pauses: readonly Stretch[], from: number, to: number): boolean {
  const covered = pauses.reduce((sum, [a, b]) => sum + Math.max(0, Math.min(b, to) - Math.max(a, from)), 0);
  return covered * 2 > to - from;
}

function isStill(recording: Recording, record: number): boolean {
  const speed = recording.channels.speed?.[record] ?? Number.NaN;
  if (Number.isFinite(speed)) return speed < settings.standstillSpeed;
  const power = recording.channels.power?.[record] ?? Number.NaN;
  const cadence = recording.channels.cadence?.[record] ?? Number.NaN;
  return power === 0 && !(cadence > 0);
}
