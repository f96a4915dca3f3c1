import type { MeterSpec } from '../meter.ts';
import type { Random } from '../random.ts';
import type { Truth } from '../ride.ts';
import { delayWhole } from './smooth.ts';

/** Cadence as this meter tells it; null where it tells none. */
export function readCadence(truth: Truth, spec: MeterSpec, random: Random): Float64Array | null {
  const { state, noise, width, hold, sticky } = spec.cadence;
  if (state === 'absent') return null;
  if (state === 'dead') return new Float64Array(truth.cadence.length);
  const perSecond = Math.round(1 / truth.step);
  const smoothed = meanWhileTurning(turning(truth.cadence, truth.step, hold), Math.round(width / truth.step));
  const out = delayWhole(smoothed, Math.round(spec.lag / truth.step));
  let error = 0;
  let stuck = Number.NaN;
  for (let i = 0; i < out.length; i++) {
    if (i % perSecond === 0) {
      error = noise * random.normal();
      const repeat = sticky > 0 && random.chance(sticky) && out[i]! > 0 && stuck > 0;
      if (!repeat) stuck = out[i]! <= 0 ? 0 : Math.max(0, out[i]! + error);
    }
    out[i] = stuck;
  }
  return out;
}

/** A sensor that waits for the next turn does not know at once that there is none: it holds its last value. */
function turning(cadence: Float64Array, step: number, hold: number): Float64Array {
  const out = cadence.slice();
  const most = Math.round(hold / step);
  let last = 0;
  let since = most;
  for (let i = 0; i < out.length; i++) {
    if (out[i]! > 0) {
      last = out[i]!;
      since = 0;
    } else if (since < most) {
      out[i] = last;
      since++;
    }
  }
  return out;
}

/** Mean over the last `width` samples of this spell of turning: a stop is told as 0, not as a slow turn. */
function meanWhileTurning(cadence: Float64Array, width: number): Float64Array {
  const out = new Float64Array(cadence.length);
  let sum = 0;
  let count = 0;
  for (let i = 0; i < out.length; i++) {
    if (cadence[i] === 0) {
      sum = 0;
      count = 0;
      continue;
    }
    sum += cadence[i]!;
    count++;
    if (count > width) {
      sum -= cadence[i - width]!;
      count = width;
    }
    out[i] = sum / count;
  }
  return out;
}
