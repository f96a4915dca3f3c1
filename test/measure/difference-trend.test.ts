import { expect, it } from 'vitest';
import { differenceTrend } from '../../src/measure/difference-trend.ts';
import { covers, measuredOf, ridden } from './pair/make.ts';

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
