import { describe, expect, it } from 'vitest';
import { expectedDifference } from '../../../src/measure/pair/expected.ts';
import type { AlignedSecond, DeviceFacts, Place, Series, Subjects } from '../../../src/types.ts';
import { Random } from '../../make/index.ts';

/** Two declared meters, of which nothing but the declaration is known. */
function declared(own: Partial<DeviceFacts> | null, other: Partial<DeviceFacts> | null): Subjects {
  const device = (name: string, given: Partial<DeviceFacts> | null): DeviceFacts[] =>
    given === null ? [] : [{ name, place: 'crank' as Place, sides: 2, tolerancePercent: 0, ...given }];
  return {
    rider: { devices: [...device('primary', own), ...device('second', other)] },
    primary: { recording: { name: 'a.fit' } } as unknown as Series,
    seconds: [{ subject: 'pair:0', name: 'b.fit' } as unknown as AlignedSecond],
    sections: [],
    window: [0, 1],
    race: {},
    history: null,
  };
}

const spread = (a: number, b: number) =>
  expectedDifference(declared({ tolerancePercent: a }, { tolerancePercent: b }), 'pair:0', 200, 0).declared
    .spread;

describe('two claims together (JCGM 100:2008: a claim of ±a has the standard uncertainty a/√3)', () => {
  // Computed from the formula; "exact" is the half-width that holds 95 % of the sum of two rectangles.
  it.each([
    { a: 1, b: 1, combined: 0.8165, exact: 1.5528 },
    { a: 1, b: 1.5, combined: 1.0408, exact: 1.9523 },
    { a: 1, b: 2, combined: 1.291, exact: 2.3675 },
    { a: 1, b: 2.5, combined: 1.5546, exact: 2.7929 },
    { a: 1.5, b: 1.5, combined: 1.2247, exact: 2.3292 },
    { a: 2, b: 2, combined: 1.633, exact: 3.1056 },
  ])('±$a % and ±$b %', ({ a, b, combined, exact }) => {
    // What the zero offsets of the two add is the same for all of them.
    const claims = Math.sqrt(spread(a, b) ** 2 - spread(0, 0) ** 2);
    expect(claims).toBeCloseTo(combined, 4);
    // Two standard deviations never promise less than the exact width does.
    expect(2 * claims).toBeGreaterThan(exact);
    expect(2 * claims).toBeLessThan(a + b);
  });

  it('zero offsets are a larger share of low power (0.1 N·m each: 0.94 W at 90 rpm)', () => {
    const at = (watts: number) => expectedDifference(declared({}, {}), 'pair:0', watts, 0).declared.spread;
    expect(at(200)).toBeCloseTo((100 * Math.SQRT2 * 0.1 * (90 * 2 * Math.PI)) / 60 / 200, 2);
    expect(at(100)).toBeCloseTo(2 * at(200), 9);
  });

  it('a claim wider than meters scatter in the field (3.2 %, Maier et al. 2017) is no claim', () => {
    expect(spread(8, 8)).toBeCloseTo(spread(50, 50), 9);
    expect(spread(8, 8) ** 2 - spread(0, 0) ** 2).toBeCloseTo(2 * 3.2 ** 2, 6);
  });
});

describe('places', () => {
  const at = (own: Place, other: Place) =>
    expectedDifference(declared({ place: own }, { place: other }), 'pair:0', 200, 0).field;

  it('across the chain differ by its loss, 2.1 ± 1.5 % (Smit et al. 2023), the wheel below', () => {
    expect(at('trainer', 'pedal').centre).toBe(-2.1);
    expect(at('crank', 'hub').centre).toBe(2.1);
    expect(at('crank', 'pedal').centre).toBe(0);
    expect(at('trainer', 'pedal').spread ** 2 - at('trainer', 'hub').spread ** 2).toBeCloseTo(1.5 ** 2, 9);
  });

  it('lose as a gamma distribution of that mean and spread does: more than the mean far off, never less than nothing', () => {
    const random = new Random('losses');
    // Of shape 2, the sum of two exponentials; 1.96 would be exact.
    const loss = () => 1.05 * (random.exponential(1) + random.exponential(1));
    const above = Array.from({ length: 100_000 }, loss).filter((one) => one > 2.1);
    const more = Math.sqrt(above.reduce((sum, one) => sum + (one - 2.1) ** 2, 0) / above.length);
    expect(Math.sqrt(at('crank', 'hub').spread ** 2 - at('crank', 'crank').spread ** 2)).toBeCloseTo(more, 1);
  });

  it('that nobody declared may lie on either side, and widen', () => {
    const unknown = expectedDifference(declared(null, null), 'pair:0', 200, 0).field;
    expect(unknown.centre).toBe(0);
    expect(unknown.spread).toBeGreaterThan(at('trainer', 'pedal').spread);
  });

  it('widen for a meter of one leg, and by the error of the measurement itself', () => {
    const all = declared({ sides: 1 }, {});
    const oneLeg = expectedDifference(all, 'pair:0', 200, 0).field.spread;
    expect(oneLeg ** 2 - at('crank', 'crank').spread ** 2).toBeCloseTo(9, 9);
    expect(expectedDifference(all, 'pair:0', 200, 4).field.spread).toBeCloseTo(Math.hypot(oneLeg, 4), 9);
  });
});
