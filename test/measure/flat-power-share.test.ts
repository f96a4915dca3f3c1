import { expect, test } from 'vitest';
import { flatPowerShare } from '../../src/measure/flat-power-share.ts';
import { SecondState } from '../../src/types.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf, uniform } from './series.ts';

const put = (power: number[], race = {}) => alone(seriesOf({ power }), race);
const blocks = (level: (i: number) => number) =>
  Array.from({ length: 2400 }, (_, i) => level([150, 280, 150, 310][Math.floor(i / 120) % 4]!));

test('a ride has no flat stretch', () => {
  expect(measuredOf(flatPowerShare, 'flat-setpoint', put(ride(3600)))).toMatchObject({ value: 0 });
});

test('a reported target is flat throughout, and its levels are counted', () => {
  const outcome = measuredOf(flatPowerShare, 'flat-setpoint', put(blocks((watts) => watts)));
  expect(outcome).toMatchObject({ value: 1, details: { plateaus: 20, levels: 3 } });
  expect(outcome.stretches[1]).toEqual([120, 240]);
  expect(outcome.charts[0]).toMatchObject({ kind: 'plateaus' });
});

test('a target dithered by a watt is still flat; an honest controlled session (2 %) is not', () => {
  const random = uniform(7);
  const dithered = blocks((watts) => watts + Math.floor(3 * random()) - 1);
  expect(measuredOf(flatPowerShare, 'flat-setpoint', put(dithered)).value).toBeGreaterThan(0.95);
  const honest = blocks((watts) =>
    Math.round(watts * (1 + 0.02 * 1.2 * (random() + random() + random() + random() - 2) * 1.44)),
  );
  expect(measuredOf(flatPowerShare, 'flat-setpoint', put(honest)).value).toBe(0);
});

test('a workout is said to be one', () => {
  const power = blocks((watts) => watts);
  expect(measuredOf(flatPowerShare, 'flat-setpoint', put(power, { kind: 'workout' })).circumstances).toEqual([
    'workout',
  ]);
  expect(measuredOf(flatPowerShare, 'flat-setpoint', put(power, { kind: 'race' })).circumstances).toEqual([]);
});

test('what a recorder left out counts with the record before it', () => {
  const sparse = seriesOf({ power: blocks((watts) => watts) });
  for (let i = 0; i < sparse.length; i++) if (i % 4 > 0) sparse.state[i] = SecondState.bridged;
  expect(measuredOf(flatPowerShare, 'flat-setpoint', alone(sparse)).value).toBeGreaterThan(0.95);
  const free = seriesOf({ power: ride(2400) });
  for (let i = 0; i < free.length; i++) if (i % 4 > 0) free.state[i] = SecondState.bridged;
  expect(measuredOf(flatPowerShare, 'flat-setpoint', alone(free)).value).toBe(0);
});

test('says nothing of three minutes', () => {
  expect(outcomeOf(flatPowerShare, 'flat-setpoint', put(ride(150)))).toMatchObject({
    reason: 'too-short',
  });
});
