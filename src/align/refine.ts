import { studentQuantile } from '../math/student.ts';
import type { Estimate } from '../types.ts';
import { gainWithin } from './lags.ts';
import type { Segment } from './segments.ts';
import { settings } from './settings.ts';

/** Where a parabola through the gains one second before, at and after a lag has its top. */
interface Top {
  /** Seconds beyond the whole-second lag, -0.5 … 0.5 when the lag is the highest of the three. */
  readonly shift: number;
  /** Standard error, s, from how sharply the likelihood falls off. */
  readonly error: number;
}

function top(before: number, at: number, after: number): Top | null {
  const curvature = 2 * at - before - after;
  if (!(curvature > 0)) return null;
  return { shift: (after - before) / (2 * curvature), error: 1 / Math.sqrt(curvature) };
}

/**
 * The lag to a fraction of a second with its 95 % interval: the top of the log-likelihood around the
 * whole-second lag. Never narrower than ±0.1 s: link latency of that size cannot be told from a clock.
 */
export function subSecond(gainAt: (lag: number) => number, lag: number): Estimate {
  const found = top(gainAt(lag - 1), gainAt(lag), gainAt(lag + 1));
  const shift = found === null ? 0 : Math.max(-1, Math.min(1, found.shift));
  const error = found === null ? 1 : Math.max(0.05, found.error);
  return { value: lag + shift, low: lag + shift - 1.96 * error, high: lag + shift + 1.96 * error };
}

/**
 * How the two clocks run apart, in parts per million of the primary's time, from sub-second lags in
 * windows of ten minutes; positive when the second's clock runs slow. Null when there are too few windows.
 */
export function drift(
  primary: Float64Array,
  second: Float64Array,
  segments: readonly Segment[],
): Estimate | null {
  const points = segments.flatMap(({ stretch, lag }) => {
    const found: { at: number; lag: number; weight: number }[] = [];
    for (let from = stretch[0]; from + settings.driftWindow <= stretch[1]; from += settings.driftWindow) {
      const to = from + settings.driftWindow;
      const gains = [-1, 0, 1].map((step) => gainWithin(primary, second, from, to, lag + step));
      const local = top(gains[0]!, gains[1]!, gains[2]!);
      if (local === null || Math.abs(local.shift) > 1.5) continue;
      found.push({ at: (from + to) / 2, lag: lag + local.shift, weight: 1 / (local.error ** 2 + 0.05 ** 2) });
    }
    return found;
  });
  // Jumps of a clock that skips pauses are not drift.
  const steady = points.filter(({ lag }) => Math.abs(lag - points[0]!.lag) < 3);
  return steady.length < settings.driftWindows ? null : slope(steady);
}

function slope(points: readonly { at: number; lag: number; weight: number }[]): Estimate {
  const total = points.reduce((sum, p) => sum + p.weight, 0);
  const meanAt = points.reduce((sum, p) => sum + p.weight * p.at, 0) / total;
  const meanLag = points.reduce((sum, p) => sum + p.weight * p.lag, 0) / total;
  const spread = points.reduce((sum, p) => sum + p.weight * (p.at - meanAt) ** 2, 0);
  const value = points.reduce((sum, p) => sum + p.weight * (p.at - meanAt) * (p.lag - meanLag), 0) / spread;
  const misfit = points.reduce(
    (sum, p) => sum + p.weight * (p.lag - meanLag - value * (p.at - meanAt)) ** 2,
    0,
  );
  const error = Math.sqrt(Math.max(misfit / (points.length - 2), 1) / spread);
  const half = studentQuantile(0.975, points.length - 2) * error;
  return { value: value * 1e6, low: (value - half) * 1e6, high: (value + half) * 1e6 };
}
