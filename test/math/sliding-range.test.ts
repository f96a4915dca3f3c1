import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inNarrowWindow } from '../../src/math/sliding-range.ts';

/** The definition, window by window. */
function plainly(values: readonly number[], window: number, allowed: number): number[] {
  const marked = values.map(() => 0);
  for (let from = 0; from + window <= values.length; from++) {
    const part = values.slice(from, from + window);
    if (part.some(Number.isNaN) || Math.max(...part) - Math.min(...part) > allowed) continue;
    marked.fill(1, from, from + window);
  }
  return marked;
}

test('marks what the definition marks, missing samples included', () => {
  const value = fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 0, max: 6 }) }, fc.constant(Number.NaN));
  fc.assert(
    fc.property(
      fc.array(value, { maxLength: 80 }),
      fc.integer({ min: 1, max: 8 }),
      fc.integer({ min: 0, max: 4 }),
      (values, window, allowed) => {
        const marked = inNarrowWindow(Float64Array.from(values), window, () => allowed);
        expect([...marked]).toEqual(plainly(values, window, allowed));
      },
    ),
  );
});

test('the allowed spread may grow with the level', () => {
  const values = Float64Array.of(100, 102, 100, 300, 302, 300);
  expect([...inNarrowWindow(values, 3, (lowest) => 0.01 * lowest)]).toEqual([0, 0, 0, 1, 1, 1]);
});
