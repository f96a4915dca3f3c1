import { expect, test } from 'vitest';
import { powerAtZeroCadence } from '../../src/measure/power-at-zero-cadence.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(1800);
const turning = power.map(() => 88);
const stopped = (...stretches: readonly [number, number][]) =>
  turning.map((rpm, i) => (stretches.some(([from, to]) => i >= from && i < to) ? 0 : rpm));
const put = (cadence: number[]) => alone(seriesOf({ power, cadence }));

test('short tails are normal, whatever their number', () => {
  const tails = Array.from({ length: 40 }, (_, k) => [k * 40, k * 40 + 3] as [number, number]);
  expect(measuredOf(powerAtZeroCadence, 'coasting-power', put(stopped(...tails)))).toMatchObject({
    value: 0,
    stretches: [],
  });
});

test('adds up what goes beyond a tail', () => {
  const outcome = measuredOf(powerAtZeroCadence, 'coasting-power', put(stopped([100, 130], [500, 506])));
  expect(outcome.value).toBe(27 + 3);
  expect(outcome.stretches).toEqual([
    [100, 130],
    [500, 506],
  ]);
  expect(outcome.charts[0]).toMatchObject({ kind: 'close-ups', id: 'coasting:primary' });
});

test('a dead cadence sensor is another question', () => {
  expect(outcomeOf(powerAtZeroCadence, 'coasting-power', put(power.map(() => 0)))).toMatchObject({
    reason: 'dead-channel',
  });
});
