import type { Stretch } from '../../types.ts';

export interface HeartWindow {
  readonly stretch: Stretch;
  /** Correlation of heart rate with power as the heart would follow it, slow drift taken out. */
  readonly r: number;
}

export interface WindowLimits {
  readonly windowSeconds: number;
  /** Share of a window's seconds that must be known. */
  readonly leastKnown: number;
  /** SD of followed power over its mean below which a heart has nothing to answer to. */
  readonly leastVariation: number;
}

/** One value a second each. */
export interface HeartColumns {
  /** Power as a quick heart would follow it, W: whether there is anything to answer to. */
  readonly felt: Float64Array;
  /** Power as this heart is held to follow it, W. */
  readonly followed: Float64Array;
  /** bpm, NaN wherever it is not the heart. */
  readonly heartRate: Float64Array;
}

/**
 * Windows in which power varied enough for a heart to show it, each with how well heart rate followed.
 *
 * @param lag seconds that heart rate arrives late
 */
export function heartWindows(
  { felt, followed, heartRate }: HeartColumns,
  [from, to]: Stretch,
  lag: number,
  limits: WindowLimits,
): HeartWindow[] {
  const windows: HeartWindow[] = [];
  for (let start = from; start + limits.windowSeconds <= to; start += limits.windowSeconds) {
    const end = start + limits.windowSeconds;
    const known: number[] = [];
    for (let i = start; i < end; i++) {
      if (i >= lag && !Number.isNaN(heartRate[i]! + followed[i - lag]!)) known.push(i);
    }
    if (known.length < limits.leastKnown * limits.windowSeconds) continue;
    const quick = known.map((i) => felt[i]!);
    const moved = withoutTrend(quick, known);
    const variation = Math.sqrt(product(moved, moved) / moved.length);
    if (!(variation >= (limits.leastVariation * quick.reduce((a, b) => a + b, 0)) / quick.length)) continue;
    const a = withoutTrend(
      known.map((i) => followed[i - lag]!),
      known,
    );
    const b = withoutTrend(
      known.map((i) => heartRate[i]!),
      known,
    );
    const size = Math.sqrt(product(a, a) * product(b, b));
    windows.push({ stretch: [start, end], r: size > 0 ? product(a, b) / size : 0 });
  }
  return windows;
}

const product = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/** What is left of values when their mean and straight trend over time are taken out. */
function withoutTrend(values: readonly number[], times: readonly number[]): number[] {
  const n = values.length;
  const meanTime = times.reduce((a, b) => a + b, 0) / n;
  const mean = values.reduce((a, b) => a + b, 0) / n;
  const squares = times.reduce((sum, time) => sum + (time - meanTime) ** 2, 0);
  const slope = values.reduce((sum, value, i) => sum + (value - mean) * (times[i]! - meanTime), 0) / squares;
  return values.map((value, i) => value - mean - slope * (times[i]! - meanTime));
}
