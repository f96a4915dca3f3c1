import { expect, test } from 'vitest';
import { sharedSeconds } from '../../src/measure/shared-seconds.ts';
import type { OtherSubmission } from '../../src/types.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(3600, 1);
const cadence = ride(3600, 11, 88, 3);
const all = alone(seriesOf({ power, cadence }));
const put = (...others: OtherSubmission[]) =>
  measuredOf(sharedSeconds, 'duplicate-submission', { ...all, others });
const other = (columns: { power?: number[]; cadence?: number[] }): OtherSubmission => ({
  name: 'B. Other',
  ...(columns.power && { power: Float64Array.from(columns.power) }),
  ...(columns.cadence && { cadence: Float64Array.from(columns.cadence) }),
});

test('needs an event', () => {
  expect(outcomeOf(sharedSeconds, 'duplicate-submission', all)).toMatchObject({ reason: 'no-event' });
  expect(put()).toMatchObject({ value: 0 });
});

test('two riders share nothing', () => {
  expect(put(other({ power: ride(3600, 2), cadence: ride(3600, 12, 88, 3) })).value).toBe(0);
});

test('the same ride, cut and shifted, is found', () => {
  const outcome = put(other({ power: power.slice(600, 3000) }));
  expect(outcome).toMatchObject({ value: 2400, stretches: [[600, 3000]] });
  expect(outcome.details).toMatchObject({ other: 'B. Other', channel: 'power' });
});

test('power made higher leaves the cadence', () => {
  const outcome = put(other({ power: power.map((w) => Math.round(w * 1.07)), cadence }));
  expect(outcome.value).toBeGreaterThan(3500);
  expect(outcome.details).toMatchObject({ channel: 'cadence' });
});
