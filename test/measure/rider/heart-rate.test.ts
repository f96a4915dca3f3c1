import { expect, it } from 'vitest';
import { cleanHeartRate, heartRateFaults } from '../../../src/measure/rider/heart-rate.ts';
import { SecondState } from '../../../src/types.ts';
import { seriesOf } from '../series.ts';

const limits = { stuckSeconds: 5, cadenceBeats: 1, cadenceSeconds: 6 };
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
  });
});
