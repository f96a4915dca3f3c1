import { expect, it } from 'vitest';
import { differenceTrend } from '../../src/measure/difference-trend.ts';
import { covers, measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it.each([0, 8, 16])('recovers a drift of %d %% over an hour', (percent) => {
  const found = measuredOf(
    differenceTrend,
    'late-drift',
    ridden(`drift ${percent}`, ride, [{ driftPerHour: percent / 100 }]),
  );
  expect(found.value).toBeCloseTo(percent, -0.5);
  expect(found.circumstances).toEqual([]);
});

it('does not take a difference that grows with power for a drift', () => {
  const found = measuredOf(differenceTrend, 'late-drift', ridden('power', ride, [{ powerSlope: 0.03 }]));
  expect(covers(found, 0) || Math.abs(found.value) < 1).toBe(true);
});

it('tells a step in mid-ride from a drift', () => {
  const step = { at: 2200, torque: 4 };
  const found = measuredOf(differenceTrend, 'late-drift', ridden('step', ride, [{ offsetStep: step }]));
  expect(found.circumstances).toEqual(['in one step']);
  // A reader is told from when on: to within a block or two.
  expect(Math.abs(found.stretches[0]![0] - step.at)).toBeLessThan(60);
  expect(found.value).toBeGreaterThan(3);
});

it('shows a warm-up that crosses zero after a third of the ride', () => {
  const warming = { perDegree: 0.005, warming: 28, tau: 2000 };
  const found = measuredOf(
    differenceTrend,
    'late-drift',
    ridden('warm', ride, [{ gain: 0.91, temperature: warming }]),
  );
  expect(found.details.early).toMatchObject({ unit: '%' });
  expect((found.details.early as { value: number }).value).toBeLessThan(0);
  expect((found.details.late as { value: number }).value).toBeGreaterThan(1);
});

it('tells a pedal that drops out, in the ride half of which is twice as far off, as one step', () => {
  const halved = (power: Float64Array, { step }: { readonly step: number }) => {
    for (let i = 2400 / step; i < power.length; i++) power[i]! /= 2;
  };
  const found = measuredOf(differenceTrend, 'late-drift', ridden('pedal', ride, [{}, { twist: halved }]));
  expect(found.circumstances).toEqual(['in one step']);
  expect(found.value).toBeGreaterThan(90);
  expect(found.value).toBeLessThan(110);
});

it('guesses no growth of what the second did not tell', () => {
  const all = subjectsOf(ridden('part', ride, []));
  const [from] = all.window;
  const power = all.seconds[0]!.series.channels.power!;
  power.fill(Number.NaN, 0, from + 900).fill(Number.NaN, from + 2700);
  const found = outcomeOf(differenceTrend, 'late-drift', all);
  if (found.state !== 'measured') throw new Error(found.state);
  const { minutes, early, late } = found.details as Readonly<Record<string, { readonly value: number }>>;
  expect(minutes!.value).toBeGreaterThan(27);
  expect(minutes!.value).toBeLessThan(31);
  expect(found.stretches[0]![0]).toBeGreaterThan(from + 870);
  // Each third is one of those minutes, so that each has something to tell.
  expect(Math.abs(found.value)).toBeLessThan(3);
  expect(early!.value).not.toBe(0);
  expect(late!.value).not.toBe(0);
});

it('draws a step as a step', () => {
  const step = { at: 2200, torque: 4 };
  const { charts } = measuredOf(differenceTrend, 'late-drift', ridden('step', ride, [{ offsetStep: step }]));
  const [chart] = charts;
  if (chart?.kind !== 'ratio') throw new Error('no chart of the ratio');
  const levels = new Set(chart.trend.map(({ percent }) => Math.round(percent * 1e6)));
  expect(levels.size).toBe(2);
});
