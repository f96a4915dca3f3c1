import { expect, test } from 'vitest';
import { laggedSums } from '../../src/math/lagged.ts';
import { laggedCorrelations } from '../../src/math/lagged-correlations.ts';

/** Around zero, with gaps, and the second like the first three later. */
const own = Float64Array.from({ length: 200 }, (_, t) =>
  t % 17 === 3 ? Number.NaN : Math.sin(t * t) + Math.cos(t / 7),
);
const other = Float64Array.from({ length: 190 }, (_, t) =>
  t > 80 && t < 95 ? Number.NaN : (own[t - 3] ?? 0) + 0.3 * Math.cos(3 * t),
);

test.each([0, 1, 5, 20])('within ±%i they are those of each lag by itself', (reach) => {
  const found = laggedCorrelations(own, other, reach);
  expect(found.length).toBe(2 * reach + 1);
  for (const [k, correlation] of found.entries()) {
    const { products, squares, otherSquares } = laggedSums(own, other, k - reach);
    expect(correlation).toBeCloseTo(products / Math.sqrt(squares * otherSquares), 12);
  }
});

test('the lag by which one is late has the highest', () => {
  const found = laggedCorrelations(own, other, 10);
  expect(found.indexOf(Math.max(...found)) - 10).toBe(-3);
});

test('there is none where one of them does not vary, or nothing meets', () => {
  expect([...laggedCorrelations(own, new Float64Array(200), 1)]).toEqual([
    Number.NaN,
    Number.NaN,
    Number.NaN,
  ]);
  expect([...laggedCorrelations(own, new Float64Array(200).fill(Number.NaN), 0)]).toEqual([Number.NaN]);
});
