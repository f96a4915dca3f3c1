import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { around, including, settle, zoom } from '../../../src/report/client/view.ts';
import type { Stretch } from '../../../src/types.ts';

const length = fc.integer({ min: 10, max: 40_000 });
const place = fc.double({ min: -1e5, max: 1e5, noNaN: true });

function isWithin([from, to]: Stretch, most: number): void {
  expect(Number.isInteger(from) && Number.isInteger(to)).toBe(true);
  expect(from).toBeGreaterThanOrEqual(0);
  expect(to).toBeLessThanOrEqual(most);
  expect(to - from).toBeGreaterThanOrEqual(10);
}

describe('a view', () => {
  it('is always of whole seconds of the ride, at least ten', () => {
    fc.assert(
      fc.property(length, place, place, place, fc.boolean(), (most, a, b, at, inwards) => {
        const view = settle([Math.min(a, b), Math.max(a, b)], most);
        isWithin(view, most);
        isWithin(zoom(view, at, inwards, most), most);
        isWithin(around(view, most), most);
        isWithin(including(view, at, most), most);
      }),
    );
  });

  it('keeps what is under the cursor in its place', () => {
    expect(zoom([0, 1000], 250, true, 3600)).toEqual([125, 625]);
    expect(zoom([125, 625], 250, false, 3600)).toEqual([0, 1000]);
  });

  it('shows a sprint with the ride around it', () => {
    expect(around([100, 130], 3600)).toEqual([85, 145]);
    expect(around([2, 12], 3600)).toEqual([0, 40]);
  });

  it('follows the cursor', () => {
    expect(including([100, 200], 95, 3600)).toEqual([95, 195]);
    expect(including([100, 200], 200, 3600)).toEqual([101, 201]);
    expect(including([100, 200], 150, 3600)).toEqual([100, 200]);
  });
});
