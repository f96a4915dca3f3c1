import { describe, expect, it } from 'vitest';
import {
  circumstancesOf,
  cleanHeartRate,
  heartRateFaults,
  secondsWithin,
} from '../../../src/measure/rider/heart-rate.ts';
import { SecondState } from '../../../src/types.ts';
import { ruleOf } from '../measure-of.ts';
import { seriesOf } from '../series.ts';
import { heartRide } from './heart.ts';

const shipped = ruleOf('heart-rate-unresponsive').options as never;
const own = heartRide('strap', { driftPerHour: 6 });
const cadence = own.cadence.map(Math.round);

/** The faults of the ride once something has been written over its heart rate. */
function faultsOf(write: (heartRate: Float64Array) => void, turns = cadence) {
  const heartRate = own.heartRate.slice();
  write(heartRate);
  const series = seriesOf({ ...own, heartRate, cadence: turns });
  return { series, faults: heartRateFaults(series, shipped) };
}

describe('heartRateFaults', () => {
  it('finds nothing in a heart', () => {
    const { faults } = faultsOf(() => {});
    expect(faults).toEqual({ missing: [], stuck: [], cadence: [], leapt: [] });
  });

  it('tells a strap that drops out from one that hangs, counts the cadence or leaps', () => {
    const { series, faults } = faultsOf((heartRate) => {
      heartRate.fill(Number.NaN, 200, 500);
      heartRate.fill(150, 1000, 1300);
      heartRate.set(cadence.subarray(1800, 2200), 1800);
      for (let i = 2800; i < 3100; i++) heartRate[i] = Math.round(heartRate[i]! * 0.4);
    });
    expect(faults.missing).toEqual([[200, 500]]);
    expect(faults.stuck).toEqual([[1000, 1300]]);
    expect(faults.cadence).toEqual([[1800, 2200]]);
    expect(faults.leapt).toEqual([[2800, 3100]]);
    const clean = cleanHeartRate(series, faults);
    expect(clean.filter(Number.isNaN)).toHaveLength(300 + 300 + 400 + 300);
  });

  it('reads the cadence on over cranks that stand still, and is not misled by a sensor one beat off', () => {
    const turns = cadence.map((rpm, i) => (i % 100 < 12 ? 0 : rpm));
    const { faults } = faultsOf((heartRate) => {
      for (let i = 600; i < 1200; i++) heartRate[i] = turns[i]! > 0 ? turns[i]! + 1 + (i % 2) : 82;
    }, turns);
    expect(faults.cadence).toHaveLength(1);
    expect(secondsWithin(faults.cadence, [600, 1200])).toBeGreaterThan(570);
  });

  it('leaves a change of level alone that comes slowly, or that lasts: nobody can say which is the heart', () => {
    const slow = faultsOf((heartRate) => {
      for (let i = 1000; i < 1300; i++) heartRate[i]! -= Math.min(50, i - 1000, 1300 - i);
    });
    expect(slow.faults.leapt).toEqual([]);
    const lasting = faultsOf((heartRate) => {
      for (let i = 1000; i < 1700; i++) heartRate[i]! -= 50;
    });
    expect(lasting.faults.leapt).toEqual([]);
  });
});

describe('circumstancesOf', () => {
  it('says what takes enough of the race, and of the race alone', () => {
    const { faults } = faultsOf((heartRate) => heartRate.fill(Number.NaN, 0, 300));
    expect(circumstancesOf(faults, [0, 3600], shipped)).toEqual(['strap dropped out']);
    expect(circumstancesOf(faults, [250, 3600], shipped)).toEqual([]);
  });
});

const limits = {
  stuckSeconds: 5,
  cadenceBeats: 1,
  multipleBeats: 1,
  cadenceSeconds: 6,
  leapBeats: 100,
  failingSeconds: 30,
  faultShare: 0.05,
};
/** A heart that never holds a value, 140 to 159 bpm. */
const beats = Array.from({ length: 60 }, (_, t) => 140 + ((7 * t) % 20));
const withAt = (at: number, ...values: readonly number[]) => beats.map((value, t) => values[t - at] ?? value);

it('takes 30 to 230 bpm for a heart, and nothing else', () => {
  const { missing } = heartRateFaults(
    seriesOf({ heartRate: withAt(10, 30, 29, 230, 231, Number.NaN) }),
    limits,
  );
  expect(missing).toEqual([
    [11, 12],
    [13, 15],
  ]);
});

it('misses nothing in a pause', () => {
  const series = seriesOf({ heartRate: withAt(10, Number.NaN, Number.NaN) });
  series.state.fill(SecondState.paused, 10, 12);
  expect(heartRateFaults(series, limits).missing).toEqual([]);
});

it('calls one value stuck from the first second that shows it, once held for long enough', () => {
  const held = (seconds: number) =>
    heartRateFaults(seriesOf({ heartRate: withAt(10, ...new Array(seconds).fill(170)) }), limits).stuck;
  expect(held(4)).toEqual([]);
  expect(held(5)).toEqual([[10, 15]]);
});

it.each([0.5, 1, 2])('knows the cadence times %f, a beat or so off, bridging three seconds', (factor) => {
  const turns = Array.from({ length: 60 }, (_, t) => 76 + ((3 * t) % 11));
  const wrist = Array.from({ length: 20 }, (_, t) => factor * turns[20 + t]! + (t % 3) - 1);
  wrist.fill(200, 8, 11);
  const series = seriesOf({ heartRate: withAt(20, ...wrist), cadence: turns });
  const faults = heartRateFaults(series, limits);
  const [found, ...others] = faults.cadence.filter(([from, to]) => to > 20 && from < 40);
  expect(others).toEqual([]);
  expect(found![0]).toBeLessThanOrEqual(20);
  expect(found![1]).toBeGreaterThanOrEqual(40);
  expect(cleanHeartRate(series, faults).subarray(20, 40).every(Number.isNaN)).toBe(true);
});

it('is missing altogether where nobody recorded it', () => {
  expect(heartRateFaults(seriesOf({ power: beats }), limits)).toEqual({
    missing: [[0, 60]],
    stuck: [],
    cadence: [],
    leapt: [],
  });
});
