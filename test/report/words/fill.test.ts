import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fill, fillable, ownWords } from '../../../src/report/words/fill.ts';
import { capital, join, list, plain, say } from '../../../src/report/words/sentence.ts';
import { payloads } from '../payloads.ts';

const said = (template: string, values = {}) => plain(fill(template, values)).replaceAll('\u00a0', ' ');

describe('fill', () => {
  it('puts in values with their units', () => {
    expect(said('{value} above', { value: { value: 4.25, unit: 'W' } })).toBe('4.3 W above');
    expect(said('{gap:s} missing', { gap: 300 })).toBe('5 min missing');
    expect(said('at {first:at}', { first: { value: 3754, unit: 's' } })).toBe('at 1:02:34');
  });

  it('puts the noun in the right number', () => {
    expect(said('{count|record|records}', { count: 1 })).toBe('1 record');
    expect(said('{count|record|records}', { count: 12 })).toBe('12 records');
    expect(said('{count|record|records}', { count: { value: 1, unit: 'count' } })).toBe('1 record');
  });

  it('knows our own words from a stranger’s', () => {
    expect(said('no {channel}', { channel: 'heartRate' })).toBe('no heart rate');
    expect(said('{absent}', { absent: 'cadence, heart rate' })).toBe('cadence, heart rate');
    expect(said('{name}', { name: 'Left Pedal' })).toBe('“Left Pedal”');
    expect(ownWords('constructor')).toBeNull();
  });

  it('names the meter that a subject stands for, and only where it is asked to', () => {
    const name = (template: string) =>
      plain(fill(template, { meter: 'pair:5b2c' }, (subject) => `meter of ${subject}`));
    expect(name('the {meter:who} lies apart')).toBe('the meter of pair:5b2c lies apart');
    expect(name('the {meter} lies apart')).toBe('the “pair:5b2c” lies apart');
  });

  it('says what measures put in words as words of ours', () => {
    expect(said('from {direction}', { direction: 'below to above' })).toBe('from below to above');
    expect(said('({class})', { class: 'open' })).toBe('(open)');
    expect(said('{averaging}, {part}', { averaging: 'weighted mean', part: 'throughout' })).toBe(
      'weighted mean, throughout',
    );
  });

  it('says that a value is unstated rather than leave a blank', () => {
    expect(said('{kept|record|records} kept')).toBe('an unstated value kept');
    expect(fillable('{kept}', {})).toBe(false);
    expect(fillable('{toString}', {})).toBe(false);
    expect(fillable('{kept}', { kept: 1 })).toBe(true);
  });

  it('never reads a value as a template', () => {
    fc.assert(
      fc.property(fc.constantFrom(...payloads), (name) => {
        const sentence = fill('a {name} b', { name, value: 1 });
        expect(sentence).toHaveLength(3);
        expect(sentence[0]).toBe('a ');
      }),
    );
  });
});

describe('sentences', () => {
  it('are joined, listed and begun with a capital', () => {
    expect(plain(say`a ${1} ${{ foreign: 'x' }}`)).toBe('a 1 “x”');
    expect(plain(list(['a', 'b', { foreign: 'c' }]))).toBe('a, b and “c”');
    expect(plain(list(['a']))).toBe('a');
    expect(plain(join(['a', ['b', 'c']], ', '))).toBe('a, bc');
    expect(plain(capital(['élan']))).toBe('Élan');
    expect(capital([{ foreign: 'x' }])).toEqual([{ foreign: 'x' }]);
  });
});
