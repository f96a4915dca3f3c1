import { expect, test } from 'vitest';
import { powerAtZeroCadence } from '../../src/measure/power-at-zero-cadence.ts';
import { SecondState } from '../../src/types.ts';
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

test('a recorder that leaves seconds out is asked from record to record', () => {
  const cadence = stopped([100, 130]);
  const sparse = seriesOf({ power, cadence });
  for (let i = 0; i < sparse.length; i++) if (i % 5 > 0) sparse.state[i] = SecondState.bridged;
  const outcome = measuredOf(powerAtZeroCadence, 'coasting-power', alone(sparse));
  // Records at 100, 105 … 125: what follows the last one nobody knows.
  expect(outcome).toMatchObject({ value: 26 - 3, stretches: [[100, 126]] });
});

test('what a gap parts is no single hold', () => {
  const series = seriesOf({ power, cadence: stopped([100, 104], [110, 114]) });
  series.state.fill(SecondState.missing, 104, 110);
  expect(measuredOf(powerAtZeroCadence, 'coasting-power', alone(series))).toMatchObject({
    value: 2,
    stretches: [
      [100, 104],
      [110, 114],
    ],
  });
});

test('a dead cadence sensor is another question', () => {
  expect(outcomeOf(powerAtZeroCadence, 'coasting-power', put(power.map(() => 0)))).toMatchObject({
    reason: 'dead-channel',
  });
});
