import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge, rank, verdictOf } from '../../src/judge/judge.ts';
import type { Measured, Rule } from '../../src/types.ts';
import { measurement, outcome, rule } from './make.ts';

const levelOf = (value: number, extras: Partial<Measured> = {}, from: Rule = rule) =>
  judge([measurement(outcome(value, extras), from)], { rules: [from] }).findings[0]!;

describe('judge', () => {
  it.each([
    [1.9, 'none'],
    [2, 'note'],
    [4.9, 'note'],
    [5, 'query'],
    [9.9, 'query'],
    [10, 'refer'],
  ] as const)('gives an exact %f the level %s', (value, level) => {
    expect(levelOf(value).level).toBe(level);
  });

  it('judges the value that is printed: rounded first, to the decimals of the unit', () => {
    const found = levelOf(9.96, { interval: [9.951, 9.97] });
    expect(found).toMatchObject({ level: 'refer', value: 10, interval: [10, 10] });
    expect(levelOf(9.94)).toMatchObject({ level: 'query', value: 9.9 });
  });

  it('asks the end that is nearer to innocence, where the limit says so', () => {
    expect(levelOf(12, { interval: [4.9, 19] }).level).toBe('note');
    expect(levelOf(12, { interval: [5, 19] }).level).toBe('query');
  });

  it('looks downwards with “at most”, by the upper end', () => {
    const down: Rule = {
      ...rule,
      limits: { query: { 'at least': 5, 'at most': -5, of: 'value', end: 'cautious' } },
    };
    expect(levelOf(-7, { interval: [-9, -5] }, down)).toMatchObject({
      level: 'query',
      summary: { id: 'below', values: { limit: { value: -5, unit: '%' } } },
    });
    expect(levelOf(-7, { interval: [-9, -4.9] }, down).level).toBe('none');
    expect(levelOf(7, { interval: [5, 9] }, down).summary.id).toBe('above');
  });

  it('places a multiple of the honest spread from the honest centre, in the unit of the value', () => {
    const spread: Rule = {
      ...rule,
      limits: {
        query: { 'at least': 2, of: 'declared spread', end: 'cautious' },
        refer: { 'at least': 3, 'at most': -3, of: 'field spread', end: 'cautious' },
      },
    };
    const expected = { declared: { centre: 2, spread: 1.04 }, field: { centre: -2, spread: 4.5 } };
    const found = levelOf(5, { expected }, spread);
    expect(found.limits).toEqual({
      query: { atLeast: 4, atMost: null, end: 'cautious' },
      refer: { atLeast: 11.5, atMost: -15.5, end: 'cautious' },
    });
    expect(found.level).toBe('query');
    expect(levelOf(11.5, { expected }, spread).level).toBe('refer');
    expect(levelOf(-15.5, { expected }, spread)).toMatchObject({ level: 'refer', summary: { id: 'below' } });
  });

  it('holds the level down to the lowest ceiling that applies, and says why', () => {
    const held: Rule = {
      ...rule,
      ceilings: [...rule.ceilings, { when: 'rain', level: 'none', why: 'Rain.' }],
    };
    expect(levelOf(12, { circumstances: ['cobbles'] }, held)).toMatchObject({
      level: 'note',
      ceiling: 'Cobbles make every wheel wobble.',
      summary: { id: 'above' },
    });
    expect(levelOf(12, { circumstances: ['cobbles', 'rain'] }, held)).toMatchObject({
      level: 'none',
      ceiling: 'Rain.',
    });
    expect(levelOf(3, { circumstances: ['cobbles'] }, held).ceiling).toBeNull();
  });

  it('says what held the level down once, and what else there is to know beside it', () => {
    const measured = outcome(12, { circumstances: ['dusk', 'cobbles'] });
    const remarks = ['the light was going', 'the road is paved with cobbles'];
    const told = (value: typeof measured) =>
      judge([{ ...measurement(value), remarks }], { rules: [rule] }).findings[0]!.remarks;
    expect(told(measured)).toEqual(['the light was going']);
    expect(told({ ...measured, value: 1, interval: [1, 1] })).toEqual(remarks);
  });

  it('names the nearest limit that was not passed', () => {
    expect(levelOf(1).summary).toEqual({
      id: 'fine',
      values: {
        value: { value: 1, unit: '%' },
        size: { value: 1, unit: '%' },
        low: { value: 1, unit: '%' },
        high: { value: 1, unit: '%' },
        limit: { value: 2, unit: '%' },
      },
    });
  });

  it('passes on details, rounded, and never lets one stand in for the value', () => {
    const details = {
      value: 99,
      hz: { value: 1.2345678, unit: 'rpm' },
      share: 0.123456789,
      who: 'x',
    } as const;
    expect(levelOf(3, { details }).summary.values).toMatchObject({
      value: { value: 3, unit: '%' },
      hz: { value: 1.2, unit: 'rpm' },
      share: 0.123457,
      who: 'x',
    });
  });

  it('makes no finding of what could not be computed, was switched off, or broke', () => {
    const off: Rule = { ...rule, off: 'Not here.' };
    const rows = [
      measurement({ state: 'not applicable', reason: 'too-short', values: {} }),
      measurement({ state: 'failed', message: 'x' }),
    ];
    expect(judge(rows, { rules: [rule] })).toEqual({ measurements: rows, findings: [] });
    expect(judge([measurement(outcome(12), off)], { rules: [off] }).findings).toEqual([]);
  });

  it('fails, and does not pass, a measure that states no spread to a rule that counts in it', () => {
    const spread: Rule = {
      ...rule,
      limits: { query: { 'at least': 2, of: 'field spread', end: 'cautious' } },
    };
    const { measurements, findings } = judge([measurement(outcome(12), spread)], { rules: [spread] });
    expect(findings).toEqual([]);
    expect(measurements[0]!.outcome).toMatchObject({ state: 'failed' });
  });

  it('refuses a measurement of a rule that it does not have', () => {
    expect(() => judge([measurement(outcome(1))], { rules: [] })).toThrow('not in the set');
  });
});

describe('the level', () => {
  const numbers = fc.double({ min: -100, max: 100, noNaN: true });

  it('never falls as the value rises, nor as its range moves up with it', () => {
    fc.assert(
      fc.property(numbers, numbers, fc.double({ min: 0, max: 20, noNaN: true }), (a, b, half) => {
        const at = (value: number) => levelOf(value, { interval: [value - half, value + half] }).level;
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(rank(at(low))).toBeLessThanOrEqual(rank(at(high)));
      }),
    );
  });

  it('never rises as the range grows wider', () => {
    fc.assert(
      fc.property(
        numbers,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (value, half, wider) => {
          const at = (width: number) => levelOf(value, { interval: [value - width, value + width] }).level;
          expect(rank(at(half * wider))).toBeLessThanOrEqual(rank(at(half)));
        },
      ),
    );
  });

  it('is that of the highest limit passed', () => {
    fc.assert(
      fc.property(numbers, (value) => {
        const { level, limits, side } = verdictOf(rule, { value, interval: [value, value] });
        expect(limits).toHaveProperty('refer.atLeast', 10);
        expect(side === null).toBe(level === 'none');
      }),
    );
  });
});
