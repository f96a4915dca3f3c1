import fc from 'fast-check';
import { median } from 'simple-statistics';
import { expect, it } from 'vitest';
import { robustSpread } from '../../src/math/robust-spread.ts';

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
