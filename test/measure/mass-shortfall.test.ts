import { describe, expect, it } from 'vitest';
import { massShortfall } from '../../src/measure/mass-shortfall.ts';
import { type AlignedSecond, type PastRide, SecondState } from '../../src/types.ts';
import { nextSpeed } from '../make/road.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { device, historyOf, meter, pastRides } from './rider/make.ts';
import { alone, recordingOf, seriesOf } from './series.ts';

const id = 'implied-mass';
/** A quarter of an hour up a climb of changing grade on a simulated course: rider of 70 kg on 8 kg, 250 W. */
function climbing(massKg: number | undefined, indoors = true) {
  const load = { mass: 78, cdA: 0.3, crr: 0.004, density: 1.19883 };
  const [altitude, speed, power]: [number[], number[], number[]] = [[], [], []];
  let [height, v] = [100, 4];
  for (let i = 0; i < 900; i++) {
    const grade = [0.05, 0.08, 0.03][Math.floor(i / 90) % 3]!;
    v = nextSpeed(load, v, 250, grade, 1, 1);
    height += v * grade;
    altitude.push(height);
    speed.push(v);
    power.push(250);
  }
  const columns = { power, speed, altitude };
  const all = alone(seriesOf(columns, { recording: recordingOf(columns, { indoors, device, meter }) }));
  return { ...all, rider: massKg === undefined ? {} : { massKg } };
}

/** Past rides on climbs that showed this mass of rider and bicycle, with the race's meter. */
function past(kg: number, rides: number, more: Partial<PastRide> = {}) {
  return historyOf(
    pastRides('climbs', { rides, hard: 1 }).map((ride) => ({
      ...ride,
      climbed: { kg, stretches: 20, scatter: 0.01 },
      ...more,
    })),
  );
}

/** A second recording of the same climbs that reads so many times what the primary does. */
function secondOf(all: ReturnType<typeof climbing>, factor: (second: number) => number): AlignedSecond {
  return {
    subject: 'pair:0',
    name: 'second.fit',
    series: seriesOf({
      power: Array.from(all.primary.channels.power!, (watts, second) => watts * factor(second)),
    }),
    alignment: { secure: true, origin: 'independent', sameAs: null },
  } as unknown as AlignedSecond;
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
  it('takes what past rides on climbs showed for what the meter does', () => {
    // 80 kg declared, 70 kg ride: 12.5 % less. The same in the past narrows the range around what it showed;
    // 78 kg in all if nothing is lost in the chain are 78/0.976.
    const all = climbing(80);
    const without = measuredOf(massShortfall, id, all);
    const stated = (history: typeof all.history) => measuredOf(massShortfall, id, { ...all, history });
    const heavier = stated(past(88 / 0.976, 8));
    expect(heavier.value).toBe(without.value);
    expect(heavier.details.rides).toBe(8);
    expect(heavier.expected!.field.spread).toBeLessThan(0.75 * without.expected!.field.spread);
    expect(heavier.expected!.field.centre).toBeLessThan(1.5);
    // Always as light as today: judged as if there were no past, so that nobody hides behind it.
    expect(stated(past(78 / 0.976, 8)).expected).toEqual(without.expected);
    expect(stated(past(78 / 0.976, 8)).details.rides).toBe(0);
    for (const more of [{ meter: { ...meter, serial: '8' } }, { indoors: false }, { to: 0 }])
      expect(stated(past(88 / 0.976, 8, more)).expected).toEqual(without.expected);
  });
  it('grants a meter half of what it reads below a second one', () => {
    const all = climbing(80);
    const [alone, both] = [all, { ...all, seconds: [secondOf(all, () => 1.06)] }].map((one) =>
      measuredOf(massShortfall, id, one),
    );
    expect(both!.details.meters).toBe(2);
    expect(both!.expected!.field.spread).toBeLessThan(0.85 * alone!.expected!.field.spread);
    const lever = (100 - both!.value) / 100 + 0.1;
    const moved = both!.expected!.field.centre - alone!.expected!.field.centre;
    expect(moved).toBeGreaterThan(2 * lever);
    expect(moved).toBeLessThan(3 * lever);
  });
  it('does not hear a second that reads far lower than meters do: it is off itself', () => {
    const all = climbing(70);
    const [alone, lower, failed] = [[], [() => 0.93], [() => 0.5]].map((factors) =>
      measuredOf(massShortfall, id, { ...all, seconds: factors.map((factor) => secondOf(all, factor)) }),
    );
    expect(lower!.expected!.field!.centre).toBeLessThan(alone!.expected!.field!.centre - 2);
    expect(failed!.expected).toEqual(alone!.expected);
    expect(failed!.details).toMatchObject({ meters: 1 });
  });

  it('holds against nobody that a second lost its link on a climb, and hears none of less than the fewest stretches', () => {
    const all = climbing(70);
    const opinions = (factor: (second: number) => number) =>
      measuredOf(massShortfall, id, { ...all, seconds: [secondOf(all, factor)] });
    const lost = opinions((second) => (second >= 100 && second < 300 ? 0 : 1));
    expect(lost.details.meters).toBe(2);
    expect(lost.expected!.field.centre).toBeCloseTo(opinions(() => 1).expected!.field.centre, 1);
    const brief = opinions((second) => (second < 60 ? 1.06 : Number.NaN));
    expect(brief.details.meters).toBe(1);
    expect(brief.expected).toEqual(measuredOf(massShortfall, id, all).expected);
  });
  it('reads climbs of a recorder that leaves seconds out, but none with seconds missing', () => {
    const all = climbing(80);
    const left = (state: number) => {
      const { length } = all.primary;
      const out = Uint8Array.from({ length }, (_, i) => (i % 4 === 0 ? SecondState.recorded : state));
      const channels = Object.fromEntries(
        Object.entries(all.primary.channels).map(([name, column]) => [
          name,
          column.map((_, i) => column[i - (i % 4)]!),
        ]),
      );
      return { ...all, primary: { ...all.primary, state: out, channels } };
    };
    expect(measuredOf(massShortfall, id, left(SecondState.bridged)).value).toBeCloseTo(
      measuredOf(massShortfall, id, all).value,
      0,
    );
    expect(outcomeOf(massShortfall, id, left(SecondState.missing))).toMatchObject({
      reason: 'too-few-blocks',
    });
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
