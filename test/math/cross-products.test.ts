import fc from 'fast-check';
import { expect, it } from 'vitest';
import { autocovariance, autoregression } from '../../src/math/autoregression.ts';
import { crossProducts } from '../../src/math/cross-products.ts';
import { whiten } from '../../src/math/whiten.ts';
import { Random } from '../make/random.ts';

const column = fc.float64Array({ minLength: 1, maxLength: 40, min: -1000, max: 1000, noNaN: true });

it('gives the sums of products at every lag, for a second and for it reversed', () => {
  fc.assert(
    fc.property(column, column, (a, b) => {
      const { forward, reversed } = crossProducts(a, b);
      const mirrored = b.toReversed();
      for (let lag = -(b.length - 1); lag < a.length; lag++) {
        expect(forward[lag + b.length - 1]).toBeCloseTo(sumAt(a, b, lag), 4);
        expect(reversed[lag + b.length - 1]).toBeCloseTo(sumAt(a, mirrored, lag), 4);
      }
    }),
  );
});

it('gives the same of a part of the lags, in a shorter transform', () => {
  const values = fc.float64Array({ minLength: 20, maxLength: 40, min: -1000, max: 1000, noNaN: true });
  fc.assert(
    fc.property(values, values, fc.nat(18), fc.nat(18), (a, b, early, late) => {
      const [first, last] = [1 - b.length + early, a.length - 1 - late];
      const all = crossProducts(a, b);
      const part = crossProducts(a, b, first, last);
      expect(part.forward.length).toBe(last - first + 1);
      for (let i = 0; i < part.forward.length; i++) {
        expect(part.forward[i]).toBeCloseTo(all.forward[i + early]!, 4);
        expect(part.reversed[i]).toBeCloseTo(all.reversed[i + early]!, 4);
      }
    }),
  );
});

function sumAt(a: Float64Array, b: Float64Array, lag: number): number {
  let sum = 0;
  for (let t = 0; t < a.length; t++) sum += a[t]! * (b[t - lag] ?? 0);
  return sum;
}

it('recovers the weights of an autoregression and leaves white residuals', () => {
  const random = new Random('ar');
  const x = new Float64Array(20_000);
  for (let t = 2; t < x.length; t++) x[t] = 0.9 * x[t - 1]! - 0.3 * x[t - 2]! + random.normal(0, 1);
  const weights = autoregression([x], 2);
  expect(weights[0]).toBeCloseTo(0.9, 1);
  expect(weights[1]).toBeCloseTo(-0.3, 1);
  const covariance = autocovariance(whiten([x])[0]!, 3);
  for (const lag of [1, 2, 3]) expect(Math.abs(covariance[lag]! / covariance[0]!)).toBeLessThan(0.03);
});

it('passes over missing samples: they leave residuals of 0', () => {
  const x = Float64Array.from({ length: 300 }, (_, t) => (t === 150 ? Number.NaN : Math.sin(t * t)));
  const residual = whiten([x])[0]!;
  expect(Array.from(residual.subarray(150, 155))).toEqual([0, 0, 0, 0, 0]);
  expect(residual.some(Number.isNaN)).toBe(false);
});
