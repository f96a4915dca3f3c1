import type { Stretch } from '../../types.ts';

/** One sprint. */
export interface Effort {
  /** Between its edges. */
  readonly core: Stretch;
  /** With room before and after for lag and averaging. */
  readonly stretch: Stretch;
}

export interface EffortOptions {
  readonly peakOverMean: number;
  readonly edgeOverMean: number;
  readonly shortestSeconds: number;
  readonly longestSeconds: number;
  readonly roomSeconds: number;
}

/**
 * Finds short hard efforts in the mean of two meters (choosing by one of them would pick its errors):
 * three-second power above `peakOverMean` times the mean of the ride, out to where it falls under
 * `edgeOverMean` times the mean. Efforts that are longer, shorter or not whole on both are left out.
 */
export function findEfforts(
  own: Float64Array,
  other: Float64Array,
  [from, to]: Stretch,
  options: EffortOptions,
): Effort[] {
  const both = own.map((watts, t) => (watts + other[t]!) / 2);
  const mean = meanPedalling(both, from, to);
  const peak = options.peakOverMean * mean;
  const edge = options.edgeOverMean * mean;
  const efforts: Effort[] = [];
  for (let t = from + 1; t + 1 < to; t++) {
    if (!((both[t - 1]! + both[t]! + both[t + 1]!) / 3 >= peak)) continue;
    let start = t;
    while (start > from && both[start - 1]! >= edge) start--;
    let end = t + 1;
    while (end < to && both[end]! >= edge) end++;
    const seconds = end - start;
    const stretch = [
      Math.max(from, start - options.roomSeconds),
      Math.min(to, end + options.roomSeconds),
    ] as const;
    t = end + options.roomSeconds;
    if (seconds < options.shortestSeconds || seconds > options.longestSeconds) continue;
    if (isWhole(both, stretch)) efforts.push({ core: [start, end], stretch });
  }
  return efforts;
}

function meanPedalling(both: Float64Array, from: number, to: number): number {
  let sum = 0;
  let count = 0;
  for (let t = from; t < to; t++) {
    if (!(both[t]! > 0)) continue;
    sum += both[t]!;
    count++;
  }
  return sum / count;
}

function isWhole(both: Float64Array, [from, to]: Stretch): boolean {
  for (let t = from; t < to; t++) if (Number.isNaN(both[t]!)) return false;
  return true;
}
