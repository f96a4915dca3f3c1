import { expect, test } from 'vitest';
import { verdictOf } from '../../src/judge/judge.ts';
import { flatPowerShare } from '../../src/measure/flat-power-share.ts';
import { normalise } from '../../src/normalise/index.ts';
import type { PlateausChart } from '../../src/types.ts';
import { SecondState } from '../../src/types.ts';
import { drawSubmission } from '../make/index.ts';
import { measuredOf, outcomeOf, ruleOf } from './measure-of.ts';
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

test('says which plateaus, each with its level and its times, in a ride that is free otherwise', () => {
  const power = ride(3600);
  power.fill(220, 1200, 1500);
  power.fill(305, 2400, 2460);
  const outcome = measuredOf(flatPowerShare, 'flat-setpoint', put(power));
  expect(outcome.stretches).toEqual([
    [1200, 1500],
    [2400, 2460],
  ]);
  expect(outcome).toMatchObject({
    details: { plateaus: 2, levels: 2, flat: { value: 360 }, longest: { value: 300 } },
  });
  const chart = outcome.charts[0] as PlateausChart;
  expect(chart.plateaus).toEqual([
    { stretch: [1200, 1500], watts: 220 },
    { stretch: [2400, 2460], watts: 305 },
  ]);
});

test('the same trace weighs more in a race than in a workout', () => {
  const levelIn = (kind: 'race' | 'time trial' | 'workout') => {
    const outcome = measuredOf(
      flatPowerShare,
      'flat-setpoint',
      put(
        blocks((watts) => watts),
        { kind },
      ),
    );
    return verdictOf(ruleOf('flat-setpoint'), outcome).level;
  };
  expect([levelIn('race'), levelIn('time trial'), levelIn('workout')]).toEqual(['refer', 'refer', 'query']);
});

test('a controlled session on an honest meter keeps its levels less closely, however well it is ridden', () => {
  for (let seed = 1; seed <= 5; seed++) {
    const { primary } = drawSubmission(`controlled ${seed}`, {
      kind: 'set-point session',
      minutes: 40,
      seconds: 0,
    });
    const series = normalise(primary, 'primary').series;
    expect(measuredOf(flatPowerShare, 'flat-setpoint', alone(series)).value).toBeLessThan(0.04);
  }
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
