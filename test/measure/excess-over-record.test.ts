import { describe, expect, it } from 'vitest';
import { excessOverRecord } from '../../src/measure/excess-over-record.ts';
import { recordPower } from '../../src/measure/rider/records.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, seriesOf } from './series.ts';

const id = 'above-human-record';
const riding = (watts: number, seconds: number, massKg?: number, recordClass?: 'women' | 'open') => {
  const power = Array.from({ length: 3600 }, (_, i) => (i >= 600 && i < 600 + seconds ? watts : 100));
  const rider = {
    ...(massKg === undefined ? {} : { massKg }),
    ...(recordClass === undefined ? {} : { recordClass }),
  };
  return { ...alone(seriesOf({ power })), rider };
};

describe('recordPower', () => {
  it('goes through the published values and straight between them on logarithmic axes', () => {
    // Allen, Coggan & McGregor, 3rd ed., top row.
    const published = { open: [25.18, 11.5, 7.6, 6.4], women: [19.42, 9.29, 6.74, 5.69] } as const;
    for (const recordClass of ['open', 'women'] as const) {
      for (const [k, duration] of [5, 60, 300, 3600].entries())
        expect(recordPower(duration, recordClass)).toBeCloseTo(published[recordClass][k]!, 9);
    }
    // Half way between 5 min and an hour: √(7.6·6.4).
    expect(recordPower(Math.sqrt(300 * 3600), 'open')).toBeCloseTo(Math.sqrt(7.6 * 6.4), 9);
    expect(recordPower(10, 'open')).toBeLessThan(25.18);
    expect(recordPower(1200, 'women')).toBeLessThan(6.74);
  });
});

describe('excessOverRecord', () => {
  it('compares the race per kilogram where it stands highest', () => {
    const got = measuredOf(excessOverRecord, id, riding(7.6 * 1.1 * 70, 300, 70));
    expect(got.value).toBeCloseTo(10, 6);
    expect(got.stretches).toEqual([[600, 900]]);
    expect(got.details.duration).toEqual({ value: 5, unit: 'min' });
  });
  it('takes the more generous class when none is stated', () => {
    const open = measuredOf(excessOverRecord, id, riding(420, 300, 60)).value;
    const women = measuredOf(excessOverRecord, id, riding(420, 300, 60, 'women')).value;
    expect(open).toBeCloseTo(100 * (7 / 7.6 - 1), 6);
    expect(women).toBeCloseTo(100 * (7 / 6.74 - 1), 6);
  });
  it('takes a declared tolerance for the spread by the claim', () => {
    const all = riding(300, 300, 70);
    const devices = [{ name: 'primary', place: 'pedal', sides: 2, tolerancePercent: 1.5 }] as const;
    const { expected } = measuredOf(excessOverRecord, id, { ...all, rider: { ...all.rider, devices } });
    // GUM: ±1.5 % is 1.5/√3 = 0.87 %.
    expect(expected?.declared.spread).toBeCloseTo(Math.hypot(0.866, 1), 3);
    expect(expected?.field.spread).toBeCloseTo(Math.hypot(3.2, 1), 6);
  });
  it('needs a body mass and power', () => {
    expect(outcomeOf(excessOverRecord, id, riding(300, 300))).toMatchObject({ reason: 'no-fact' });
    const none = { ...alone(seriesOf({ cadence: [80, 80] })), rider: { massKg: 70 } };
    expect(outcomeOf(excessOverRecord, id, none)).toMatchObject({ reason: 'no-channel' });
  });
});
