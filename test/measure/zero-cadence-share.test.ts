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

test('shows where, and takes no run of a flywheel for it', () => {
  // Dead from 300 to 700; the cranks stop for 3 s at 900.
  const cadence = power.map((_, i) => ((i >= 300 && i < 700) || (i >= 900 && i < 903) ? 0 : 90));
  const outcome = measuredOf(zeroCadenceShare, 'dead-cadence', put(cadence));
  expect(outcome.value).toBe(403 / 1200);
  expect(outcome.stretches).toEqual([[300, 700]]);
  expect(outcome.charts).toMatchObject([
    { kind: 'close-ups', id: 'dead-cadence:primary', closeUps: [{ from: 285, marked: [300, 700] }] },
  ]);
  const tails = measuredOf(zeroCadenceShare, 'dead-cadence', put(power.map((_, i) => (i % 60 < 9 ? 0 : 90))));
  expect(tails).toMatchObject({ value: 0.15, stretches: [], charts: [] });
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
