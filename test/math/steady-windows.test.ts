import fc from 'fast-check';
import { sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { inSteadyWindow } from '../../src/math/steady-windows.ts';

/** The definition, window by window. */
function plainly(values: readonly number[], window: number, most: number): number[] {
  const marked = values.map(() => 0);
  for (let from = 0; from + window <= values.length; from++) {
    const part = values.slice(from, from + window);
    if (part.some(Number.isNaN) || sampleStandardDeviation(part) > most + 1e-9) continue;
    marked.fill(1, from, from + window);
  }
  return marked;
}

test('marks what the definition marks, missing samples included', () => {
  const value = fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: 240, max: 246 }) },
    fc.constant(Number.NaN),
  );
  fc.assert(
    fc.property(
      fc.array(value, { maxLength: 80 }),
      fc.integer({ min: 2, max: 8 }),
      fc.constantFrom(0, 0.51, 1.03, 1.7),
      (values, window, most) => {
        expect([...inSteadyWindow(Float64Array.from(values), window, most)]).toEqual(
          plainly(values, window, most),
        );
      },
    ),
  );
});

test('constant stretches at any height are steady', () => {
  const values = Float64Array.from({ length: 40 }, (_, i) => (i < 20 ? 1999 : 3));
  expect(inSteadyWindow(values, 10, 0).every((mark) => mark === 1)).toBe(true);
});
