import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linear, logarithmic, roundedOut, ticks } from '../../../src/report/chart/scale.ts';

const domains = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-4, max: 1e6, noNaN: true }))
  .map(([low, size]) => [low, low + size] as const);

describe('scales', () => {
  it('take the ends of the domain to the ends of the range', () => {
    expect([0, 5, 10].map(linear([0, 10], [100, 0]))).toEqual([100, 50, 0]);
    const log = logarithmic([1, 3600], [0, 100]);
    expect(log(1)).toBe(0);
    expect(log(60)).toBeCloseTo(50, 9);
    expect(log(3600)).toBeCloseTo(100, 9);
  });
});

describe('ticks', () => {
  it('are round numbers', () => {
    expect(ticks([0, 10], 5)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(ticks([0.03, 0.31], 3)).toEqual([0.1, 0.2, 0.3]);
    expect(ticks([-250, 1210], 4)).toEqual([0, 500, 1000]);
    expect(roundedOut([97.2, 103.9], 5).ticks).toEqual([97, 98, 99, 100, 101, 102, 103, 104]);
  });

  it('lie inside the domain, evenly, about as many as asked for', () => {
    fc.assert(
      fc.property(domains, fc.integer({ min: 2, max: 12 }), (domain, count) => {
        const found = ticks(domain, count);
        expect(found.length).toBeLessThanOrEqual(2 * count + 1);
        expect(found.length).toBeGreaterThanOrEqual(Math.floor(count / 2) - 1);
        const dust = 1e-9 * Math.max(Math.abs(domain[0]), Math.abs(domain[1]));
        for (const tick of found) {
          expect(tick).toBeGreaterThanOrEqual(domain[0] - dust);
          expect(tick).toBeLessThanOrEqual(domain[1] + dust);
        }
      }),
    );
  });

  it('widen a domain and never cut it', () => {
    fc.assert(
      fc.property(domains, (domain) => {
        const rounded = roundedOut(domain, 4).domain;
        const dust = 1e-9 * Math.max(Math.abs(domain[0]), Math.abs(domain[1]));
        expect(rounded[0]).toBeLessThanOrEqual(domain[0] + dust);
        expect(rounded[1]).toBeGreaterThanOrEqual(domain[1] - dust);
      }),
    );
  });
});
