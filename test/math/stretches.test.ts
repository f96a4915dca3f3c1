import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestLength, stretchesWhere, totalLength, touching } from '../../src/math/stretches.ts';

const where = (text: string, shortest?: number, bridge?: number) =>
  stretchesWhere(0, text.length, (i) => text[i] === 'x', shortest, bridge);

test('finds maximal stretches, half open, up to both ends', () => {
  expect(where('xx..x.xxx')).toEqual([
    [0, 2],
    [4, 5],
    [6, 9],
  ]);
});

test('leaves out short stretches and joins over small gaps', () => {
  expect(where('xx..x.xxx', 2)).toEqual([
    [0, 2],
    [6, 9],
  ]);
  expect(where('xx..x.xxx', 1, 1)).toEqual([
    [0, 2],
    [4, 9],
  ]);
  expect(where('.x.', 1, 5)).toEqual([[1, 2]]);
});

test('those that touch or overlap become one, in order of time', () => {
  expect(
    touching([
      [6, 9],
      [0, 3],
      [3, 5],
      [7, 8],
    ]),
  ).toEqual([
    [0, 5],
    [6, 9],
  ]);
  expect(touching([])).toEqual([]);
});

test('total and longest', () => {
  expect(totalLength(where('xx..x.xxx'))).toBe(6);
  expect(longestLength(where('xx..x.xxx'))).toBe(3);
  expect(longestLength([])).toBe(0);
});

test('without bridging, the stretches hold exactly the places where it is true', () => {
  fc.assert(
    fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (flags) => {
      const covered = flags.map(() => false);
      for (const [from, to] of stretchesWhere(0, flags.length, (i) => flags[i]!)) {
        for (let i = from; i < to; i++) covered[i] = true;
      }
      expect(covered).toEqual(flags);
    }),
  );
});
