import { median } from 'simple-statistics';
import { stretchesWhere, totalLength } from '../../math/stretches.ts';
import { SecondState, type Series, type Stretch } from '../../types.ts';
import { number } from '../measure.ts';

/** What a heart rate channel holds besides the heart: stretches by kind. */
export interface HeartRateFaults {
  /** No reading, though the recording ran. */
  readonly missing: readonly Stretch[];
  /** One value held on. */
  readonly stuck: readonly Stretch[];
  /** The cadence, or twice or half of it, instead of the heart: what a sensor at the wrist falls into. */
  readonly cadence: readonly Stretch[];
  /** Another level, leapt to from one second to the next, for a while: beats missed, or counted twice. */
  readonly leapt: readonly Stretch[];
}

/** The options by which every measure that looks at heart rate sorts it out. */
export const heartRateOptions = {
  stuckSeconds: number('one heart rate for this long counts as stuck, s'),
  cadenceBeats: number('heart rate this close to the cadence … (bpm)'),
  multipleBeats: number('… or this close to twice or half of it … (bpm)'),
  cadenceSeconds: number('… for this long counts as the cadence, s of pedalling'),
  leapBeats: number('a change within two seconds that no heart can make, bpm'),
  failingSeconds: number('a sensor that fails for a while shows the heart again after this long, s'),
  faultShare: number('share of the race from which a sensor fault is worth saying'),
};

export type HeartRateLimits = { readonly [L in keyof typeof heartRateOptions]: number };

/** The words for each kind, where it takes enough of the race to be worth saying. */
export const heartRateCircumstances = {
  'strap dropped out': 'the strap dropped out for part of the race',
  'heart rate stuck': 'heart rate hung at one value for part of the race',
  'cadence counted': 'the sensor counted the cadence for part of the race',
  'heart rate leapt':
    'heart rate leapt to another level for part of the race, as a sensor does that misses beats or counts them twice',
};

/** Lowest and highest heart rate of a living rider, bpm. */
const slowest = 30;
const fastest = 230;

const kept = new WeakMap<Series, Map<string, HeartRateFaults>>();

/**
 * Sorts out where the heart rate channel shows something other than the heart. Worked out once for the same
 * limits: several rules ask.
 */
export function heartRateFaults(series: Series, limits: HeartRateLimits): HeartRateFaults {
  const known = kept.get(series) ?? new Map<string, HeartRateFaults>();
  kept.set(series, known);
  const key = Object.keys(heartRateOptions)
    .map((name) => limits[name as keyof HeartRateLimits])
    .join(' ');
  const faults = known.get(key) ?? sortOut(series, limits);
  known.set(key, faults);
  return faults;
}

function sortOut({ channels, length, state }: Series, limits: HeartRateLimits): HeartRateFaults {
  const { heartRate, cadence } = channels;
  if (heartRate === undefined) return { missing: [[0, length]], stuck: [], cadence: [], leapt: [] };
  const beats = heartRate.map(living);
  const missing = stretchesWhere(
    0,
    length,
    (i) => Number.isNaN(beats[i]!) && state[i] !== SecondState.paused,
  );
  const stuck = stretchesWhere(1, length, (i) => beats[i] === beats[i - 1], limits.stuckSeconds - 1).map(
    ([from, to]): Stretch => [from - 1, to],
  );
  const counted = cadence === undefined ? [] : likeCadence(beats, cadence, limits);
  for (const [from, to] of [...stuck, ...counted]) beats.fill(Number.NaN, from, to);
  return { missing, stuck, cadence: counted, leapt: apart(beats, limits) };
}

/** A heart rate that a living rider can have; NaN for any other. */
function living(beats: number): number {
  return beats >= slowest && beats <= fastest ? beats : Number.NaN;
}

/** A sensor that counts the cadence may stray from it for so long, s. */
const straySeconds = 3;

/** Joined over seconds of pedalling alone: cranks that stand still count nothing. */
function likeCadence(
  beats: Float64Array,
  cadence: Float64Array,
  { cadenceBeats, multipleBeats, cadenceSeconds }: HeartRateLimits,
): Stretch[] {
  const turning = known(beats, cadence);
  const near = (k: number) => {
    const second = turning[k]!;
    const beat = beats[second]!;
    const turns = cadence[second]!;
    return (
      Math.abs(beat - turns) <= cadenceBeats ||
      Math.min(Math.abs(beat - turns / 2), Math.abs(beat - 2 * turns)) <= multipleBeats
    );
  };
  return stretchesWhere(0, turning.length, near, cadenceSeconds, straySeconds).map(([from, to]) => [
    turning[from]!,
    turning[to - 1]! + 1,
  ]);
}

/** The seconds that hold a heart rate, and with a cadence those of them in which the cranks turn. */
function known(beats: Float64Array, cadence?: Float64Array): Int32Array {
  const seconds = new Int32Array(beats.length);
  let count = 0;
  for (let i = 0; i < beats.length; i++) {
    if (!Number.isNaN(beats[i]!) && (cadence === undefined || cadence[i]! > 0)) seconds[count++] = i;
  }
  return seconds.subarray(0, count);
}

/** Pieces between leaps that stand apart from the longest, unless they last: then nobody can say which is the heart. */
function apart(beats: Float64Array, { leapBeats, failingSeconds }: HeartRateLimits): Stretch[] {
  const seconds = known(beats);
  const leaps: number[] = [];
  for (let k = 1; k < seconds.length; k++) {
    const before = seconds[k - 1]!;
    const second = seconds[k]!;
    if (second - before <= 2 && Math.abs(beats[second]! - beats[before]!) >= leapBeats) leaps.push(k);
  }
  if (leaps.length === 0) return [];
  const pieces = [0, ...leaps].map((from, p) => {
    const piece = seconds.subarray(from, leaps[p] ?? seconds.length);
    return {
      stretch: [piece[0]!, piece[piece.length - 1]! + 1] as const,
      level: median(Array.from(piece, (second) => beats[second]!)),
    };
  });
  const length = ([from, to]: Stretch) => to - from;
  const main = pieces.reduce((a, b) => (length(b.stretch) > length(a.stretch) ? b : a));
  return pieces
    .filter(({ level }) => Math.abs(level - main.level) >= leapBeats)
    .map(({ stretch }) => stretch)
    .filter((stretch) => length(stretch) <= failingSeconds);
}

/** Heart rate with everything else masked out as NaN. */
export function cleanHeartRate(series: Series, faults: HeartRateFaults): Float64Array {
  const clean = series.channels.heartRate!.slice();
  for (const [from, to] of [...faults.missing, ...faults.stuck, ...faults.cadence, ...faults.leapt])
    clean.fill(Number.NaN, from, to);
  return clean;
}

/** Which kinds take this share of the race or more. */
export function circumstancesOf(
  { missing, stuck, cadence, leapt }: HeartRateFaults,
  window: Stretch,
  { faultShare }: HeartRateLimits,
): string[] {
  const named: readonly (readonly [keyof typeof heartRateCircumstances, readonly Stretch[]])[] = [
    ['strap dropped out', missing],
    ['heart rate stuck', stuck],
    ['cadence counted', cadence],
    ['heart rate leapt', leapt],
  ];
  const least = faultShare * (window[1] - window[0]);
  return named.filter(([, stretches]) => secondsWithin(stretches, window) >= least).map(([name]) => name);
}

/** Seconds of these stretches that lie in the window. */
export function secondsWithin(stretches: readonly Stretch[], [from, to]: Stretch): number {
  return totalLength(
    stretches.map(([a, b]): Stretch => [Math.max(from, a), Math.max(from, a, Math.min(to, b))]),
  );
}
