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

/** Sorts out where the heart rate channel shows something other than the heart. */
export function heartRateFaults(
  { channels, length, state }: Series,
  limits: HeartRateLimits,
): HeartRateFaults {
  const { heartRate, cadence } = channels;
  if (heartRate === undefined) return { missing: [[0, length]], stuck: [], cadence: [], leapt: [] };
  const plausible = (i: number) => heartRate[i]! >= slowest && heartRate[i]! <= fastest;
  const missing = stretchesWhere(0, length, (i) => !plausible(i) && state[i] !== SecondState.paused);
  const held = (i: number) => plausible(i) && heartRate[i] === heartRate[i - 1];
  const stuck = stretchesWhere(1, length, held, limits.stuckSeconds - 1).map(
    ([from, to]): Stretch => [from - 1, to],
  );
  const counted = cadence === undefined ? [] : likeCadence(heartRate, cadence, plausible, limits);
  const told = new Uint8Array(length);
  for (const [from, to] of [...stuck, ...counted]) told.fill(1, from, to);
  return {
    missing,
    stuck,
    cadence: counted,
    leapt: apart(heartRate, (i) => plausible(i) && told[i] === 0, limits),
  };
}

/** A sensor that counts the cadence may stray from it for so long, s. */
const straySeconds = 3;

/** Joined over seconds of pedalling alone: cranks that stand still count nothing. */
function likeCadence(
  heartRate: Float64Array,
  cadence: Float64Array,
  plausible: (second: number) => boolean,
  { cadenceBeats, multipleBeats, cadenceSeconds }: HeartRateLimits,
): Stretch[] {
  const turning = Array.from(cadence.keys()).filter((i) => cadence[i]! > 0 && plausible(i));
  const near = (k: number) => {
    const [beats, turns] = [heartRate[turning[k]!]!, cadence[turning[k]!]!];
    return (
      Math.abs(beats - turns) <= cadenceBeats ||
      Math.min(Math.abs(beats - turns / 2), Math.abs(beats - 2 * turns)) <= multipleBeats
    );
  };
  return stretchesWhere(0, turning.length, near, cadenceSeconds, straySeconds).map(([from, to]) => [
    turning[from]!,
    turning[to - 1]! + 1,
  ]);
}

/** Pieces between leaps that stand apart from the longest, unless they last: then nobody can say which is the heart. */
function apart(
  heartRate: Float64Array,
  usable: (second: number) => boolean,
  { leapBeats, failingSeconds }: HeartRateLimits,
): Stretch[] {
  const known = Array.from(heartRate.keys()).filter(usable);
  const leaps = known.flatMap((second, k) => {
    const before = known[Math.max(0, k - 1)]!;
    const leap = second - before <= 2 && Math.abs(heartRate[second]! - heartRate[before]!) >= leapBeats;
    return leap ? [k] : [];
  });
  if (leaps.length === 0) return [];
  const pieces = [0, ...leaps].map((from, p) => {
    const seconds = known.slice(from, leaps[p] ?? known.length);
    return {
      stretch: [seconds[0]!, seconds[seconds.length - 1]! + 1] as const,
      level: median(seconds.map((second) => heartRate[second]!)),
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
