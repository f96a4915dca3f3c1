import { expect, it } from 'vitest';
import { crossingTime } from '../../src/measure/crossing-time.ts';
import { measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it('dates the crossing of a warm-up drift: common practice, no source, 15 to 35 minutes in', () => {
  const warming = { perDegree: 0.005, warming: 28, tau: 2000 };
  const found = measuredOf(
    crossingTime,
    'warmup-crossing',
    ridden('warm', ride, [{ gain: 0.91, temperature: warming }]),
  );
  expect(found.value).toBeGreaterThan(8);
  expect(found.value).toBeLessThan(35);
  expect(found.details.direction).toBe('below to above');
});

it('says nothing of meters that agree, or that never meet', () => {
  expect(outcomeOf(crossingTime, 'warmup-crossing', subjectsOf(ridden('agree', ride, [])))).toMatchObject({
    reason: 'no-drift',
  });
  const apart = ridden('apart', ride, [{ gain: 1.2, driftPerHour: 0.1 }]);
  expect(outcomeOf(crossingTime, 'warmup-crossing', subjectsOf(apart))).toMatchObject({
    reason: 'no-crossing',
  });
});
