import { meanMaximal } from '../../math/mean-maximal.ts';
import type { Stretch } from '../../types.ts';

/**
 * Mean heart rate (bpm) of the best window of power at each duration; beyond the length of the ride that of
 * the longest one, 0 where it is not known.
 */
export function meanWithin(
  power: Float64Array,
  heartRate: Float64Array,
  durations: readonly number[],
  window: Stretch,
): number[] {
  const best = meanMaximal(power, durations, ...window);
  let last = 0;
  return durations.map((duration, k) => {
    if (best.from[k]! < 0) return last;
    last = meanKnown(heartRate.subarray(best.from[k]!, best.from[k]! + duration));
    return last;
  });
}

function meanKnown(column: Float64Array): number {
  const known = column.filter((value) => value > 0);
  return known.length * 2 < column.length ? 0 : known.reduce((a, b) => a + b, 0) / known.length;
}
