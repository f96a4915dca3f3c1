import { describe, expect, it } from 'vitest';
import { parseOptions } from './options.ts';

describe('options of the measurement', () => {
  it('draw a little from the generator for tuning unless told otherwise', () => {
    expect(parseOptions([])).toMatchObject({
      job: 'detection',
      build: 'tuning',
      seed: '1',
      scale: { honest: 0.02, faults: 0.02 },
      keep: false,
      minutes: Infinity,
    });
  });

  it('size honest submissions and faults together or apart', () => {
    expect(parseOptions(['--scale', '0.5'])!.scale).toEqual({ honest: 0.5, faults: 0.5 });
    expect(parseOptions(['--honest-scale', '1', '--fault-scale', '0.17'])!.scale).toEqual({
      honest: 1,
      faults: 0.17,
    });
    expect(parseOptions(['--scale', '0.1', '--honest-scale', '1'])!.scale).toEqual({
      honest: 1,
      faults: 0.1,
    });
  });

  it('name one job', () => {
    expect(parseOptions(['--real', 'folder'])).toMatchObject({ job: 'real', real: 'folder' });
    expect(parseOptions(['--write-rates', '--counts', 'file'])).toMatchObject({
      job: 'rates',
      counts: 'file',
    });
    expect(parseOptions(['--coverage', '--reporting'])).toMatchObject({
      job: 'coverage',
      build: 'reporting',
    });
    expect(() => parseOptions(['--coverage', '--pages'])).toThrow(/one of/);
  });

  it('refuse what cannot be meant', () => {
    for (const bad of ['0', '-1', 'much', 'Infinity', ''])
      expect(() => parseOptions([`--scale=${bad}`])).toThrow(/above 0/);
    expect(() => parseOptions(['--date', 'yesterday'])).toThrow(/2026-03-14/);
    expect(() => parseOptions(['--honest', '--faults'])).toThrow();
    expect(() => parseOptions(['--nonsense'])).toThrow();
  });

  it('ask for help', () => expect(parseOptions(['--help'])).toBeNull());
});
