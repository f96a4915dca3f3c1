import { describe, expect, it } from 'vitest';
import { driftOf, lagOf } from '../../src/align/refine.ts';

const windows = (...lags: readonly number[]) => lags.map((lag, k) => ({ at: 300 + 600 * k, lag }));

describe('the lag of a stretch', () => {
  it('is the mean of its windows, with the interval of a mean', () => {
    // Standard deviation 1, √3 in the root, t with two degrees of freedom 4.302653 (tables).
    const { value, low, high } = lagOf(windows(9, 10, 11), 10);
    expect(value).toBeCloseTo(10, 12);
    expect(value - low).toBeCloseTo(4.302653 / Math.sqrt(3), 5);
    expect(high - value).toBeCloseTo(4.302653 / Math.sqrt(3), 5);
  });

  it('is never known to less than a tenth of a second', () => {
    expect(lagOf(windows(10.2, 10.2, 10.2), 10)).toEqual({
      value: expect.closeTo(10.2, 9),
      low: expect.closeTo(10.1, 9),
      high: expect.closeTo(10.3, 9),
    });
  });

  it('is the whole second, give or take one, of fewer than three windows within three seconds of it', () => {
    const unknown = { value: 10, low: 9, high: 11 };
    expect(lagOf(windows(10.4, 10.4), 10)).toEqual(unknown);
    expect(lagOf(windows(10.4, 10.4, 13.1), 10)).toEqual(unknown);
    expect(lagOf(windows(10.4, 10.4, 13), 10)).not.toEqual(unknown);
  });
});

describe('the drift of a clock', () => {
  it('is the slope of the lags over time, in parts per million', () => {
    const { value, low, high } = driftOf(windows(10, 10.06, 10.12, 10.18, 10.24), 10)!;
    expect(value).toBeCloseTo(100, 6);
    expect(high - low).toBeLessThan(1e-3);
  });

  it('is none of fewer than four windows, and passes over jumps', () => {
    expect(driftOf(windows(10, 10.1, 10.2), 10)).toBeNull();
    expect(driftOf(windows(10, 10.1, 10.2, 200), 10)).toBeNull();
    expect(driftOf(windows(10, 10.06, 10.12, 10.18, 200), 10)!.value).toBeCloseTo(100, 6);
  });
});
