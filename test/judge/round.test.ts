import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundMeasurement } from '../../src/judge/round.ts';
import { measurement, outcome } from './make.ts';

describe('rounding a measurement', () => {
  it('rounds everything in the unit of the value, half away from zero', () => {
    const raw = measurement(
      outcome(2.25, {
        interval: [-0.05, 4.449],
        expected: { declared: { centre: 0.04, spread: 1.26 }, field: { centre: -1.96, spread: 4.521 } },
        chance: 0.012345,
      }),
    );
    expect(roundMeasurement(raw).outcome).toMatchObject({
      value: 2.3,
      interval: [-0.1, 4.4],
      expected: { declared: { centre: 0, spread: 1.3 }, field: { centre: -2, spread: 4.5 } },
      chance: 0.012,
    });
  });

  it('changes nothing the second time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 1 }),
        (value, x) => {
          const once = roundMeasurement(measurement(outcome(value, { details: { x }, chance: x })));
          expect(roundMeasurement(once)).toEqual(once);
        },
      ),
    );
  });

  it('leaves what was not measured alone', () => {
    const broken = measurement({ state: 'failed', message: 'x' });
    expect(roundMeasurement(broken)).toEqual(broken);
  });
});
