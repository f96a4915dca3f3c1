import { mean } from '../math/mean.ts';
import { shortFilter } from '../math/short-filter.ts';
import { studentReach } from '../math/student.ts';
import { type Estimate, SecondState } from '../types.ts';
import type { Segment } from './segments.ts';
import { settings } from './settings.ts';

/** Where a stretch of the second lies on the primary's grid, to a fraction of a second. */
export interface Delay {
  /** Middle of the window, s on the primary's series. */
  readonly at: number;
  /** Grid index of the primary minus that of the second. */
  readonly lag: number;
}

/** One meter's power on its own grid, W, and which of its seconds a recorder only carried on from the last. */
export interface Trace {
  readonly power: Float64Array;
  readonly state: Uint8Array;
}

/**
 * Lags to a fraction of a second in windows of ten minutes: one meter is fitted as a short filter over the
 * other (five seconds around the whole-second lag), and the filter's centre of mass is its delay. Unlike the
 * top of a correlation it does not favour whole seconds. The one whose recorder leaves out more seconds is the
 * one that is fitted, at those that it wrote: values carried on would make it late.
 */
export function delays(own: Trace, other: Trace, segments: readonly Segment[]): Delay[] {
  const width = settings.delayWindow;
  const turned = carriedOn(other) > carriedOn(own);
  const [fitted, over] = turned ? [other, own] : [own, other];
  const y = written(fitted);
  return segments.flatMap(({ stretch, lag }) => {
    const found: Delay[] = [];
    for (let from = stretch[0]; from + settings.leastDelayWindow <= stretch[1]; from += width) {
      const to = Math.min(from + width, stretch[1]);
      const shift = turned
        ? delayWithin(y, over.power, from - lag, to - lag, -lag)
        : delayWithin(y, over.power, from, to, lag);
      if (shift !== null) found.push({ at: (from + to) / 2, lag: turned ? lag - shift : lag + shift });
    }
    return found;
  });
}

function carriedOn({ state }: Trace): number {
  let seconds = 0;
  for (const one of state) if (one === SecondState.bridged) seconds++;
  return seconds;
}

function written({ power, state }: Trace): Float64Array {
  const own = power.slice();
  for (let t = 0; t < own.length; t++) if (state[t] === SecondState.bridged) own[t] = Number.NaN;
  return own;
}

/**
 * Each segment with the lag that its windows agree on, to a fraction of a second: the whole second with the
 * highest correlation favours the crisper edge of an average, its centre of mass is where power belongs. A lag
 * between two seconds goes now with the one, now with the other: neighbours that meet, and whose lags come out
 * within half a second, are one segment with one lag.
 */
export function settle(segments: readonly Segment[], found: readonly Delay[]): Segment[] {
  const out: { stretch: [number, number]; lags: number[]; lag: number }[] = [];
  for (const { stretch, lag: whole } of segments) {
    const [from, to] = stretch;
    const lags = found.filter(({ at }) => at >= from && at < to).map(({ lag }) => lag);
    const lag = lags.length === 0 ? whole : mean(lags);
    const last = out.at(-1);
    const met = last !== undefined && Math.abs(from - last.stretch[1]) <= Math.abs(whole - last.lag) + 1;
    if (met && lags.length > 0 && last.lags.length > 0 && Math.abs(lag - last.lag) < sameLag) {
      last.stretch[1] = to;
      last.lags.push(...lags);
      last.lag = mean(last.lags);
    } else out.push({ stretch: [from, to], lags, lag });
  }
  return out.map((segment): Segment => ({ stretch: segment.stretch, lag: segment.lag }));
}

/** Lags (s) of neighbouring segments that are one: found to a fraction of a second, they differ by less. */
const sameLag = 0.5;

/** Seconds of the filter to either side of the whole-second lag. */
const reach = 2;

function delayWithin(y: Float64Array, x: Float64Array, from: number, to: number, lag: number): number | null {
  const fit = shortFilter(y, x, lag, reach, from, to);
  if (fit === null || fit.count < settings.leastDelayCount) return null;
  if (fit.count * 2 < knownWithin(y, from, to)) return null;
  const { weights } = fit;
  const gain = weights.reduce((a, b) => a + b, 0);
  const centre = weights.reduce((sum, weight, k) => sum + weight * (k - reach), 0) / gain;
  return gain > 0.3 && Math.abs(centre) <= reach ? centre : null;
}

function knownWithin(column: Float64Array, from: number, to: number): number {
  let known = 0;
  for (let t = Math.max(0, from); t < Math.min(to, column.length); t++)
    if (!Number.isNaN(column[t]!)) known++;
  return known;
}

/**
 * The lag of the stretch that the whole-second lag was chosen for, with a 95 % interval from its windows.
 * Never narrower than ±0.1 s: a link's latency of that size cannot be told from a clock. With fewer than
 * three windows it is the whole second, ±1 s.
 */
export function lagOf(found: readonly Delay[], chosen: number): Estimate {
  const lags = found
    .map(({ lag }) => lag)
    .filter((lag) => Math.abs(lag - chosen) <= settings.sameAnswerSeconds);
  if (lags.length < 3) return { value: chosen, low: chosen - 1, high: chosen + 1 };
  const value = mean(lags);
  const spread = Math.sqrt(lags.reduce((sum, lag) => sum + (lag - value) ** 2, 0) / (lags.length - 1));
  const half = Math.max(0.1, (studentReach(lags.length - 1) * spread) / Math.sqrt(lags.length));
  return { value, low: value - half, high: value + half };
}

/**
 * How the two clocks run apart, in parts per million of the primary's time; positive when the second's
 * clock runs slow, with a 95 % interval from its windows and by how much a link may have slid meanwhile. Null when
 * there are too few windows.
 */
export function driftOf(found: readonly Delay[], chosen: number): Estimate | null {
  // Jumps of a clock that skips pauses are not drift.
  const points = found.filter(({ lag }) => Math.abs(lag - chosen) <= settings.sameAnswerSeconds);
  if (points.length < settings.driftWindows) return null;
  const meanAt = mean(points.map(({ at }) => at));
  const meanLag = mean(points.map(({ lag }) => lag));
  const spread = points.reduce((sum, { at }) => sum + (at - meanAt) ** 2, 0);
  const slope = points.reduce((sum, { at, lag }) => sum + (at - meanAt) * (lag - meanLag), 0) / spread;
  const misfit = points.reduce((sum, { at, lag }) => sum + (lag - meanLag - slope * (at - meanAt)) ** 2, 0);
  const freedom = points.length - 2;
  const span = points.at(-1)!.at - points[0]!.at;
  const half = studentReach(freedom) * Math.sqrt(misfit / freedom / spread) + settings.linkSlide / span;
  return { value: slope * 1e6, low: (slope - half) * 1e6, high: (slope + half) * 1e6 };
}
