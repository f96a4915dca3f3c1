/** The best windows of a ride, one per duration asked for. */
export interface MeanMaximal {
  /** Highest mean power, W; NaN where the ride is shorter than the duration or holds no power at all. */
  readonly watts: Float64Array;
  /** First second of the (earliest) best window; -1 where there is none. */
  readonly from: Int32Array;
}

/**
 * Mean-maximal power: for each duration the highest mean over all windows of that length, on the 1 s grid.
 *
 * A missing second counts as 0 W and windows run on clock time, across gaps and pauses: a gap can lower a
 * best, never raise it, so that every best stays a lower bound on what the rider did.
 *
 * Exact (no subsampling of windows), from prefix sums: linear in the ride for each duration.
 *
 * @param power W, one value a second, NaN where missing
 * @param durations s, whole and at least 1
 * @param from first second looked at
 * @param to second after the last one looked at
 */
export function meanMaximal(
  power: Float64Array,
  durations: readonly number[],
  from = 0,
  to = power.length,
): MeanMaximal {
  const first = Math.max(0, from);
  const seconds = Math.max(0, Math.min(to, power.length) - first);
  const { sums, valid } = prefixSums(power, first, seconds);
  const watts = new Float64Array(durations.length).fill(Number.NaN);
  const starts = new Int32Array(durations.length).fill(-1);
  for (let k = 0; k < durations.length; k++) {
    const duration = durations[k]!;
    if (valid === 0 || duration > seconds) continue;
    let highest = -Infinity;
    let at = 0;
    for (let i = 0; i + duration <= seconds; i++) {
      const sum = sums[i + duration]! - sums[i]!;
      if (sum > highest) {
        highest = sum;
        at = i;
      }
    }
    watts[k] = highest / duration;
    starts[k] = first + at;
  }
  return { watts, from: starts };
}

function prefixSums(power: Float64Array, first: number, seconds: number) {
  const sums = new Float64Array(seconds + 1);
  let valid = 0;
  for (let i = 0; i < seconds; i++) {
    const watts = power[first + i]!;
    const missing = Number.isNaN(watts);
    if (!missing) valid++;
    sums[i + 1] = sums[i]! + (missing ? 0 : watts);
  }
  return { sums, valid };
}
