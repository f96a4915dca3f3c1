import { expect, it } from 'vitest';
import { whiten } from '../../src/math/whiten.ts';
import { Random } from '../make/random.ts';

/** Noise on a level: what a steady ride with a rough meter looks like. */
function steady(seed: string): Float64Array {
  const random = new Random(seed);
  return Float64Array.from({ length: 3000 }, () => 250 + 20 * random.normal());
}

function correlation(a: Float64Array, b: Float64Array): number {
  let [products, squares, others] = [0, 0, 0];
  for (let t = 0; t < a.length; t++) {
    products += a[t]! * b[t]!;
    squares += a[t]! ** 2;
    others += b[t]! ** 2;
  }
  return products / Math.sqrt(squares * others);
}

it('leaves nothing of the level: two unrelated steady rides do not correlate', () => {
  const [one, other] = whiten([steady('one'), steady('other')]) as [Float64Array, Float64Array];
  // Three standard errors of a correlation of 3000 unrelated samples.
  expect(Math.abs(correlation(one, other))).toBeLessThan(3 / Math.sqrt(3000));
});

it('leaves nothing of a level that moves slowly', () => {
  const slow = (seed: string) => steady(seed).map((watts, t) => watts + 100 * Math.sin(t / 400));
  const [one, other] = whiten([slow('one'), slow('other')]) as [Float64Array, Float64Array];
  expect(Math.abs(correlation(one, other))).toBeLessThan(4 / Math.sqrt(3000));
});

it('keeps seconds that are missing at nothing', () => {
  const column = steady('gap').fill(Number.NaN, 1000, 1020);
  const [residual] = whiten([column]) as [Float64Array];
  expect(Array.from(residual.subarray(1000, 1024))).toEqual(new Array(24).fill(0));
});
