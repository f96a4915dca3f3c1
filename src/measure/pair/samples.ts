import { stretchesWhere } from '../../math/stretches.ts';
import type { AlignedSecond, Stretch, Subjects } from '../../types.ts';
import { kmh } from '../../units.ts';

/** The seconds at which two meters can be compared, as columns of equal length. */
export interface PairSamples {
  /** Position on the primary's series, ascending. */
  readonly at: Int32Array;
  /** Power of the primary and of the second, W. */
  readonly own: Float64Array;
  readonly other: Float64Array;
  /** Cadence of the primary, or else of the second, rpm; NaN where neither has one. */
  readonly cadence: Float64Array;
  /** Speed of the primary, or else of the second, km/h; NaN where neither has one. */
  readonly speed: Float64Array;
  /**
   * How power, the mean of both, changes at each second, W/s, and how that changes, W/s²: what a lag between the
   * meters and an unlike averaging put into their difference. A neighbour that one did not record changes nothing.
   */
  readonly rise: Float64Array;
  readonly turn: Float64Array;
  /** 1 in and around a sprint: sprints have a comparison of their own and must not leak into the others. */
  readonly sprint: Uint8Array;
}

const kept = new WeakMap<AlignedSecond, PairSamples>();

/**
 * A meter that shows exactly 0 for this long (s) while the other shows real power (W) has lost its link:
 * the second is not a measurement of its. Flywheel tails and lag are shorter (common practice, no source).
 */
const silence = { seconds: 6, watts: 40 };

/** Seconds around a sprint in which lag and averaging still carry it. */
const sprintRoom = 5;

/**
 * Seconds of the race valid on both, in which either meter shows power: zeros of both are coasting and
 * say nothing about a gain; a zero of one alone is part of how it differs, unless it goes on so long that
 * its link must have been lost. Worked out once a pair.
 */
export function pairSamples(all: Subjects, pair: AlignedSecond): PairSamples {
  const known = kept.get(pair);
  if (known !== undefined) return known;
  const own = all.primary.channels.power!;
  const other = pair.series.channels.power!;
  const ownCadence = all.primary.channels.cadence;
  const otherCadence = pair.series.channels.cadence;
  const ownSpeed = all.primary.channels.speed;
  const otherSpeed = pair.series.channels.speed;
  const lost = lostLinks(all, pair);
  const sprinting = new Uint8Array(own.length);
  for (const { kind, stretch } of all.sections) {
    if (kind === 'sprint') sprinting.fill(1, Math.max(0, stretch[0] - sprintRoom), stretch[1] + sprintRoom);
  }
  const [from, to] = all.window;
  const usable = new Int32Array(Math.max(0, to - from));
  let count = 0;
  for (let t = from; t < to; t++) {
    const valid = own[t]! >= 0 && other[t]! >= 0;
    if (valid && lost[t] === 0 && (own[t]! > 0 || other[t]! > 0)) usable[count++] = t;
  }
  const at = usable.slice(0, count);
  const samples: PairSamples = {
    at,
    own: taken(at, own),
    other: taken(at, other),
    cadence: taken(at, ownCadence, otherCadence),
    speed: taken(at, ownSpeed, otherSpeed, kmh),
    rise: new Float64Array(count),
    turn: new Float64Array(count),
    sprint: new Uint8Array(count),
  };
  for (let i = 0; i < count; i++) {
    const t = at[i]!;
    const twice = own[t]! + other[t]!;
    const before = own[t - 1]! + other[t - 1]!;
    const after = own[t + 1]! + other[t + 1]!;
    const fromBefore = before >= 0 ? twice - before : 0;
    const toAfter = after >= 0 ? after - twice : 0;
    samples.rise[i] = (toAfter + fromBefore) / 4;
    samples.turn[i] = (toAfter - fromBefore) / 2;
    samples.sprint[i] = sprinting[t]!;
  }
  kept.set(pair, samples);
  return samples;
}

const keptLost = new WeakMap<AlignedSecond, Uint8Array>();

/**
 * 1 at the seconds of the primary's series in which either meter's link must have been lost: zeros of one alone, or one
 * value that the second repeats. Worked out once a pair.
 */
export function lostLinks({ primary }: Subjects, pair: AlignedSecond): Uint8Array {
  const known = keptLost.get(pair);
  if (known !== undefined) return known;
  const own = primary.channels.power!;
  const other = pair.series.channels.power!;
  const lost = new Uint8Array(own.length);
  markSilence(own, other, lost);
  markSilence(other, own, lost);
  for (const [from, to] of heldIn(other, own)) lost.fill(1, from, to);
  keptLost.set(pair, lost);
  return lost;
}

