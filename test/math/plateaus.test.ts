import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plateaus } from '../../src/math/plateaus.ts';
import { nile } from './handbook.ts';

describe('plateaus', () => {
  // Flow of the Nile 1871 to 1970 (R, datasets::Nile): one break, after 1898; strucchange 1.5-3 gives the squares of
  // one break as 1597457 and prefers one to none and to two by BIC, whose price of a break is two logarithms.
  it('finds the one break in the flow of the Nile', () => {
    const noise = Math.sqrt(1_597_457 / 100);
    expect(plateaus(Float64Array.from(nile), { noise, price: 2, longest: 100 })).toEqual([28, 100]);
  });

  const values = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 9 });

  it('is the cheapest of all partitions', () => {
    fc.assert(
      fc.property(values, fc.double({ min: 0.1, max: 3, noNaN: true }), (list, price) => {
        const column = Float64Array.from(list);
        const cost = (ends: readonly number[]) =>
          ends.reduce((sum, end, k) => {
            const run = list.slice(k === 0 ? 0 : ends[k - 1], end);
            const mean = run.reduce((a, b) => a + b, 0) / run.length;
            return sum + price * Math.log(list.length) + run.reduce((all, v) => all + (v - mean) ** 2, 0);
          }, 0);
        const every = Array.from({ length: 2 ** (list.length - 1) }, (_, cuts) => [
          ...Array.from({ length: list.length - 1 }, (_, i) => i + 1).filter((i) => (cuts >> (i - 1)) & 1),
          list.length,
        ]);
        const found = cost(plateaus(column, { noise: 1, price, longest: list.length }));
        expect(found).toBeLessThanOrEqual(Math.min(...every.map(cost)) + 1e-9);
      }),
    );
  });

  it('holds no level longer than allowed', () => {
    const ends = plateaus(new Float64Array(100).fill(5), { noise: 1, price: 3, longest: 30 });
    ends.forEach((end, k) => {
      expect(end - (ends[k - 1] ?? 0)).toBeLessThanOrEqual(30);
    });
    expect(plateaus(new Float64Array(0), { noise: 1, price: 3, longest: 30 })).toEqual([]);
  });
});
