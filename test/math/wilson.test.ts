import { expect, it } from 'vitest';
import { wilson } from '../../src/math/wilson.ts';

// Newcombe 1998, Stat Med 17:857-872, table I, method 3.
it.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('gives the published interval of %i of %i', (hits, of, low, high) => {
  const [least, most] = wilson(hits, of);
  expect(least).toBeCloseTo(low, 4);
  expect(most).toBeCloseTo(high, 4);
});
it('turns round with hits and misses, and ends at 1', () => {
  const [low, high] = wilson(28, 29);
  const [least, most] = wilson(1, 29);
  expect([1 - high, 1 - low]).toEqual([expect.closeTo(least, 12), expect.closeTo(most, 12)]);
  expect(wilson(20, 20)[1]).toBe(1);
});
