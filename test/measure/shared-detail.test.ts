import { describe, expect, it } from 'vitest';
import { sharedDetail } from '../../src/measure/shared-detail.ts';
import { type Draft, drawDraft, drawSubmission, realise } from '../make/index.ts';
import { measuredOf, ridden, subjectsOf } from './pair/make.ts';

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

/** A workout with two stops, over which the second's clock stands still, and the primary's as said. */
function stopped(draft: Draft, stops: Draft['demand']['stops'], pauses: 'recorded' | 'skipped') {
  const recordings = draft.recordings.map((entry, k) => ({
    ...entry,
    recorder: { ...entry.recorder, offset: 0, pauses: k === 0 ? pauses : ('clock stops' as const) },
  }));
  return realise({ ...draft, demand: { ...draft.demand, stops }, recordings });
}

describe('where a clock stopped in a workout, and no lag is secure', () => {
  const draft = drawDraft('D27', { kind: 'set-point session', minutes: 45 });
  const stops = [
    [800, 875],
    [1857, 1998],
  ] as const;
  const same = stopped(draft, stops, 'skipped');

  it('compares every stretch at its own lag', () => {
    expect(subjectsOf(same).seconds[0]!.alignment.secure).toBe(false);
    expect(measuredOf(sharedDetail, 'different-ride', same).interval[0]).toBeGreaterThan(0.33);
  });

  it('does so whichever of the two stopped', () => {
    const turned = { ...same, primary: same.seconds[0]!, seconds: [same.primary] };
    expect(measuredOf(sharedDetail, 'different-ride', turned).interval[0]).toBeGreaterThan(0.33);
  });

  it('finds no more in the same workout on another day', () => {
    const { seconds } = stopped({ ...draft, random: draft.random.fork('other day') }, stops, 'skipped');
    const found = measuredOf(sharedDetail, 'different-ride', { ...same, seconds });
    expect(found.interval[1]).toBeLessThan(0.33);
  });
});
