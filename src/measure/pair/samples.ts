import type { AlignedSecond, Subjects } from '../../types.ts';

/** The seconds at which two meters can be compared, as columns of equal length. */
export interface PairSamples {
  /** Position on the primary's series, ascending. */
  readonly at: Int32Array;
  /** Power of the primary and of the second, W. */
  readonly own: Float64Array;
  readonly other: Float64Array;
  /** Cadence of the primary, or else of the second, rpm; NaN where neither has one. */
  readonly cadence: Float64Array;
}

const kept = new WeakMap<AlignedSecond, PairSamples>();

/**
 * Seconds of the race valid on both, in which either meter shows power: zeros of both are coasting and
 * say nothing about a gain; a zero of one alone is part of how it differs. Worked out once a pair.
 */
export function pairSamples(all: Subjects, pair: AlignedSecond): PairSamples {
  const known = kept.get(pair);
  if (known !== undefined) return known;
  const own = all.primary.channels.power!;
  const other = pair.series.channels.power!;
  const ownCadence = all.primary.channels.cadence;
  const otherCadence = pair.series.channels.cadence;
  const usable: number[] = [];
  for (let t = all.window[0]; t < all.window[1]; t++)
    if (own[t]! > 0 ? other[t]! >= 0 : own[t]! >= 0 && other[t]! > 0) usable.push(t);
  const at = Int32Array.from(usable);
  const samples: PairSamples = {
    at,
    own: Float64Array.from(at, (t) => own[t]!),
    other: Float64Array.from(at, (t) => other[t]!),
    cadence: Float64Array.from(at, (t) => firstValid(ownCadence?.[t], otherCadence?.[t])),
  };
  kept.set(pair, samples);
  return samples;
}

function firstValid(a = Number.NaN, b = Number.NaN): number {
  return Number.isNaN(a) ? b : a;
}
