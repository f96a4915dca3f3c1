import { expect, it } from 'vitest';
import { missingOf } from '../../src/judge/requirements.ts';

const all = ['power', 'cadence', 'heartRate', 'second recording', 'history'] as const;

it('names what an event requires and a submission lacks, each once', () => {
  const nothing = { channels: [], independentSeconds: 0, rides: 0 };
  expect(missingOf(all, nothing)).toEqual(all);
  expect(missingOf(['cadence', 'cadence'], nothing)).toEqual(['cadence']);
  expect(missingOf([], nothing)).toEqual([]);
  const everything = {
    channels: ['power', 'cadence', 'heartRate'] as const,
    independentSeconds: 1,
    rides: 1,
  };
  expect(missingOf(all, everything)).toEqual([]);
});
