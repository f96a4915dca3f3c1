import { stretchesWhere } from '../../math/stretches.ts';
import { SecondState, type Series, type Stretch } from '../../types.ts';

/** What a heart rate channel holds besides the heart: stretches by kind. */
export interface HeartRateFaults {
  /** No reading, though the recording ran. */
  readonly missing: readonly Stretch[];
  /** One value held on. */
  readonly stuck: readonly Stretch[];
  /** The cadence, or twice or half of it, instead of the heart: what a sensor at the wrist falls into. */
  readonly cadence: readonly Stretch[];
}

export interface HeartRateLimits {
  /** One value for this long (s) is stuck. */
  readonly stuckSeconds: number;
  /** This close to the cadence (bpm) … */
  readonly cadenceBeats: number;
  /** … for this long (s) is the cadence. */
  readonly cadenceSeconds: number;
}

/** Lowest and highest heart rate of a living rider, bpm. */
const slowest = 30;
const fastest = 230;

/** Sorts out where the heart rate channel shows something other than the heart. */
export function heartRateFaults(
  { channels, length, state }: Series,
  limits: HeartRateLimits,
): HeartRateFaults {
  const { heartRate, cadence } = channels;
  if (heartRate === undefined) return { missing: [[0, length]], stuck: [], cadence: [] };
  const plausible = (i: number) => heartRate[i]! >= slowest && heartRate[i]! <= fastest;
  const missing = stretchesWhere(0, length, (i) => !plausible(i) && state[i] !== SecondState.paused);
  const held = (i: number) => plausible(i) && heartRate[i] === heartRate[i - 1];
  const stuck = stretchesWhere(1, length, held, limits.stuckSeconds - 1);
  const counted = (i: number) =>
    plausible(i) && fromCadence(heartRate[i]!, cadence![i]!) <= limits.cadenceBeats;
  return {
    missing,
    stuck: stuck.map(([from, to]) => [from - 1, to]),
    cadence:
      cadence === undefined ? [] : stretchesWhere(0, length, counted, limits.cadenceSeconds, strayBeats),
  };
}

/** A sensor that counts the cadence may stray from it for so long, s. */
const strayBeats = 3;

/** How far beats (bpm) lie from the cadence (rpm), or from twice or half of it; infinite where nobody pedals. */
function fromCadence(beats: number, turns: number): number {
  if (!(turns > 0)) return Number.POSITIVE_INFINITY;
  return Math.min(Math.abs(beats - turns / 2), Math.abs(beats - turns), Math.abs(beats - 2 * turns));
}

/** Heart rate with everything else masked out as NaN. */
export function cleanHeartRate(series: Series, faults: HeartRateFaults): Float64Array {
  const clean = series.channels.heartRate!.slice();
  for (const [from, to] of [...faults.missing, ...faults.stuck, ...faults.cadence])
    clean.fill(Number.NaN, from, to);
  return clean;
}
