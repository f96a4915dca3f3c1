import { residualSums } from './residual-sums.ts';
import { settings } from './settings.ts';

/**
 * What two series of residuals make together at one lag, in each window of half a minute of the primary: sums over
 * the seconds in which both count. A residual of 0 counts for nothing.
 */
export interface WindowSums {
  readonly products: Float64Array;
  /** Σ of the primary's squares. */
  readonly own: Float64Array;
  /** Σ of the second's squares. */
  readonly other: Float64Array;
  readonly count: Int32Array;
}

export const windowsIn = (seconds: number) => Math.ceil(seconds / settings.segmentWindow);

/** @param lag grid index of the primary minus that of the second */
export function windowSums(primary: Float64Array, second: Float64Array, lag: number): WindowSums {
  const windows = windowsIn(primary.length);
  const sums = {
    products: new Float64Array(windows),
    own: new Float64Array(windows),
    other: new Float64Array(windows),
    count: new Int32Array(windows),
  };
  for (let w = 0; w < windows; w++) {
    const from = w * settings.segmentWindow;
    const one = residualSums(primary, second, from, from + settings.segmentWindow, lag);
    sums.products[w] = one.products;
    sums.own[w] = one.squares;
    sums.other[w] = one.otherSquares;
    sums.count[w] = one.count;
  }
  return sums;
}

/** Correlation over the windows from `from` to `to`. */
export function correlationWithin(
  { products, own, other, count }: WindowSums,
  from: number,
  to: number,
): number {
  let shared = 0;
  let squares = 0;
  let otherSquares = 0;
  let seconds = 0;
  for (let w = from; w < to; w++) {
    shared += products[w]!;
    squares += own[w]!;
    otherSquares += other[w]!;
    seconds += count[w]!;
  }
  // Of a few seconds at the end of an overlap a correlation says nothing.
  return seconds >= settings.segmentWindow ? shared / Math.sqrt(squares * otherSquares) : 0;
}

/** Log-likelihood of each window's residuals sharing a component that makes them correlate so, against none. */
export function likelihoods({ products, own, other, count }: WindowSums, correlation: number): Float64Array {
  return products.map((shared, w) => likelihood(shared, own[w]! + other[w]!, count[w]!, correlation));
}

/**
 * Log-likelihood of `count` pairs of standard normal values that correlate so, against none.
 *
 * @param products Σ of their products
 * @param squares Σ of the squares of both
 */
export function likelihood(products: number, squares: number, count: number, correlation: number): number {
  const left = 1 - correlation ** 2;
  return (correlation * products - (correlation ** 2 * squares) / 2) / left - (count * Math.log(left)) / 2;
}
