import { expect, test } from 'vitest';
import { nthSmallest } from '../../src/math/nth-smallest.ts';

test('the value at a place is the one that sorting puts there, and no greater one is before it', () => {
  const values = Float64Array.from({ length: 1000 }, (_, i) => (i * 7919) % 613);
  const sorted = values.toSorted();
  for (const n of [0, 1, 333, 500, 998, 999]) {
    const ordered = values.slice();
    expect(nthSmallest(ordered, n)).toBe(sorted[n]);
    expect(Math.max(...ordered.subarray(0, n + 1))).toBe(sorted[n]);
    expect(ordered.toSorted()).toEqual(sorted);
  }
});

test('of nothing there is none', () => {
  expect(nthSmallest(new Float64Array(0), 0)).toBeNaN();
});
