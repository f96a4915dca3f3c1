import { describe, expect, it } from 'vitest';
import { delays, driftOf, lagOf } from '../../src/align/refine.ts';
import { SecondState } from '../../src/types.ts';
import { Random } from '../make/random.ts';

const windows = (...lags: readonly number[]) => lags.map((lag, k) => ({ at: 300 + 600 * k, lag }));

describe('the lag of a window', () => {
  /** Two meters of one ride, the second some seconds late and reading a share of the first beside noise. */
  function pair(share: number, late: number) {
    const random = new Random('window');
    const ridden = Float64Array.from({ length: 700 }, () => 200 + 40 * random.normal());
    const trace = (power: Float64Array) => ({
      power,
      state: new Uint8Array(power.length).fill(SecondState.recorded),
    });
    const second = ridden.map((_, t) => share * (ridden[t - late] ?? 200) + 2 * random.normal());
    // The one that is fitted is the first: over a share of itself.
    return [trace(second), trace(ridden)] as const;
  }
  const whole = [{ stretch: [0, 700], lag: 0 }] as const;

  it('is where the power of the other lies in it', () => {
    const [own, other] = pair(1, 1);
    const [found] = delays(own, other, whole);
    expect(found!.lag).toBeCloseTo(1, 1);
    expect(found!.at).toBe(300);
  });

  it('is none where three tenths or less of that is found, or where it lies more than two seconds off', () => {
    expect(delays(...pair(0.32, 1), whole)).toHaveLength(1);
    expect(delays(...pair(0.28, 1), whole)).toEqual([]);
    expect(delays(...pair(1, 5), whole)).toEqual([]);
  });
});

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
  it('is the slope of the lags over time, in parts per million, and no surer than half a second of it', () => {
    // Five windows, the last 2,400 s after the first.
    const { value, low, high } = driftOf(windows(10, 10.06, 10.12, 10.18, 10.24), 10)!;
    expect(value).toBeCloseTo(100, 6);
    expect(value - low).toBeCloseTo(0.5e6 / 2400, 6);
    expect(high - value).toBeCloseTo(0.5e6 / 2400, 6);
  });

  it('is none of fewer than four windows, and passes over jumps', () => {
    expect(driftOf(windows(10, 10.1, 10.2), 10)).toBeNull();
    expect(driftOf(windows(10, 10.1, 10.2, 200), 10)).toBeNull();
    expect(driftOf(windows(10, 10.06, 10.12, 10.18, 200), 10)!.value).toBeCloseTo(100, 6);
  });
});
