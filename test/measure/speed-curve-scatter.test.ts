import { expect, test } from 'vitest';
import { speedCurveScatter } from '../../src/measure/speed-curve-scatter.ts';
import type { SpeedCurveChart } from '../../src/types.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf, uniform } from './series.ts';

/** A wheel speed that wanders between about 6 and 12 m/s, in mm/s. */
function speeds(seconds: number): number[] {
  const random = uniform(9);
  let wander = 0;
  return Array.from({ length: seconds }, () => {
    wander = 0.98 * wander + 0.35 * (random() - 0.5);
    return Math.round(1000 * (9 + 2 * wander)) / 1000;
  });
}
const speed = speeds(3600);
const curve = (v: number) => 5 + 4 * v + 0.2 * v ** 3;
const change = speed.map((v, i) => v - (speed[i - 1] ?? v));
const of = (power: number[]) =>
  measuredOf(speedCurveScatter, 'estimated-power', alone(seriesOf({ power, speed })));

test('power worked out from speed keeps to the curve within rounding', () => {
  const outcome = of(speed.map((v) => Math.round(curve(v))));
  expect(outcome.interval[1]).toBeLessThan(1);
  expect(outcome.charts[0]).toMatchObject({ kind: 'speed-curve' });
});

test('the inertia of a flywheel belongs to the curve', () => {
  const outcome = of(speed.map((v, i) => Math.max(1, Math.round(curve(v) + 12 * v * change[i]!))));
  expect(outcome.interval[1]).toBeLessThan(1);
  expect(outcome.details).toMatchObject({ inertia: { unit: 'kg' } });
});

test("a rider's inertia does not: there, speed was worked out from power", () => {
  const outcome = of(speed.map((v, i) => Math.max(1, Math.round(curve(v) + 85 * v * change[i]!))));
  expect(outcome.interval[0]).toBeGreaterThan(5);
});

test('where the course climbs and falls, no game could have worked such a speed out', () => {
  const power = speed.map((v, i) => Math.max(1, Math.round(curve(v) + 60 * v * change[i]!)));
  const altitude = power.map((_, i) => Math.round(5 * (100 + 40 * Math.sin(i / 120))) / 5);
  const over = (height: number[]) =>
    measuredOf(speedCurveScatter, 'estimated-power', alone(seriesOf({ power, speed, altitude: height })));
  expect(over(altitude).interval[1]).toBeLessThan(1);
  // A steady climb is a part of the curve, whoever rides it.
  expect(over(altitude.map((_, i) => i / 10)).interval[0]).toBeGreaterThan(5);
});

test('the change of speed is taken off what is drawn', () => {
  const [drawn] = of(speed.map((v, i) => Math.max(1, Math.round(curve(v) + 12 * v * change[i]!)))).charts;
  const { inertia, points } = drawn as SpeedCurveChart;
  expect(inertia).toBeCloseTo(12, 0);
  for (const point of points) expect(Math.abs(point.watts - curve(point.speed))).toBeLessThan(3);
});

test('measured power does not ask the speed', () => {
  expect(of(ride(3600)).interval[0]).toBeGreaterThan(5);
});

test('needs speed, and power that varies', () => {
  const power = ride(3600);
  expect(outcomeOf(speedCurveScatter, 'estimated-power', alone(seriesOf({ power })))).toMatchObject({
    reason: 'no-channel',
    values: { channel: 'speed' },
  });
  const steady = alone(seriesOf({ power: power.map((_, i) => 200 + (i % 3)), speed }));
  expect(outcomeOf(speedCurveScatter, 'estimated-power', steady)).toMatchObject({
    reason: 'cannot-separate',
  });
});
