import { expect, it } from 'vitest';
import { limitError, limitsOfAgreement } from '../../src/math/limits-of-agreement.ts';
import { studentQuantile } from '../../src/math/student.ts';
import { Random } from '../make/random.ts';
import { peakFlow } from './handbook.ts';
import { norris } from './nist.ts';

// Data: Bland & Altman 1986, Lancet 1:307-310. The paper prints -2.1, and -79.7 to 75.5 from a standard
// deviation rounded to 38.8 times 2; full digits computed from its data.
it('agrees with the peak flow example of Bland & Altman 1986', () => {
  const differences = peakFlow.wright1.map((wright, i) => wright - peakFlow.mini1[i]!);
  const { mean, spread, low, high } = limitsOfAgreement(differences);
  const error = spread * limitError(differences.length);
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

// The paper's own, simpler form, √(3s²/n), with what it rounds on the way: -114.3 to -45.1 l/min.
it('comes near the interval that Bland & Altman 1986 print for the lower limit', () => {
  const differences = peakFlow.wright1.map((wright, i) => wright - peakFlow.mini1[i]!);
  const { spread } = limitsOfAgreement(differences);
  const t = Math.round(100 * studentQuantile(0.975, 16)) / 100;
  const half = (t * Math.round(10 * spread * Math.sqrt(3 / 17))) / 10;
  expect(-79.7 - half).toBeCloseTo(-114.3, 1);
  expect(-79.7 + half).toBeCloseTo(-45.1, 1);
  expect(studentQuantile(0.975, 16) * spread * limitError(17)).toBeCloseTo(half, 0);
});

// Bland & Altman 1999, systolic pressure of 85 patients by observer and machine: mean -16.29, standard deviation 19.61,
// limits -54.7 to 22.1 (these from memory); intervals computed from the formula.
it('gives the intervals of the example of Bland & Altman 1999', () => {
  const half = studentQuantile(0.975, 84) * 19.61 * limitError(85);
  expect(-16.29 - 1.96 * 19.61 - half).toBeCloseTo(-61.98, 2);
  expect(-16.29 - 1.96 * 19.61 + half).toBeCloseTo(-47.47, 2);
});

it('knows mean and limits as well as they say, of independent differences, and less where neighbours resemble', () => {
  const random = new Random('neighbours');
  const halves = (keeps: number) => {
    const sum = { mean: 0, low: 0, high: 0 };
    for (let d = 0; d < 300; d++) {
      let value = random.normal(0, 1);
      const differences = Array.from({ length: 100 }, () => {
        value = keeps * value + Math.sqrt(1 - keeps ** 2) * random.normal(0, 1);
        return value;
      });
      const { half } = limitsOfAgreement(differences);
      for (const name of ['mean', 'low', 'high'] as const) sum[name] += half[name] ** 2 / 300;
    }
    return sum;
  };
  const t = studentQuantile(0.975, 6);
  const independent = halves(0);
  expect(Math.sqrt(independent.mean) / (t / Math.sqrt(100))).toBeCloseTo(1, 1);
  expect(Math.sqrt(independent.low) / (t * limitError(100))).toBeCloseTo(1, 1);
  expect(Math.sqrt(independent.high) / (t * limitError(100))).toBeCloseTo(1, 1);
  expect(halves(0.7).mean).toBeGreaterThan(3 * independent.mean);
});

it('has no width where all differences are the same', () => {
  const { low, high, half } = limitsOfAgreement(Array(20).fill(2));
  expect([low, high, half.mean, half.low, half.high]).toEqual([2, 2, 0, 0, 0]);
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
