import { expect, test } from 'vitest';
import { chiSquaredTail } from '../../src/math/chi-squared.ts';
import { lastDigits } from '../../src/math/last-digits.ts';

// Critical values of chi-squared (any table, e.g. NIST/SEMATECH e-Handbook 1.3.6.7.4).
test.each([
  [16.919, 9, 0.05],
  [21.666, 9, 0.01],
  [27.877, 9, 0.001],
  [3.841, 1, 0.05],
  [18.307, 10, 0.05],
  [23.209, 10, 0.01],
])('chi-squared of at least %f with %i degrees of freedom has probability %f', (x, freedom, p) => {
  expect(chiSquaredTail(x, freedom) / p).toBeCloseTo(1, 2);
});

test('with two degrees of freedom it is exp(-x/2); nothing is below 0', () => {
  expect(chiSquaredTail(5, 2)).toBeCloseTo(Math.exp(-2.5), 12);
  expect(chiSquaredTail(0, 9)).toBe(1);
});

test('even digits are even, steps of two and of five are not', () => {
  const all = Array.from({ length: 1000 }, (_, i) => i);
  expect(lastDigits(all)).toMatchObject({ chiSquared: 0, tail: 1, count: 1000 });
  const twos = lastDigits(all.map((n) => 2 * n));
  expect(twos.uneven).toBeCloseTo(0.5, 12);
  expect(twos.chiSquared).toBeCloseTo(1000, 9);
  expect(lastDigits(all.map((n) => 5 * n)).uneven).toBeCloseTo(0.8, 12);
  expect(lastDigits([]).tail).toBe(1);
});