/** A meter repeats no value for so long while the rider's power moves, s (common practice, no source). */
const longestHeld = 20;

/**
 * Where a meter repeats one value while the other moves: the last that a lost link left, or a target in place of a
 * measurement. A second is no second opinion there; what the primary repeats is compared, for it was handed in.
 */
function heldIn(power: Float64Array, other: Float64Array): Stretch[] {
  const repeats = (t: number) => power[t]! > 0 && power[t] === power[t + 1];
  return stretchesWhere(0, power.length, repeats, longestHeld - 1)
    .map(([from, to]): Stretch => [from, to + 1])
    .filter(([from, to]) => other.subarray(from, to).some((watts) => watts !== other[from]));
}

/** Share of the compared seconds from which what the primary repeats decides what a pair says (common practice, no source). */
const mostRepeated = 0.05;

/** The circumstance of a pair in which no difference is its meters'. */
export const repeating = {
  'primary repeats':
    'the primary repeats one value through a twentieth or more of what is compared, as a lost link leaves it',
} as const;

const keptRepeats = new WeakMap<AlignedSecond, readonly (keyof typeof repeating)[]>();

/** That circumstance, where the primary repeats values for so long while the second moves. Worked out once a pair. */
export function repeatsOf(all: Subjects, pair: AlignedSecond): readonly (keyof typeof repeating)[] {
  const known = keptRepeats.get(pair);
  if (known !== undefined) return known;
  const { at } = pairSamples(all, pair);
  const repeated = new Uint8Array(all.primary.length);
  for (const [from, to] of heldIn(all.primary.channels.power!, pair.series.channels.power!)) {
    repeated.fill(1, from, to);
  }
  let seconds = 0;
  for (let i = 0; i < at.length; i++) seconds += repeated[at[i]!]!;
  const told = seconds > mostRepeated * at.length ? (['primary repeats'] as const) : [];
  keptRepeats.set(pair, told);
  return told;
}

/** Seconds around coasting in which lag and averaging still carry power, and cadence is still told as it was. */
const coastingRoom = 2;

/**
 * The seconds with cadence without those in which either meter or the cranks stand still, and those around: torque
 * is power over cadence, and while the cranks come to rest cadence tells more turns than there are.
 */
export function pedallingSamples(all: Subjects, pair: AlignedSecond): PairSamples {
  const samples = pairSamples(all, pair);
  const own = all.primary.channels.power!;
  const other = pair.series.channels.power!;
  const cadence = all.primary.channels.cadence ?? pair.series.channels.cadence;
  const stands = (t: number) => own[t] === 0 || other[t] === 0 || cadence?.[t] === 0;
  const coasting = new Uint8Array(own.length);
  for (const [from, to] of stretchesWhere(0, own.length, stands)) {
    coasting.fill(1, Math.max(0, from - coastingRoom), to + coastingRoom);
  }
  const pedalled = samples.at
    .map((_, i) => i)
    .filter((i) => coasting[samples.at[i]!] === 0 && samples.cadence[i]! > 0);
  return {
    at: picked(samples.at, pedalled),
    own: picked(samples.own, pedalled),
    other: picked(samples.other, pedalled),
    cadence: picked(samples.cadence, pedalled),
    speed: picked(samples.speed, pedalled),
    rise: picked(samples.rise, pedalled),
    turn: picked(samples.turn, pedalled),
    sprint: picked(samples.sprint, pedalled),
  };
}

/** The values at some places of a column, which are fewer than it has. */
function picked<T extends Float64Array | Int32Array | Uint8Array>(column: T, places: Int32Array): T {
  const values = column.slice(0, places.length) as T;
  for (let k = 0; k < places.length; k++) values[k] = column[places[k]!]!;
  return values;
}

/** Marks stretches in which one meter stays at 0 while the other shows real power for long enough. */
function markSilence(silent: Float64Array, going: Float64Array, lost: Uint8Array): void {
  let from = -1;
  let missed = 0;
  for (let t = 0; t <= silent.length; t++) {
    if (silent[t] === 0) {
      if (from < 0) from = t;
      if (going[t]! >= silence.watts) missed++;
    } else {
      if (from >= 0 && missed >= silence.seconds) lost.fill(1, from, t);
      from = -1;
      missed = 0;
    }
  }
}

/** The values at some seconds, of the first column that has one there; NaN where neither has. */
function taken(at: Int32Array, first?: Float64Array, second?: Float64Array, scale = 1): Float64Array {
  const values = new Float64Array(at.length);
  for (let i = 0; i < at.length; i++) {
    const value = first?.[at[i]!] ?? Number.NaN;
    values[i] = scale * (Number.isNaN(value) ? (second?.[at[i]!] ?? Number.NaN) : value);
  }
  return values;
}
