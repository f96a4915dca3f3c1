import { describe, expect, it } from 'vitest';
import { massShortfall } from '../../src/measure/mass-shortfall.ts';
import { steadyPower } from '../make/road.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, recordingOf, seriesOf, uniform } from './series.ts';

const id = 'implied-mass';
/** Ten minutes up a climb of changing grade on a simulated course: rider of 70 kg on 8 kg. */
function climbing(massKg: number | undefined, indoors = true, noise = 0) {
  const random = uniform(3);
  const load = { mass: 78, cdA: 0.22, crr: 0.004, density: 1.19883 };
  let height = 100;
  const altitude: number[] = [];
  const speed: number[] = [];
  const power: number[] = [];
  for (let i = 0; i < 900; i++) {
    const grade = [0.05, 0.07, 0.04][Math.floor(i / 90) % 3]!;
    const v = 20 / (4 + 60 * grade) + noise * (random() - 0.5);
    altitude.push(height);
    speed.push(v);
    power.push(steadyPower(load, 20 / (4 + 60 * grade), grade));
    height += v * grade;
  }
  const columns = { power, speed, altitude };
  const all = alone(seriesOf(columns, { recording: recordingOf(columns, { indoors }) }));
  return { ...all, rider: massKg === undefined ? {} : { massKg } };
}

describe('massShortfall', () => {
  it('finds the mass that moved the bicycle on a simulated course', () => {
    const got = measuredOf(massShortfall, id, climbing(70));
    expect(Math.abs(got.value)).toBeLessThan(0.5);
    expect(measuredOf(massShortfall, id, climbing(70 / 0.88)).value).toBeCloseTo(12, 0);
    expect(measuredOf(massShortfall, id, climbing(65)).value).toBeLessThan(-6);
  });
  it('shows the mass of every climb beside the declared one', () => {
    const got = measuredOf(massShortfall, id, climbing(80));
    const [chart] = got.charts;
    if (chart?.kind !== 'climbs') throw new Error('no chart of the climbs');
    expect(chart.declared).toBe(80);
    expect(chart.climbs).toHaveLength(got.count);
    for (const { kg, watts, at } of chart.climbs) {
      expect(Math.abs(kg - 70)).toBeLessThan(3);
      expect(watts).toBeGreaterThan(100);
      expect(at % 30).toBe(0);
    }
    // The finding's number is the chart's, in per cent of the declared mass.
    expect(100 * (1 - chart.implied.kg / chart.declared)).toBeCloseTo(got.value, 1);
  });
  it('takes the declared tolerance and place of the meter into account', () => {
    const all = climbing(70);
    const devices = [{ name: 'primary', place: 'trainer', sides: 2, tolerancePercent: 1 }] as const;
    const got = measuredOf(massShortfall, id, { ...all, rider: { ...all.rider, devices } });
    // The same power counted at the wheel moves 2.4 % more.
    expect(got.value).toBeLessThan(-2);
    expect(got.expected!.declared.spread).toBeLessThan(got.expected!.field.spread);
  });
  it('says that wind blurs it outdoors', () => {
    expect(measuredOf(massShortfall, id, climbing(80, false)).circumstances).toEqual(['outdoors']);
  });
  it('refuses where speed does not follow from power', () => {
    const all = climbing(70);
    const { power } = all.primary.channels;
    for (let i = 0; i < power!.length; i++) power![i] = i % 120 < 60 ? 120 : 420;
    expect(outcomeOf(massShortfall, id, all)).toMatchObject({ reason: 'speed-not-tied' });
  });
  it('needs its channels, a mass and climbs', () => {
    expect(outcomeOf(massShortfall, id, climbing(undefined))).toMatchObject({ reason: 'no-fact' });
    const flat = climbing(70);
    flat.primary.channels.altitude!.fill(100);
    expect(outcomeOf(massShortfall, id, flat)).toMatchObject({ reason: 'too-few-blocks' });
    expect(outcomeOf(massShortfall, id, alone(seriesOf({ power: [100] })))).toMatchObject({
      reason: 'no-channel',
    });
  });
});
