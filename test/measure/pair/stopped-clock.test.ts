import { expect, it } from 'vitest';
import { legsOf } from '../../../src/measure/pair/stopped-clock.ts';
import { normalise } from '../../../src/normalise/index.ts';
import type { Stretch } from '../../../src/types.ts';
import { drawDraft, realise } from '../../make/index.ts';
import { ruleOf } from '../measure-of.ts';

const options = ruleOf('different-ride').options as never;

/** A workout on a recorder that stops with its rider, or records that they stand. */
function workout(stops: readonly Stretch[], pauses: 'recorded' | 'skipped') {
  const draft = drawDraft('standing', { kind: 'set-point session', minutes: 60, seconds: 0 });
  const recordings = draft.recordings.map((entry) => ({
    ...entry,
    recorder: { ...entry.recorder, pauses },
  }));
  const { primary } = realise({ ...draft, demand: { ...draft.demand, stops }, recordings });
  return normalise(primary, 'primary').series;
}

it.each(['recorded', 'skipped'] as const)('splits a ride where its rider stood: %s', (pauses) => {
  const series = workout([[1200, 1320]], pauses);
  const legs = legsOf(series, [0, series.length], options);
  expect(legs.length).toBe(2);
  expect(Math.abs(legs[0]!.stretch[1] - 1200)).toBeLessThan(5);
  expect(Math.abs(legs[1]!.stretch[0] - 1320)).toBeLessThan(5);
  // A clock stops three seconds after its rider.
  expect(legs[1]!.held[0]).toBeLessThanOrEqual(117);
  expect(legs[1]!.held[1]).toBeGreaterThanOrEqual(117);
});

it('splits nothing where nobody stood still, or only at an end', () => {
  for (const stops of [[], [[60, 200]]] as const) {
    const series = workout(stops, 'recorded');
    expect(legsOf(series, [0, series.length], options)).toEqual([]);
  }
});

it('leaves out a stretch too short to tell its lag, and counts both stops beside it', () => {
  const stops: Stretch[] = [
    [1200, 1320],
    [1420, 1480],
  ];
  const series = workout(stops, 'recorded');
  const legs = legsOf(series, [0, series.length], options);
  expect(legs.length).toBe(2);
  expect(Math.abs(legs[1]!.held[1] - 180)).toBeLessThan(6);
});
