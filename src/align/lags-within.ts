import { gainOf } from '../math/correlation-gain.ts';
import { crossProducts } from '../math/cross-products.ts';
import { ratio } from '../math/lagged.ts';
import type { Stretch } from '../types.ts';
import { gainWithin } from './lags.ts';

/**
 * The lags from `low` to `high` whose gain over a stretch of the primary is at least `least`, with it. All are
 * reckoned at once by transforms, in n log n, and only those that come so far by themselves.
 */
export function lagsWithin(
  primary: Float64Array,
  second: Float64Array,
  [from, to]: Stretch,
  [low, high]: readonly [number, number],
  least: number,
): { lag: number; gain: number }[] {
  const a = primary.subarray(from, to);
  const start = Math.max(0, from - high);
  const b = second.subarray(start, Math.max(start, to - low));
  // What lags of the whole are more than those of the parts.
  const more = from - start;
  const first = Math.max(low - more, 1 - b.length);
  const last = Math.min(high - more, a.length - 1);
  if (first > last) return [];
  const sums = (own: Float64Array, other: Float64Array) => crossProducts(own, other, first, last).forward;
  const [counts, otherCounts] = [a.map(isSome), b.map(isSome)];
  const products = sums(a, b);
  const squares = sums(a.map(square), otherCounts);
  const otherSquares = sums(counts, b.map(square));
  const count = sums(counts, otherCounts);
  const found: { lag: number; gain: number }[] = [];
  for (let i = 0; i < products.length; i++) {
    const correlation = ratio(products[i]!, squares[i]! * otherSquares[i]!);
    if (gainOf(correlation, count[i]!) < least - rounding) continue;
    const lag = i + first + more;
    const gain = gainWithin(primary, second, from, to, lag);
    if (gain >= least) found.push({ lag, gain });
  }
  return found;
}

const square = (residual: number) => residual ** 2;
/** 1 where a residual counts. */
const isSome = (residual: number) => (residual === 0 ? 0 : 1);

/** A gain by a transform differs by less from the one that is summed. */
const rounding = 1e-3;
