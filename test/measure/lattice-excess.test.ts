import { expect, test } from 'vitest';
import { latticeExcess } from '../../src/measure/lattice-excess.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const base = ride(3600, 5, 220, 60);
const put = (power: number[]) => alone(seriesOf({ power }));
const of = (power: number[]) => measuredOf(latticeExcess, 'rescaled-series', put(power));
const scaled = (factor: number, from = 0, to = base.length) =>
  base.map((watts, i) => (i >= from && i < to ? Math.round(watts * factor) : watts));

test('a ride in whole watts shows no factor', () => {
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    expect(of(ride(3600, seed, 150 + 20 * seed, 20 + 10 * seed))).toMatchObject({ value: 0, charts: [] });
  }
});

test.each([1.02, 1.05, 1.0833, 1.12, 0.93])('recovers the factor %f of an hour within 0.005', (factor) => {
  const outcome = of(scaled(factor));
  expect(outcome.details.factor).toMatchObject({ unit: 'ratio' });
  expect(Math.abs(outcome.value / 100 - Math.abs(factor - 1))).toBeLessThan(0.005);
  expect(outcome.interval[0]).toBeLessThanOrEqual(outcome.value);
  expect(outcome.interval[1]).toBeGreaterThanOrEqual(outcome.value);
  expect(outcome.circumstances).toContain('throughout');
});

test('finds where a factor begins and ends, and that the rest has none', () => {
  const outcome = of(scaled(1.08, 1200, 2700));
  expect(Math.abs(outcome.value - 8)).toBeLessThan(0.1);
  const [from, to] = outcome.stretches[0]!;
  expect(Math.abs(from - 1200)).toBeLessThan(90);
  expect(Math.abs(to - 2700)).toBeLessThan(90);
  expect(outcome.circumstances).toEqual([]);
});

test('watts cut down after multiplying leave a comb as well', () => {
  expect(Math.abs(of(base.map((watts) => Math.floor(watts * 1.07))).value - 7)).toBeLessThan(0.1);
});

test('the chart marks the watts that never occur', () => {
  const chart = of(scaled(1.1)).charts[0]!;
  if (chart.kind !== 'comb') throw new Error(chart.kind);
  expect(chart.marked.every((watts) => (chart.counts[watts - chart.from] ?? 0) === 0)).toBe(true);
  expect(chart.marked.length / chart.counts.length).toBeCloseTo(1 - 1 / 1.1, 1);
});

test('coarse steps hide a factor: there it says that it cannot tell', () => {
  for (const step of [2, 5]) {
    const stepped = base.map((watts) => Math.round(watts / step) * step);
    const outcome = outcomeOf(latticeExcess, 'rescaled-series', put(stepped));
    expect(outcome).toMatchObject({ reason: 'coarse-steps' });
  }
});

test('says nothing of decimals, of what stands still, and of short rides', () => {
  const reason = (power: number[]) => outcomeOf(latticeExcess, 'rescaled-series', put(power));
  expect(reason(base.map((watts) => watts * 1.05))).toMatchObject({ reason: 'decimal-power' });
  const target = base.map((_, i) => [150, 280, 210][Math.floor(i / 120) % 3]! + (i % 2));
  expect(reason(target)).toMatchObject({ reason: 'too-few-readings' });
  expect(reason(base.slice(0, 200))).toMatchObject({ reason: 'too-short' });
});

test('is blind to a factor within its limits, and to smoothing afterwards', () => {
  expect(of(scaled(1.008)).value).toBe(0);
  const smooth = scaled(1.1).map((_, i, all) => Math.round((all[i]! + (all[i - 1] ?? all[i]!)) / 2));
  expect(of(smooth).value).toBe(0);
});

test('watts that no rider makes tell nothing, and take no time to look through', () => {
  const absurd = base.map((watts, i) => (i % 2 === 0 ? watts : 2 ** 31 + i));
  expect(of(absurd).count).toBeLessThanOrEqual(base.length / 2);
});
