import { expect, it } from 'vitest';
import { cadenceDependence } from '../../src/measure/cadence-dependence.ts';
import { powerDependence } from '../../src/measure/power-dependence.ts';
import type { Quantity } from '../../src/types.ts';
import { perfectMeter } from '../make/meter.ts';
import { covers, measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it('finds no slope in two meters of which one averages, where bands of either alone would show one', () => {
  const kernel = { shape: 'box', seconds: 3 } as const;
  const found = ['one', 'two', 'three', 'four', 'five'].map((seed) =>
    measuredOf(powerDependence, 'power-dependent-bias', ridden(seed, ride, [{ kernel }])),
  );
  const mean = found.reduce((sum, { value }) => sum + value, 0) / found.length;
  expect(Math.abs(mean)).toBeLessThan(1);
  expect(found.filter((one) => covers(one, 0)).length).toBeGreaterThanOrEqual(4);
});

it('finds a difference that grows with power, and leaves cadence alone', () => {
  const powerSlope = 0.04;
  const found = ['power', 'more', 'again'].map((seed) =>
    measuredOf(powerDependence, 'power-dependent-bias', ridden(seed, ride, [{ powerSlope }])),
  );
  for (const one of found) {
    const at = (watts: number) => 1 + (powerSlope * (watts - perfectMeter.powerPivot)) / 100;
    const [from, to] = [one.details.from, one.details.to] as Quantity[];
    expect(covers(one, 100 * (at(to!.value) / at(from!.value) - 1))).toBe(true);
    expect(one.interval[0]).toBeGreaterThan(0);
  }
  const submission = ridden('power', ride, [{ powerSlope }]);
  const cadence = measuredOf(cadenceDependence, 'cadence-dependent-bias', submission);
  expect(Math.abs(cadence.value)).toBeLessThan(2);
});

it('needs a range of power', () => {
  const all = subjectsOf(ridden('even', { kind: 'time trial', minutes: 40 }, []));
  all.seconds[0]!.series.channels.power!.set(all.primary.channels.power!.map(() => 250));
  all.primary.channels.power!.fill(251);
  expect(outcomeOf(powerDependence, 'power-dependent-bias', all)).toMatchObject({ reason: 'narrow-range' });
});
