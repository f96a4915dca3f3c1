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

// A meter that reads 5 % high is the same meter in both rides; a time trial is ridden in a narrow range of power.
it('sets concordance beside that of honest meters in a ride whose power varies as much', () => {
  const [varied, even] = (['bunch race', 'time trial'] as const).map((kind) => {
    const wish = { kind, minutes: 60 };
    const { charts } = measuredOf(effortSpread, 'wide-spread', ridden('range', wish, [{ gain: 1.05 }]));
    return (charts as AgreementChart[])[0]!.concordance!;
  });
  expect(even!.value).toBeLessThan(varied!.value - 0.05);
  expect(even!.honest).toBeLessThan(varied!.honest - 0.05);
  for (const { value, low, high, honest } of [varied!, even!]) {
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    expect(value).toBeGreaterThan(honest);
  }
});
