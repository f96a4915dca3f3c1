import { expect, test } from 'vitest';
import { jackknifeReach } from '../../src/math/jackknife.ts';

test('is t·s/√n for a mean: Bland and Altman 1986, differences of peak flow', () => {
  // Lancet 1986;1:307–310: bias -2.1176, 95 % -22.048838 to 17.813544 (computed from the published data).
  const d = [-18, -35, -4, 6, -24, -43, 49, 62, -8, -12, -15, 30, 7, 1, -81, 73, -24];
  const sum = d.reduce((a, b) => a + b, 0);
  const without = d.map((one) => (sum - one) / (d.length - 1));
  expect(sum / d.length + jackknifeReach(without)).toBeCloseTo(17.813544, 5);
  expect(sum / d.length - jackknifeReach(without)).toBeCloseTo(-22.048838, 5);
});

test('is 0 where nothing depends on any block', () => {
  expect(jackknifeReach([3, 3, 3, 3])).toBe(0);
});
