import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combOf } from '../../src/math/lattice.ts';

/** The definition: how many whole numbers land on each. */
function landings(factor: number, most: number, round: (x: number) => number): number[] {
  const counts = new Array<number>(most + 1).fill(0);
  for (let n = 0; n * factor <= most + 1; n++) {
    const bin = round(n * factor);
    if (bin <= most) counts[bin]!++;
  }
  return counts;
}

// Arithmetic of whole numbers scaled and rounded half up, source 0…400: computed values, with the theory
// 1 - 1/s for empty and 1/s - 1 for doubled ones (Stamm and Liu 2008 on what mappings leave in a histogram).
describe('comb of a factor', () => {
  test.each([
    [1.02, 8, 0.019608, [25, 76, 127, 178, 229, 280]],
    [1.03, 12, 0.029126, [17, 51, 86, 120, 154, 189]],
    [1.05, 20, 0.047619, [10, 31, 52, 73, 94, 115]],
    [1.08, 32, 0.074074, [7, 20, 34, 47, 61, 74]],
    [1.1, 40, 0.090909, [5, 16, 27, 38, 49, 60]],
    [1.2, 80, 0.166667, [3, 9, 15, 21, 27, 33]],
  ])('factor %f leaves %i empty', (factor, count, share, first) => {
    const most = Math.floor(400 * factor);
    const bins = combOf(factor, most);
    expect(bins).toHaveLength(count);
    expect(bins.slice(0, 6)).toEqual(first);
    expect(bins.length / (most + 1)).toBeCloseTo(share, 3);
  });

  test.each([
    [0.95, 20, [10, 29, 48, 67, 86, 105]],
    [0.9, 40, [5, 14, 23, 32, 41, 50]],
  ])('factor %f doubles %i', (factor, count, first) => {
    const bins = combOf(factor, Math.floor(400 * factor));
    expect(bins).toHaveLength(count);
    expect(bins.slice(0, 6)).toEqual(first);
  });
});

// Factors at which no product of a number up to 500 is a half: there the rounding rule does not matter.
const factor = fc.integer({ min: 3, max: 240 }).map((k) => k / 1000 + 0.000_137);

test('both are what the definition says, rounded to nearest or down', () => {
  fc.assert(
    fc.property(factor, fc.constantFrom('nearest', 'down'), (excess, rounding) => {
      const round = rounding === 'nearest' ? Math.round : Math.floor;
      const up = landings(1 + excess, 500, round);
      expect(combOf(1 + excess, 500, rounding)).toEqual(up.flatMap((n, k) => (n === 0 ? [k] : [])));
      const down = landings(1 - excess, 480, round);
      expect(combOf(1 - excess, 480, rounding)).toEqual(down.flatMap((n, k) => (n === 2 ? [k] : [])));
    }),
  );
});
