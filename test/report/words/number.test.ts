import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aboutIn,
  atMostIn,
  clock,
  counted,
  duration,
  limit,
  number,
  oneIn,
  position,
  quantity,
  range,
  spans,
} from '../../../src/report/words/number.ts';
import type { Unit } from '../../../src/types.ts';
import { decimals, roundTo } from '../../../src/units.ts';

const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ');

describe('quantity', () => {
  it.each<readonly [number, Unit, string]>([
    [4.2, '%', '4.2 %'],
    [-4.2, '%', '−4.2 %'],
    [8, '%', '8 %'],
    [0.983, 'share', '98.3 %'],
    [1, 'share', '100 %'],
    [1336, 'W', '1336 W'],
    [12_226, 'count', '12,226'],
    [1.04, 'ratio', '1.040'],
    [0.944, 'r', '0.944'],
    [20, 's', '20 s'],
    [2556, 's', '42 min 36 s'],
    [119.5, 's', '119.5 s'],
    [-0.04, '%', '0 %'],
    [100, 'W', '100 W'],
  ])('%d %s is said as %s', (value, unit, said) => {
    expect(plain(quantity(value, unit))).toBe(said);
  });

  it('prints the value that was judged: nothing is lost of a rounded measurement', () => {
    const units = Object.keys(decimals).filter((unit) => unit !== 's') as Unit[];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ min: -99_999, max: 99_999, noNaN: true }),
        (unit, raw) => {
          const value = roundTo(raw, unit);
          const said = quantity(value, unit).replace('\u2212', '-').replaceAll(',', '').split('\u00a0')[0];
          expect(Number(said) / (unit === 'share' ? 100 : 1)).toBeCloseTo(value, 9);
        },
      ),
    );
  });
});

describe('range', () => {
  it('names the unit once, and says nothing of an exact count', () => {
    expect(plain(range([3.1, 5.3], '%'))).toBe('3.1 to 5.3 %');
    expect(plain(range([60, 600], 's'))).toBe('60 s to 10 min');
    expect(range([5, 5], 'count')).toBeNull();
  });
});

describe('limit', () => {
  it('says the comparison that is made', () => {
    expect(plain(limit({ atLeast: 8, atMost: null, end: 'cautious' }, '%'))).toBe('at least 8 %');
    expect(plain(limit({ atLeast: null, atMost: -3, end: 'cautious' }, '%'))).toBe('at most −3 %');
    expect(plain(limit({ atLeast: 8, atMost: -3, end: 'cautious' }, '%'))).toBe(
      'at most −3 % or at least 8 %',
    );
    expect(limit({ atLeast: null, atMost: null, end: 'cautious' }, '%')).toBeNull();
  });
});

describe('times', () => {
  it('are said as riders say them', () => {
    expect(plain(duration(3723))).toBe('1 h 2 min 3 s');
    expect(plain(duration(0))).toBe('0 s');
    expect(plain(duration(-61))).toBe('−1 min 1 s');
    expect(position(3754)).toBe('1:02:34');
    expect(position(754)).toBe('12:34');
    expect(position(-5)).toBe('−0:05');
    expect(clock(1_773_514_800)).toBe('2026-03-14 19:00:00 UTC');
    expect(clock(1e300)).toBe('at an impossible time');
    expect(clock(Number.NaN)).toBe('at an impossible time');
    expect(
      spans(
        [
          [0, 5],
          [60, 65],
          [90, 95],
        ],
        2,
      ),
    ).toBe('0:00–0:05, 1:00–1:05 and 1 more');
  });
});

describe('oneIn', () => {
  it.each([
    [0.0005, '1 in 2000'],
    [0.0001, '1 in 10,000'],
    [0.00003, '1 in 33,000'],
    [0.02, '1 in 50'],
    [0.25, '25 %'],
    [1e-7, 'fewer than 1 in 100,000'],
    [0, 'none that was tried'],
  ])('%d is said as %s', (share, said) => {
    expect(plain(oneIn(share))).toBe(said);
  });
});

describe('aboutIn', () => {
  it.each([
    [1612, 8528, '19 in 100'],
    [24, 8528, '3 in 1000'],
    [102, 8520, '12 in 1000'],
    [6, 8528, '1 in 1000'],
    // Fewer than that tell no rate, and a few hundred no thousandths.
    [3, 8528, null],
    [0, 8528, null],
    [1, 340, null],
    [17, 340, '5 in 100'],
  ])('%d of %d is said as %s', (count, of, said) => {
    expect(aboutIn(count, of)).toBe(said);
  });
});

describe('atMostIn', () => {
  it.each([
    [0.00036, '1 in 2700'],
    [0.00091, '1 in 1000'],
    [0.003, '3 in 1000'],
    [0.00396, '4 in 1000'],
    [0.007, '7 in 1000'],
    [0.19614, '20 in 100'],
    [1, '100 in 100'],
  ])('%d is said as %s', (share, said) => {
    expect(atMostIn(share)).toBe(said);
  });

  it('never says a bound smaller than it is', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 1, noNaN: true }), (share) => {
        const [part, base] = atMostIn(share).replaceAll(',', '').split(' in ').map(Number);
        expect(part! / base!).toBeGreaterThanOrEqual(share * (1 - 1e-6));
      }),
    );
  });
});

describe('number', () => {
  it('groups long numbers and drops what is nought', () => {
    expect(number(1234)).toBe('1234');
    expect(number(1_234_567.5)).toBe('1,234,567.5');
    expect(plain(counted(1, 'finding'))).toBe('1 finding');
    expect(plain(counted(3, 'stretch', 'stretches'))).toBe('3 stretches');
  });
});
