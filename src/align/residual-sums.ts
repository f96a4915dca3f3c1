import type { LaggedSums } from '../math/lagged.ts';

/** What residuals make together in a stretch at a lag; where either is 0 it says nothing. */
export function residualSums(
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
