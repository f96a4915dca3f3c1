import { gainOf } from '../math/correlation-gain.ts';
import { crossProducts } from '../math/cross-products.ts';
import type { LaggedSums } from '../math/lagged.ts';
import type { Stretch } from '../types.ts';
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

/** Correlation from a sum of products and the product of both sums of squares. */
export function ratio(product: number, energies: number): number {
  return energies > 0 ? Math.max(-1, Math.min(1, product / Math.sqrt(energies))) : 0;
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
  const { products, squares, otherSquares, count } = residualSums(primary, second, from, to, lag);
  return squares > 0 && otherSquares > 0 ? gainOf(products / Math.sqrt(squares * otherSquares), count) : 0;
}

/** Correlation of the residuals over several stretches, each at its lag; 0 where either has none there. */
export function correlationAlong(
  primary: Float64Array,
  second: Float64Array,
  segments: readonly { readonly stretch: Stretch; readonly lag: number }[],
): number {
  const sums = segments.map(({ stretch: [from, to], lag }) => residualSums(primary, second, from, to, lag));
  const total = (of: 'products' | 'squares' | 'otherSquares') => sums.reduce((sum, one) => sum + one[of], 0);
  return ratio(total('products'), total('squares') * total('otherSquares'));
}

/** What residuals make together in a stretch at a lag; where either is 0 it says nothing. */
function residualSums(
  primary: Float64Array,
  second: Float64Array,
  from: number,
  to: number,
  lag: number,
): LaggedSums {
  let products = 0;
  let squares = 0;
  let otherSquares = 0;
  let count = 0;
  for (let t = Math.max(from, lag); t < Math.min(to, primary.length, second.length + lag); t++) {
    const a = primary[t]!;
    const b = second[t - lag]!;
    if (a === 0 || b === 0) continue;
    products += a * b;
    squares += a * a;
    otherSquares += b * b;
    count++;
  }
  return { products, squares, otherSquares, count };
}
