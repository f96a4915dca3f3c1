import { expect, test } from 'vitest';
import { missingChannelCount } from '../../src/measure/missing-channel-count.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(600);
const required = ['power', 'cadence', 'heartRate', 'second recording'] as const;

test('absent, zero and invalid are told apart', () => {
  const cadence = power.map(() => 0);
  const heartRate = power.map((_, i) => (i < 200 ? 140 : Number.NaN));
  const outcome = measuredOf(
    missingChannelCount,
    'missing-channel',
    alone(seriesOf({ power, cadence, heartRate }), { required }),
  );
  expect(outcome.value).toBe(2);
  expect(outcome.circumstances).toEqual(['cadence', 'heartRate']);
  expect(outcome.details).toMatchObject({ absent: 'none', zero: 'cadence', invalid: 'heart rate' });
  const bare = measuredOf(missingChannelCount, 'missing-channel', alone(seriesOf({ power }), { required }));
  expect(bare.details).toMatchObject({ required: 3, missing: 2, absent: 'cadence, heart rate' });
});

test('only what the event requires, and only in the race', () => {
  expect(outcomeOf(missingChannelCount, 'missing-channel', alone(seriesOf({ power })))).toMatchObject({
    reason: 'nothing-required',
  });
  const cadence = power.map((_, i) => (i < 400 ? 0 : 90));
  const race = { required: ['cadence'] } as const;
  const late = alone(seriesOf({ power, cadence }), race, [300, 600]);
  expect(measuredOf(missingChannelCount, 'missing-channel', late).value).toBe(0);
  const early = alone(seriesOf({ power, cadence }), race, [0, 300]);
  expect(measuredOf(missingChannelCount, 'missing-channel', early).value).toBe(1);
});
