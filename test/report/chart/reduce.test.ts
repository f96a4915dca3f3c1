import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { difference, extent, smooth, tracePath } from '../../../src/report/chart/reduce.ts';
import type { Reading } from '../../../src/types.ts';

const readings = fc.array(fc.option(fc.integer({ min: 0, max: 1500 })), { minLength: 1, maxLength: 400 });

/** The points that a path runs through, and whether each begins a new line. */
function points(
  path: string,
): readonly { readonly x: number; readonly y: number; readonly begins: boolean }[] {
  let [x, y] = [0, 0];
  return [...path.matchAll(/([Mlhv])(-?[\d.]+)(?:\s*(-?[\d.]+))?/g)].map(([, kind, first, second]) => {
    const one = Number(first);
    const other = Number(second);
    if (kind === 'M') [x, y] = [one, other];
    if (kind === 'l') [x, y] = [x + one, y + other];
    if (kind === 'h') x += one;
    if (kind === 'v') y += one;
    return { x, y, begins: kind === 'M' };
  });
}

describe('tracePath', () => {
  it('loses no peak and no trough, however many seconds share a pixel', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 60 }), (values, pixels) => {
        const path = tracePath(
          values,
          (index) => (index * pixels) / values.length,
          (value) => value,
        );
        const reach = extent(values);
        const drawn = points(path).map(({ y }) => Math.round(y * 10) / 10);
        expect(reach).toEqual(drawn.length === 0 ? null : [Math.min(...drawn), Math.max(...drawn)]);
      }),
    );
  });

  it('draws at most two points a pixel, and every second where there is room', () => {
    const ride = Array.from({ length: 10_800 }, (_, at) => (at * 7919) % 997);
    expect(
      points(
        tracePath(
          ride,
          (index) => index / 15,
          (value) => value,
        ),
      ).length,
    ).toBeLessThanOrEqual(2 * 720);
    expect(
      points(
        tracePath(
          ride.slice(0, 50),
          (index) => index * 10,
          (value) => value,
        ),
      ).length,
    ).toBe(50);
  });

  it('breaks where nothing was recorded', () => {
    const path = tracePath(
      [1, 2, null, 3],
      (index) => index * 10,
      (value) => value,
    );
    expect(
      points(path)
        .filter(({ begins }) => begins)
        .map(({ y }) => y),
    ).toEqual([1, 3]);
  });

  it('gathers no error along the way', () => {
    const steps = Array.from({ length: 5000 }, (_, at) => at / 3);
    expect(
      points(
        tracePath(
          steps,
          (index) => index * 1.37,
          (value) => value,
        ),
      ).at(-1)!.y,
    ).toBeCloseTo(4999 / 3, 1);
  });
});

describe('difference and smooth', () => {
  it('a dropout of one meter leaves no spike: the difference is taken first', () => {
    const first: Reading[] = Array.from({ length: 200 }, (_, at) => 200 + at);
    const second = first.map((value, at) => (at > 90 && at < 103 ? null : value! - 5));
    for (const value of smooth(difference(first, second), 30))
      if (value !== null) expect(value).toBeCloseTo(5, 9);
  });

  it('says nothing where less than half was read', () => {
    const values = Array.from({ length: 100 }, (_, at) => (at < 40 || at > 80 ? 1 : null));
    const smoothed = smooth(values, 20);
    expect(smoothed[60]).toBeNull();
    expect(smoothed[20]).toBe(1);
  });

  it('keeps values within what was read', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 2, max: 40 }), (values, window) => {
        const inner = extent(smooth(values, window));
        const outer = extent(values);
        if (inner === null || outer === null) return;
        expect(inner[0]).toBeGreaterThanOrEqual(outer[0] - 1e-9);
        expect(inner[1]).toBeLessThanOrEqual(outer[1] + 1e-9);
      }),
    );
  });
});
