import type { Stretch } from '../../types.ts';

/**
 * How much more one trace varies from second to second than the other: the larger mean square of first
 * differences over the smaller, at least 1. A meter that averages n seconds is about n² lower.
 */
export function detailRatio(own: Float64Array, other: Float64Array, [from, to]: Stretch): number {
  let a = 0;
  let b = 0;
  for (let t = from + 1; t < to; t++) {
    const ownStep = own[t]! - own[t - 1]!;
    const otherStep = other[t]! - other[t - 1]!;
    if (Number.isNaN(ownStep + otherStep)) continue;
    a += ownStep ** 2;
    b += otherStep ** 2;
  }
  return a > 0 && b > 0 ? Math.max(a / b, b / a) : Number.POSITIVE_INFINITY;
}

/** What is faster than `seconds` in a trace: each second minus the centred mean around it; NaN at gaps. */
export function detailOf(column: Float64Array, seconds: number): Float64Array {
  const half = Math.floor(seconds / 2);
  const sums = new Float64Array(column.length + 1);
  for (let t = 0; t < column.length; t++)
    sums[t + 1] = sums[t]! + (Number.isNaN(column[t]!) ? 0 : column[t]!);
  const gaps = new Int32Array(column.length + 1);
  for (let t = 0; t < column.length; t++) gaps[t + 1] = gaps[t]! + (Number.isNaN(column[t]!) ? 1 : 0);
  return column.map((value, t) => {
    const from = t - half;
    const to = t + half + 1;
    if (from < 0 || to > column.length || gaps[to]! > gaps[from]!) return Number.NaN;
    return value - (sums[to]! - sums[from]!) / (to - from);
  });
}
