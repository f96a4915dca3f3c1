import { expect, it } from 'vitest';
import { crossingTime } from '../../src/measure/crossing-time.ts';
import type { MeterSpec } from '../make/index.ts';
import { measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;

it('dates the crossing of a warm-up drift', () => {
  // Fast at first, then ever slower: 0.93·(1 + 0.13·(1 - e^(-t/2000))) is 1 after 29 minutes of the ride.
  const crossing = -2000 * Math.log(1 - (1 / 0.93 - 1) / 0.13);
  const twist: MeterSpec['twist'] = (power, { step }) => {
    for (let i = 0; i < power.length; i++) power[i]! *= 0.93 * (1 + 0.13 * -Math.expm1((-i * step) / 2000));
  };
  const long = { kind: 'time trial', minutes: 75 } as const;
  const submissions = ['a', 'b', 'c', 'd'].map((seed) => ridden(`warm ${seed}`, long, [{ twist }]));
  for (const submission of submissions) {
    const found = measuredOf(crossingTime, 'warmup-crossing', submission);
    const truth = (crossing - submission.truth.draft.demand.window[0]) / 60;
    // Meters without error of their own still differ by 0.3 %, which the drift covers in two minutes.
    expect(Math.abs(found.value - truth)).toBeLessThan(6);
    expect(found.details.direction).toBe('below to above');
  }
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
