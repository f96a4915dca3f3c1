import { expect, it } from 'vitest';
import { effortSpread } from '../../src/measure/effort-spread.ts';
import type { AgreementChart } from '../../src/types.ts';
import { measuredOf, ridden } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it('grows with the noise of a meter that wanders from effort to effort', () => {
  const wander = (spread: number) => [{ wander: { spread, tau: 60, ramps: false } }];
  const calm = measuredOf(effortSpread, 'wide-spread', ridden('calm', ride, wander(0)));
  const wild = measuredOf(effortSpread, 'wide-spread', ridden('calm', ride, wander(0.06)));
  expect(calm.value).toBeLessThan(6);
  expect(wild.value).toBeGreaterThan(calm.value + 3);
});

it('draws limits of agreement around the plain mean difference', () => {
  const { charts } = measuredOf(effortSpread, 'wide-spread', ridden('gain', ride, [{ gain: 1.05 }]));
  const [chart] = charts as AgreementChart[];
  expect(chart!.mean).toBeCloseTo(5, -0.5);
  expect(chart!.high - chart!.mean).toBeCloseTo(chart!.mean - chart!.low, 9);
});
