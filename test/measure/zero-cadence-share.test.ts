import { expect, test } from 'vitest';
import { zeroCadenceShare } from '../../src/measure/zero-cadence-share.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(1200);
const put = (cadence?: number[]) => alone(seriesOf({ power, ...(cadence && { cadence }) }));

test('counts the seconds with power and no turning cranks', () => {
  expect(measuredOf(zeroCadenceShare, 'dead-cadence', put(power.map(() => 0)))).toMatchObject({
    value: 1,
    count: 1200,
  });
  const half = power.map((_, i) => (i < 600 ? 0 : 90));
  expect(measuredOf(zeroCadenceShare, 'dead-cadence', put(half)).value).toBe(0.5);
});

test('missing cadence is not zero cadence', () => {
  const partly = power.map((_, i) => (i < 600 ? Number.NaN : 90));
  expect(measuredOf(zeroCadenceShare, 'dead-cadence', put(partly))).toMatchObject({ value: 0, count: 600 });
  expect(outcomeOf(zeroCadenceShare, 'dead-cadence', put())).toMatchObject({
    reason: 'no-channel',
    values: { channel: 'cadence' },
  });
});

test('coasting is not counted, and a ride without power says nothing', () => {
  const still = power.map(() => 0);
  const coasting = alone(seriesOf({ power: still, cadence: still }));
  expect(outcomeOf(zeroCadenceShare, 'dead-cadence', coasting)).toMatchObject({ reason: 'no-power-flow' });
});
