import { expect, it } from 'vitest';
import { unexplainedDetail } from '../../src/measure/unexplained-detail.ts';
import { measuredOf, ridden } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 40 } as const;

it('is much for two meters', () => {
  const found = measuredOf(unexplainedDetail, 'shared-origin', ridden('two', ride, []));
  expect(found.circumstances).toEqual(['independent']);
});

it('is next to nothing for a second computed from the first', () => {
  const submission = ridden('derived', ride, []);
  const power = submission.primary.channels.power!.map((watts) => Math.round(0.95 * watts));
  const copy = {
    ...submission.primary,
    sha256: 'ab'.repeat(32),
    channels: { ...submission.primary.channels, power },
  };
  const found = measuredOf(unexplainedDetail, 'shared-origin', { ...submission, seconds: [copy] });
  expect(found.circumstances).toEqual([]);
  expect(found.value).toBeLessThan(0.02);
});
