import { expect, it } from 'vitest';
import { cadenceDependence } from '../../src/measure/cadence-dependence.ts';
import { powerDependence } from '../../src/measure/power-dependence.ts';
import { measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it('finds no slope in two meters of which one averages, where bands of either alone would show one', () => {
  const kernel = { shape: 'box', seconds: 3 } as const;
  const found = measuredOf(powerDependence, 'power-dependent-bias', ridden('null', ride, [{ kernel }]));
  expect(Math.abs(found.value)).toBeLessThan(1.5);
});

it('finds a difference that grows with power, and leaves cadence alone', () => {
  const submission = ridden('power', ride, [{ powerSlope: 0.04 }]);
  const found = measuredOf(powerDependence, 'power-dependent-bias', submission);
  expect(found.interval[0]).toBeGreaterThan(1);
  const cadence = measuredOf(cadenceDependence, 'cadence-dependent-bias', submission);
  expect(Math.abs(cadence.value)).toBeLessThan(2);
});

it('needs a range of power', () => {
  const all = subjectsOf(ridden('even', { kind: 'time trial', minutes: 40 }, []));
  all.seconds[0]!.series.channels.power!.set(all.primary.channels.power!.map(() => 250));
  all.primary.channels.power!.fill(251);
  expect(outcomeOf(powerDependence, 'power-dependent-bias', all)).toMatchObject({ reason: 'narrow-range' });
});
