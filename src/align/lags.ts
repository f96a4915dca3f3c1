import { gainOf } from '../math/correlation-gain.ts';
import { crossProducts } from '../math/cross-products.ts';
import { addedSums, correlationOf, ratio } from '../math/lagged.ts';
import type { Stretch } from '../types.ts';
import { residualSums } from './residual-sums.ts';
import { settings } from './settings.ts';

/** How well the two residual series agree at every lag, and what unrelated ones would reach. */
export interface Lags {
  /** Grid index of the primary minus that of the second, at position 0 of the arrays: the first that is considered. */
  readonly first: number;
  /** Log-likelihood that the lag explains, 0 where the overlap is too short. */
  readonly gain: Float64Array;
  /** Correlation over the overlap. */
  readonly correlation: Float64Array;
  /** The best that the time-reversed second reaches anywhere: gain and correlation. */
  readonly surrogate: { readonly gain: number; readonly correlation: number };
}

/**
 * Correlates residuals over every lag. The gain of a lag is -n/2·ln(1 - r²) for r > 0, the
 * log-likelihood of a shared component in n white samples.
 */
export function lags(primary: Float64Array, second: Float64Array): Lags | null {
  const own = energies(primary);
  const other = energies(second);
  const overlapAt = (lag: number): Overlap => {
    const from = Math.max(0, lag);
    const to = Math.min(primary.length, second.length + lag);
    const count = Math.min(own.count(from, to), other.count(from - lag, to - lag));
    return { from, to, count };
  };
  const least = Math.max(
    settings.leastOverlapSeconds,
    settings.leastOverlapShare * Math.min(own.active, other.active),
  );
  let first = 1 - second.length;
  let last = primary.length - 1;
  while (first <= last && overlapAt(first).count < least) first++;
  while (first <= last && overlapAt(last).count < least) last--;
  if (first > last) return null;

  const products = crossProducts(primary, second, first, last);
  const gain = new Float64Array(last - first + 1);
  const correlation = new Float64Array(gain.length);
  let surrogate = { gain: 0, correlation: 0 };
  for (let i = 0; i < gain.length; i++) {
    const lag = i + first;
    const { from, to, count } = overlapAt(lag);
    if (count < least) continue;
    const energy = own.sum(from, to);
    correlation[i] = ratio(products.forward[i]!, energy * other.sum(from - lag, to - lag));
    gain[i] = gainOf(correlation[i]!, count);
    const mirrored = other.sum(second.length + lag - to, second.length + lag - from);
    const chance = ratio(products.reversed[i]!, energy * mirrored);
    const chanceGain = gainOf(chance, count);
    if (chanceGain > surrogate.gain) surrogate = { gain: chanceGain, correlation: chance };
  }
  return { first, gain, correlation, surrogate };
}

/** The seconds of the primary that both recorded at a lag, and in how many of them the residuals of both count. */
interface Overlap {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** Running sums of squares and of how many residuals count, so that any overlap costs one subtraction. */
function energies(residual: Float64Array) {
  const squares = new Float64Array(residual.length + 1);
  const counts = new Int32Array(residual.length + 1);
  for (let t = 0; t < residual.length; t++) {
    squares[t + 1] = squares[t]! + residual[t]! ** 2;
    counts[t + 1] = counts[t]! + (residual[t] === 0 ? 0 : 1);
  }
  return {
    active: counts[residual.length]!,
    sum: (from: number, to: number) => squares[to]! - squares[from]!,
    count: (from: number, to: number) => counts[to]! - counts[from]!,
  };
}

/** Lags that are highest within `sameAnswerSeconds` either side, the best first, at most `most`. */
export function peaks({ first, gain }: Lags, most: number): { lag: number; gain: number }[] {
  const found: { lag: number; gain: number }[] = [];
  // What the last of the best has, once there are as many: of ten thousand lags few come so far.
  let least = 0;
  for (let i = 0; i < gain.length; i++) {
    const own = gain[i]!;
    if (own <= least || !isHighest(gain, i)) continue;
    const place = found.findIndex((other) => other.gain < own);
    found.splice(place < 0 ? found.length : place, 0, { lag: i + first, gain: own });
    found.length = Math.min(found.length, most);
    least = found[most - 1]?.gain ?? 0;
  }
  return found;
}

function isHighest(gain: Float64Array, i: number): boolean {
  const to = Math.min(gain.length - 1, i + settings.sameAnswerSeconds);
  for (let j = Math.max(0, i - settings.sameAnswerSeconds); j <= to; j++) {
    // Of equal neighbours the first stands for all.
    if (j < i ? gain[j]! >= gain[i]! : gain[j]! > gain[i]!) return false;
  }
  return true;
}

/** The gain of one lag over a stretch of the primary alone. */
export function gainWithin(
  primary: Float64Array,
  second: Float64Array,
  from: number,
  to: number,
  lag: number,
): number {
  const sums = residualSums(primary, second, from, to, lag);
  return gainOf(correlationOf(sums), sums.count);
}

/** Correlation of the residuals over several stretches, each at its lag; 0 where either has none there. */
export function correlationAlong(
  primary: Float64Array,
  second: Float64Array,
  segments: readonly { readonly stretch: Stretch; readonly lag: number }[],
): number {
  return correlationOf(
    addedSums(segments.map(({ stretch: [from, to], lag }) => residualSums(primary, second, from, to, lag))),
  );
}
