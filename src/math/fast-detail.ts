import { robustSpread } from './robust-spread.ts';

/** Detail beyond this many spreads (median absolute deviation) is cut. */
const most = 3;

/**
 * What is faster than `seconds` in a trace: each second minus the centred mean around it, NaN at gaps. What stands
 * out is cut: the few edges of a workout or an attack, which riders share, must not outweigh the many strokes, which
 * they do not.
 */
export function fastDetail(column: Float64Array, seconds: number): Float64Array {
  const detail = lessItsMean(column, Math.floor(seconds / 2));
  const edge = most * robustSpread(detail);
  for (let t = 0; t < detail.length; t++) detail[t] = Math.max(-edge, Math.min(edge, detail[t]!));
  return detail;
}

function lessItsMean(column: Float64Array, half: number): Float64Array {
  const sums = new Float64Array(column.length + 1);
  const gaps = new Int32Array(column.length + 1);
  for (let t = 0; t < column.length; t++) {
    const missing = Number.isNaN(column[t]!);
    sums[t + 1] = sums[t]! + (missing ? 0 : column[t]!);
    gaps[t + 1] = gaps[t]! + (missing ? 1 : 0);
  }
  const detail = new Float64Array(column.length).fill(Number.NaN);
  for (let t = half; t + half < column.length; t++) {
    const [from, to] = [t - half, t + half + 1];
    if (gaps[to] === gaps[from]) detail[t] = column[t]! - (sums[to]! - sums[from]!) / (to - from);
  }
  return detail;
}
