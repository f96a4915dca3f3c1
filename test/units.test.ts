import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toFigures } from '../src/units.ts';

describe('significant figures', () => {
  const figures = fc.integer({ min: 1, max: 12 });

  it('are those that the value is written with', () => {
    const ordinary = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    const any = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(fc.oneof(ordinary, any), figures, (value, most) => {
        expect(toFigures(value, most)).toBe(Number(value.toPrecision(most)));
      }),
      { numRuns: 2000 },
    );
  });

  it('round by the decimals of the value where a half is next', () => {
    const halves = fc.tuple(fc.integer({ min: 100_000, max: 999_999 }), fc.integer({ min: -3, max: 18 }));
    fc.assert(
      fc.property(halves, fc.constantFrom(-1e-16, 0, 1e-16), ([whole, power], apart) => {
        const value = ((whole + 0.5) / 10 ** power) * (1 + apart);
        expect(toFigures(value, 6)).toBe(Number(value.toPrecision(6)));
      }),
      { numRuns: 2000 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('leave %f as it is', (value) => {
    expect(toFigures(value, 6)).toBe(value);
  });

  it('of nothing are nothing, without a sign', () => {
    expect(toFigures(-0, 6)).toBe(0);
    expect(toFigures(0, 6)).toBe(0);
  });
});
