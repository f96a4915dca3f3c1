import { expect, it } from 'vitest';
import { cadenceDependence } from '../../src/measure/cadence-dependence.ts';
import { powerDependence } from '../../src/measure/power-dependence.ts';
import { measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'outdoor ride', minutes: 90 } as const;

it('finds a difference that depends on cadence, and leaves power alone', () => {
  const submission = ridden('cadence', ride, [{ cadenceSlope: 0.05 }]);
  const found = measuredOf(cadenceDependence, 'cadence-dependent-bias', submission);
  expect(found.interval[0]).toBeGreaterThan(2);
  const power = measuredOf(powerDependence, 'power-dependent-bias', submission);
  expect(Math.abs(power.value)).toBeLessThan(2);
});

it('finds nothing in clean meters', () => {
  const found = measuredOf(cadenceDependence, 'cadence-dependent-bias', ridden('clean', ride, []));
  expect(Math.abs(found.value)).toBeLessThan(1.5);
});

it('needs cadence', () => {
  const all = subjectsOf(ridden('none', ride, []));
  const without = (series: typeof all.primary) => {
    const { cadence: _, ...channels } = series.channels;
    return { ...series, channels };
  };
  const pair = { ...all.seconds[0]!, series: without(all.seconds[0]!.series) };
  const bare = { ...all, primary: without(all.primary), seconds: [pair] };
  expect(outcomeOf(cadenceDependence, 'cadence-dependent-bias', bare, pair)).toMatchObject({
    reason: 'no-channel',
  });
});

it('finds a trainer that depends on the speed of its flywheel, and says so in km/h', () => {
  const wish = { kind: 'bunch race', minutes: 60, places: ['trainer', 'pedal'] } as const;
  const submission = ridden('flywheel', { ...wish, places: [...wish.places] }, [{ speedSlope: 0.1 }]);
  const found = measuredOf(cadenceDependence, 'cadence-dependent-bias', submission);
  expect(found.details.to).toMatchObject({ unit: 'km/h' });
  expect(found.interval[0]).toBeGreaterThan(2);
});

it('leaves speed alone where there is no trainer: there it is that of the road', () => {
  const found = measuredOf(
    cadenceDependence,
    'cadence-dependent-bias',
    ridden('road', ride, [{ speedSlope: 0.1 }]),
  );
  expect(found.details.to).toMatchObject({ unit: 'rpm' });
});
