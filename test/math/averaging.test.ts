import { expect, test } from 'vitest';
import { averagingFor, wanderRatio } from '../../src/math/averaging.ts';

test('without averaging, 1/f noise scatters alike at every span; averaging takes the short ones away', () => {
  for (const span of [4, 8, 16]) expect(wanderRatio(0.01, span, 'plain')).toBeCloseTo(1, 2);
  // Far below the averaging a trace is all but straight: differences grow in proportion to the span.
  expect(wanderRatio(1000, 2, 'plain')).toBeGreaterThan(0.5);
  expect(wanderRatio(1000, 2, 'plain')).toBeLessThan(0.56);
});

test('the inverse returns the seconds that it started from', () => {
  for (const averaging of ['plain', 'weighted'] as const) {
    for (const seconds of [1.5, 3, 5.5, 10, 22]) {
      for (const span of [2, 4]) {
        const back = averagingFor(wanderRatio(seconds, span, averaging), span, averaging);
        expect(Math.abs(Math.log(back / seconds))).toBeLessThan(0.03);
      }
    }
  }
  expect(averagingFor(0.99, 2, 'plain')).toBe(1);
  expect(averagingFor(0.1, 2, 'plain')).toBe(45);
});
