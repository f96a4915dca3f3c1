import { expect, it } from 'vitest';
import { sharedDetail } from '../../src/measure/shared-detail.ts';
import { drawSubmission } from '../make/index.ts';
import { measuredOf, ridden } from './pair/make.ts';

it('is high for two meters on one ride', () => {
  expect(
    measuredOf(sharedDetail, 'different-ride', ridden('one', { kind: 'bunch race' }, [])).value,
  ).toBeGreaterThan(0.5);
});

it('is near nothing for another rider of the same race, who shares its surges', () => {
  const one = drawSubmission('anna', { kind: 'bunch race', minutes: 60, race: 'island' });
  const other = drawSubmission('berta', { kind: 'bunch race', minutes: 60, race: 'island' });
  const found = measuredOf(sharedDetail, 'different-ride', { ...one, seconds: other.seconds });
  expect(found.interval[1]).toBeLessThan(0.35);
});

it('tells two riders of a short race apart, of whom either channel alone might share something', () => {
  const race = { kind: 'bunch race', minutes: 30, race: 'short island' } as const;
  const one = drawSubmission('clara', race);
  for (const name of ['dora', 'emma', 'frida']) {
    const found = measuredOf(sharedDetail, 'different-ride', {
      ...one,
      seconds: drawSubmission(name, race).seconds,
    });
    expect(found.interval[1]).toBeLessThan(0.33);
  }
});

it('goes by cadence where averaging hides the detail of power', () => {
  const slow = { kernel: { shape: 'exponential', seconds: 30 } } as const;
  const found = measuredOf(
    sharedDetail,
    'different-ride',
    ridden('slow', { kind: 'bunch race' }, [{}, slow]),
  );
  expect(found.circumstances).toEqual([]);
  expect(found.value).toBeGreaterThan(0.5);
});
