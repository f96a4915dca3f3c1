import fc from 'fast-check';
import { median } from 'simple-statistics';
import { expect, it } from 'vitest';
import { normalProbability } from '../../src/math/normal.ts';
import { medianDeviation, medianEfficiency, robustSpread } from '../../src/math/robust-spread.ts';
import { Random } from '../make/random.ts';

it('is the median size over that of a standard normal, whatever the order and whatever is missing', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.integer({ min: -2000, max: 2000 }), fc.constant(Number.NaN)), { minLength: 1 }),
      (values) => {
        const sizes = values.filter((value) => !Number.isNaN(value)).map(Math.abs);
        const spread = robustSpread(Float64Array.from(values));
        if (sizes.length === 0) expect(spread).toBeNaN();
        else expect(spread).toBeCloseTo(median(sizes) / 0.6745, 9);
      },
    ),
  );
});

it('moves little with a fifth of wild values', () => {
  const even = Array.from({ length: 1001 }, (_, i) => (i - 500) / 500);
  const wild = even.map((value, i) => (i % 5 === 0 ? 1e6 * value : value));
  expect(robustSpread(wild) / robustSpread(even)).toBeLessThan(1.3);
});

it('is the standard deviation of a normal sample, found from 37 % of it', () => {
  expect(normalProbability(medianDeviation)).toBeCloseTo(0.75, 4);
  const random = new Random('spread of normal samples');
  const found = Array.from({ length: 3000 }, () =>
    robustSpread(Float64Array.from({ length: 200 }, () => random.normal())),
  );
  const mean = found.reduce((a, b) => a + b, 0) / found.length;
  expect(Math.abs(mean - 1)).toBeLessThan(0.02);
  const error = Math.sqrt(found.reduce((sum, one) => sum + (one - mean) ** 2, 0) / found.length);
  expect(error * Math.sqrt(2 * medianEfficiency * 200)).toBeCloseTo(1, 1);
});
