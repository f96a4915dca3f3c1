import { stretchesWhere } from './stretches.ts';

/**
 * Correlation of two columns around zero at every lag within ±`reach`: of own[t] with other[t - lag], at index
 * lag + reach, over the pairs of which neither is missing. NaN where either does not vary over them.
 */
export function laggedCorrelations(own: Float64Array, other: Float64Array, reach: number): Float64Array {
  const products = laggedProducts(own, other, reach);
  const squares = squaresWhereKnown(own, other);
  const otherSquares = squaresWhereKnown(other, own);
  return products.map((product, k) => {
    const lag = k - reach;
    const scale = Math.sqrt(squares(lag) * otherSquares(-lag));
    return scale > 0 ? Math.max(-1, Math.min(1, product / scale)) : Number.NaN;
  });
}

/** Lags that are taken in one pass, so that each value is read once for all of them. */
const together = 4;

/** Σ own[t]·other[t - lag] for the same lags, a missing value as 0. */
function laggedProducts(own: Float64Array, other: Float64Array, reach: number): Float64Array {
  const lags = 2 * reach + 1;
  const most = together * Math.ceil(lags / together);
  const products = new Float64Array(most);
  const a = padded(own, 0, own.length);
  // What belongs to own[t] at the k-th lag stands at t + most - 1 - k.
  const b = padded(other, most - 1 - reach, own.length + most);
  for (let k = 0; k < most; k += together) {
    const at = most - together - k;
    let third = b[at]!;
    let second = b[at + 1]!;
    let first = b[at + 2]!;
    let [sum0, sum1, sum2, sum3] = [0, 0, 0, 0];
    for (let t = 0; t < own.length; t++) {
      const value = a[t]!;
      const newest = b[at + 3 + t]!;
      sum0 += value * newest;
      sum1 += value * first;
      sum2 += value * second;
      sum3 += value * third;
      third = second;
      second = first;
      first = newest;
    }
    products.set([sum0, sum1, sum2, sum3], k);
  }
  return products.subarray(0, lags);
}

/** A column behind so many zeros, with zeros where a value is missing and to the end of this length at least. */
function padded(column: Float64Array, zeros: number, length: number): Float64Array {
  const out = new Float64Array(Math.max(length, zeros + column.length));
  for (let t = 0; t < column.length; t++) {
    const value = column[t]!;
    if (!Number.isNaN(value)) out[zeros + t] = value;
  }
  return out;
}

/** Σ column[t]² over the t at which other[t - lag] is known, by running sums over each stretch that is. */
function squaresWhereKnown(column: Float64Array, other: Float64Array): (lag: number) => number {
  const running = new Float64Array(column.length + 1);
  for (let t = 0; t < column.length; t++) {
    const value = column[t]!;
    running[t + 1] = running[t]! + (Number.isNaN(value) ? 0 : value * value);
  }
  const known = stretchesWhere(0, other.length, (t) => !Number.isNaN(other[t]!));
  const within = (t: number) => Math.max(0, Math.min(column.length, t));
  return (lag) =>
    known.reduce((sum, [from, to]) => sum + running[within(to + lag)]! - running[within(from + lag)]!, 0);
}
