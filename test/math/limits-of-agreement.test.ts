import { expect, it } from 'vitest';
import { limitError, limitsOfAgreement } from '../../src/math/limits-of-agreement.ts';
import { studentQuantile } from '../../src/math/student.ts';
import { peakFlow } from './handbook.ts';
import { norris } from './nist.ts';

// Data: Bland & Altman 1986, Lancet 1:307-310. The paper prints -2.1, and -79.7 to 75.5 from a standard
// deviation rounded to 38.8 times 2; full digits computed from its data.
it('agrees with the peak flow example of Bland & Altman 1986', () => {
  const differences = peakFlow.wright1.map((wright, i) => wright - peakFlow.mini1[i]!);
  const { mean, spread, low, high, error } = limitsOfAgreement(differences);
  expect(mean).toBeCloseTo(-2.1176470588, 9);
  expect(spread).toBeCloseTo(38.7651298736, 9);
  expect(low).toBeCloseTo(-78.097302, 6);
  expect(high).toBeCloseTo(73.862007, 6);
  expect(Math.round(10 * mean) / 10 - 2 * 38.8).toBeCloseTo(-79.7, 6);
  expect(Math.round(10 * mean) / 10 + 2 * 38.8).toBeCloseTo(75.5, 6);
  // Form of 1999: intervals of the limits.
  expect(error).toBeCloseTo(16.395108, 6);
  const half = studentQuantile(0.975, 16) * error;
  expect(low - half).toBeCloseTo(-112.853378, 3);
  expect(high + half).toBeCloseTo(108.618084, 3);
});

it('knows a limit to 1.71 standard deviations over √n, as Bland & Altman 1999 say', () => {
  expect(limitError(10_000) * 100).toBeCloseTo(1.71, 2);
  // Of a quarter of the sample, what the standard deviation adds is twice as much.
  expect(limitError(10_000, 0.25) ** 2 - 1e-4).toBeCloseTo(4 * (limitError(10_000) ** 2 - 1e-4), 12);
});

it('takes the two instruments of Norris (NIST StRD) for a pair: computed from its data', () => {
  const { mean, spread, low, high } = limitsOfAgreement(norris.y.map((y, i) => y - norris.x[i]!));
  expect(mean).toBeCloseTo(0.625, 9);
  expect(spread).toBeCloseTo(1.141521541, 8);
  expect(low).toBeCloseTo(-1.612382, 5);
  expect(high).toBeCloseTo(2.862382, 5);
});
