import { describe, expect, it } from 'vitest';
import { latePowerExcess } from '../../src/measure/late-power-excess.ts';
import { measuredOf, outcomeOf, ruleOf } from './measure-of.ts';
import { heartRide } from './rider/heart.ts';
import { alone, seriesOf } from './series.ts';

const id = 'late-power-rise';
const limit = ruleOf(id).limits.query!['at least']!;
/** Power that changes and has no trend. */
const swaying = (i: number) => 230 + 60 * Math.sin(i / 100);
const of = (columns: Parameters<typeof seriesOf>[0]) => alone(seriesOf(columns));

describe('latePowerExcess', () => {
  it('is nil for a heart that answers the same throughout, and recovers a planted rise', () => {
    for (const rise of [0, 0.08, 0.16, 0.24]) {
      const got = measuredOf(latePowerExcess, id, of(heartRide(`rise ${rise}`, { rise })));
      // In percent of the mean reading, which has risen by half of it.
      const planted = (100 * rise) / (1 + rise / 2);
      expect(got.value).toBeGreaterThan(planted - 4);
      expect(got.value).toBeLessThan(planted + 4);
      expect(got.interval[0]).toBeLessThan(planted);
      expect(got.interval[1]).toBeGreaterThan(planted);
    }
  });

  it('goes below nil when heart rate drifts up, as it does in honest riders', () => {
    const got = measuredOf(latePowerExcess, id, of(heartRide('drift', { driftPerHour: 8 })));
    // 8 bpm at 0.4 bpm/W are 20 W of 230.
    expect(got.value).toBeGreaterThan(-13);
    expect(got.value).toBeLessThan(-5);
    expect(got.value).toBeLessThan(got.expected!.field.centre + limit * got.expected!.field.spread);
  });

  it('asks about a clear rise only', () => {
    const asks = (rise: number) => {
      const { value, expected } = measuredOf(
        latePowerExcess,
        id,
        of(heartRide('ask', { rise, driftPerHour: 4, watts: swaying })),
      );
      return value >= expected!.field.centre + limit * expected!.field.spread;
    };
    expect(asks(0)).toBe(false);
    expect(asks(0.24)).toBe(true);
  });

  it('holds a fall of heart rate for cooler air, as far as that goes', () => {
    const honest = (driftPerHour: number) => {
      const ride = heartRide('fan', { driftPerHour, watts: swaying });
      const { expected, details } = measuredOf(latePowerExcess, id, of(ride));
      return { centre: expected!.field.centre, cooled: (details.cooled as { value: number }).value };
    };
    const [warming, cooling, much] = [honest(6), honest(-4), honest(-12)];
    expect(warming.cooled).toBe(0);
    expect(cooling.cooled).toBeGreaterThan(1);
    expect(cooling.centre).toBeGreaterThan(warming.centre);
    expect(much.cooled).toBe(5);
  });

  it('gives what came at once an interval that can be used', () => {
    const columns = heartRide('step', { watts: swaying });
    const power = columns.power.map((watts, i) => watts * (i < 1800 ? 1 : 1.24));
    const { value, interval } = measuredOf(latePowerExcess, id, of({ ...columns, power }));
    expect(interval[1] - interval[0]).toBeLessThan(40);
    // The line through a step in the middle rises by half as much again.
    expect(value).toBeGreaterThan(24 / 1.12);
    expect(interval[0]).toBeLessThan((1.5 * 24) / 1.12);
    expect(interval[1]).toBeGreaterThan((1.5 * 24) / 1.12);
  });

  it('takes what came at once and what came slowly for a rise alike, however steady the ride', () => {
    for (const watts of [(i: number) => 230 + 12 * Math.sin(i / 100), swaying]) {
      const columns = heartRide('steady', { watts });
      const half = columns.power.map((power, i) => power * (i < 1800 ? 1 : 1.16));
      const { value } = measuredOf(latePowerExcess, id, of({ ...columns, power: half }));
      expect(value).toBeGreaterThan(10);
    }
  });

  it('is not turned by a strap that drops out, hangs or counts the cadence', () => {
    const columns = heartRide('strap');
    const spoilt = columns.heartRate.slice();
    spoilt.fill(Number.NaN, 900, 1100);
    spoilt.fill(181, 1500, 1700);
    for (let i = 2000; i < 2300; i++) spoilt[i] = Math.round(spoilt[i]! * 0.55);
    for (let i = 2600; i < 2900; i++) spoilt[i] = Math.round(columns.cadence[i]!);
    const got = measuredOf(latePowerExcess, id, of({ ...columns, heartRate: spoilt }));
    expect(Math.abs(got.value)).toBeLessThan(5);
    expect(got.circumstances).toEqual([
      'strap dropped out',
      'heart rate stuck',
      'cadence counted',
      'heart rate leapt',
    ]);
  });

  it('says why it cannot judge', () => {
    const columns = heartRide('usual');
    const reason = (given: Parameters<typeof seriesOf>[0]) => outcomeOf(latePowerExcess, id, of(given));
    expect(reason({ power: columns.power })).toMatchObject({
      reason: 'no-channel',
      values: { channel: 'heartRate' },
    });
    expect(reason({ heartRate: columns.heartRate })).toMatchObject({ values: { channel: 'power' } });
    expect(reason(heartRide('short', { seconds: 1200 }))).toMatchObject({ reason: 'too-few-blocks' });
    expect(reason(heartRide('steps', { watts: (i) => (i < 1800 ? 150 : 280) }))).toMatchObject({
      reason: 'no-overlap-of-power',
    });
    const unrelated = {
      ...columns,
      heartRate: columns.heartRate.map((_, i) => 140 + Math.round(3 * Math.sin(i / 47))),
    };
    expect(reason(unrelated)).toMatchObject({ reason: 'no-heart-rate-range' });
    const wandering = {
      ...columns,
      heartRate: columns.heartRate.map((beats, i) => beats + 30 * Math.sin(i / 300)),
    };
    expect(reason(wandering)).toMatchObject({ reason: 'cannot-separate' });
  });

  it('shows what power predicts beside what was measured', () => {
    const { charts } = measuredOf(latePowerExcess, id, of(heartRide('chart', { rise: 0.2 })));
    const chart = charts[0];
    if (chart?.kind !== 'response') throw new Error('no response chart');
    const gap = ({ heartRate, predicted }: (typeof chart.blocks)[number]) => heartRate - predicted;
    expect(gap(chart.blocks[0]!)).toBeGreaterThan(gap(chart.blocks.at(-1)!) + 5);
  });
});
