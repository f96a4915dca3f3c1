import { expect, it } from 'vitest';
import { averagingDifference } from '../../src/measure/averaging-difference.ts';
import { measuredOf, ridden } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 40 } as const;

it.each([5, 10])('finds %d seconds of averaging, and whose they are', (seconds) => {
  const submission = ridden(`averaging ${seconds}`, ride, [{}, { kernel: { shape: 'box', seconds } }]);
  const found = measuredOf(averagingDifference, 'response-lag', submission);
  expect(Math.abs(found.value - seconds)).toBeLessThanOrEqual(1);
  expect(found.details.smoother).toBe('pair:0');
});

it('finds none between two crisp meters', () => {
  const kernel = { shape: 'box', seconds: 1 } as const;
  expect(
    measuredOf(averagingDifference, 'response-lag', ridden('crisp', ride, [{ kernel }, { kernel }])).value,
  ).toBe(1);
});
