import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactRepeats, type Repeat } from '../../src/math/repeats.ts';
import { timesAsLong } from '../cost.ts';

const search = (values: readonly number[], window: number, split = 0) =>
  exactRepeats(Float64Array.from(values), { window, split, telling: () => true });
const longest = (repeats: readonly Repeat[]) => Math.max(0, ...repeats.map((repeat) => repeat.length));

/** The definition, over all pairs of places. */
function longestPlainly(values: readonly number[], window: number, split: number): number {
  let most = 0;
  for (let first = 0; first < values.length; first++)
    for (let second = first + 1; second < values.length; second++) {
      if (split > 0 && !(first < split && second >= split)) continue;
      const limit = split > 0 ? split - first : second - first;
      let length = 0;
      while (
        length < limit &&
        second + length < values.length &&
        values[first + length] === values[second + length]
      )
        length++;
      most = Math.max(most, length);
    }
  return most >= window ? most : 0;
}

test('finds the longest repeat that the definition finds, NaN equal to nothing', () => {
  const value = fc.oneof({ weight: 30, arbitrary: fc.integer({ min: 0, max: 9 }) }, fc.constant(Number.NaN));
  fc.assert(
    fc.property(
      fc.array(value, { maxLength: 60 }),
      fc.array(value, { maxLength: 12 }),
      fc.integer({ min: 2, max: 5 }),
      fc.boolean(),
      (rest, block, window, divided) => {
        const values = [...block, ...rest, ...block, ...rest.slice(0, 7)];
        const split = divided ? block.length : 0;
        expect(longest(search(values, window, split))).toBe(longestPlainly(values, window, split));
      },
    ),
  );
});

test('every repeat found is one, and its copies do not overlap', () => {
  const values = Array.from({ length: 300 }, (_, i) => (i * i) % 7);
  for (const { first, second, length } of search(values, 4)) {
    expect(values.slice(first, first + length)).toEqual(values.slice(second, second + length));
    expect(first + length).toBeLessThanOrEqual(second);
  }
});

test('hostile input takes no more than some times as long as any other: constant and periodic series of a day', () => {
  const usual = Array.from({ length: 86_400 }, (_, i) => (i * i) % 86_399);
  for (const hostile of [usual.map(() => 200), usual.map((_, i) => i % 3)]) {
    const longer = timesAsLong(
      () => search(hostile, 30),
      () => search(usual, 30),
      100,
    );
    expect(longer).toBeLessThan(100);
  }
});
