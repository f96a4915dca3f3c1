import { describe, expect, it } from 'vitest';
import { isMeterName, sortMeters } from '../../src/read/meters.ts';

const power = Float64Array.from({ length: 200 }, (_, t) => 180 + ((37 * t) % 90));
/** A copy that differs in so many of 200 records, by so many watts. */
const copy = (records: number, watts: number) => ({
  name: 'copy',
  power: power.map((value, t) => (t < records ? value + watts : value)),
});

describe('further meters', () => {
  it('are none where a column repeats power in 99 of 100 records, to half a watt', () => {
    expect(sortMeters(power, [copy(2, 30)]).extra).toEqual([]);
    expect(sortMeters(power, [copy(3, 30)]).extra).toHaveLength(1);
    expect(sortMeters(power, [copy(200, 0.5)]).extra).toEqual([]);
    expect(sortMeters(power, [copy(200, 0.6)]).extra).toHaveLength(1);
  });

  it('are compared where both have a value, and with one another', () => {
    const gap = copy(100, Number.NaN);
    expect(sortMeters(power, [gap]).extra).toEqual([]);
    const other = { name: 'other', power: power.map((watts) => 1.1 * watts) };
    expect(sortMeters(power, [other, { ...other, name: 'again' }]).extra).toEqual([other]);
  });

  it('are none where nothing was ever above zero', () => {
    expect(sortMeters(power, [{ name: 'absent', power: new Float64Array(200) }]).extra).toEqual([]);
  });

  it('stand in, the first of them, for power that the file has not', () => {
    const [first, second] = [copy(0, 0), { name: 'second', power: power.map((watts) => watts + 20) }];
    expect(sortMeters(undefined, [first, second])).toEqual({ extra: [second], standIn: first });
    expect(sortMeters(undefined, [])).toEqual({ extra: [], standIn: null });
  });
});

describe('names of fields', () => {
  it.each(['Power', 'pedal power', 'Watts', 'crank_power', 'Power (2)'])('%s may be a meter', (name) => {
    expect(isMeterName(name, 'watts')).toBe(true);
    expect(isMeterName(name, '')).toBe(true);
    expect(isMeterName(name, '%')).toBe(false);
  });
  it.each([
    'Left Power',
    'Avg Power',
    'Target Power',
    'Form Power',
    'Powerful',
    'Power balance',
    'Lap watts',
  ])('%s is none', (name) => {
    expect(isMeterName(name, 'W')).toBe(false);
  });
});
