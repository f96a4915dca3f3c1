import { expect, test } from 'vitest';
import { uncoveredShare } from '../../src/measure/uncovered-share.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf, start } from './series.ts';

const series = seriesOf({ power: ride(3600) });
const iso = (seconds: number) => new Date(seconds * 1000).toISOString();
const race = (from: number, to: number) =>
  alone(series, { start: iso(start + from), finish: iso(start + to) });
const covers = (from: number, to: number) =>
  measuredOf(uncoveredShare, 'outside-race-window', race(from, to));

test('a recording that covers the race', () => {
  expect(covers(0, 3600)).toMatchObject({ value: 0, circumstances: [], charts: [] });
});

test('late starts and early ends add up', () => {
  expect(covers(-300, 2700)).toMatchObject({
    value: 0.1,
    details: { late: { value: 300 }, early: { value: 0 } },
  });
  const both = covers(-400, 3600 + 400);
  expect(both.value).toBeCloseTo(800 / 4400, 12);
  // The chart shows what is missing, before and after.
  expect(both.charts[0]).toMatchObject({
    lost: [
      [-400, 0],
      [3600, 4000],
    ],
  });
  expect(covers(7200, 9000).charts[0]).toMatchObject({ lost: [[7200, 9000]] });
});

test('slips of whole hours and quarters are named, the smallest first', () => {
  const hour = covers(3600 + 60, 2 * 3600 + 30);
  expect(hour).toMatchObject({ value: 1, circumstances: ['zone slip'], details: { slip: { value: 3600 } } });
  const nepal = covers(-20_700 + 40, -20_700 + 3600);
  expect(nepal.details).toMatchObject({ slip: { value: -20_700, unit: 's' } });
  expect(covers(86_400 * 3, 86_400 * 3 + 3600).circumstances).toEqual([]);
});

test('no two time zones lie more than 26 hours apart', () => {
  const day = (hours: number) => covers(3600 * hours, 3600 * (hours + 1)).details.slip;
  expect(day(26)).toEqual({ value: 26 * 3600, unit: 's' });
  expect(day(-26)).toEqual({ value: -26 * 3600, unit: 's' });
  expect(day(26.5)).toBe('no whole quarter of an hour');
});

test('needs the times of the race', () => {
  expect(outcomeOf(uncoveredShare, 'outside-race-window', alone(series))).toMatchObject({
    reason: 'no-fact',
    values: { fact: 'start' },
  });
});
