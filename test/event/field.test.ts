import { describe, expect, it } from 'vitest';
import { fieldEffects, fieldRanges, repeatedDifferences, sharedDevices } from '../../src/event/field.ts';
import type { EventRow } from '../../src/types.ts';
import { finding, rowOf } from './make.ts';

const measured = (value: number, rule = 'sprint-overshoot', interval?: readonly [number, number]) => ({
  rule,
  subject: 'pair',
  value,
  unit: 'ratio' as const,
  interval: interval ?? ([value, value] as const),
});
const recorded = (device: string, from: number, sha256: string): EventRow['recordings'][number] => ({
  role: 'second',
  file: 'second.fit',
  sha256,
  from,
  to: from + 3600,
  device,
  marks: '',
});

describe('the field', () => {
  it('has a median that one far off does not move', () => {
    const values = [0.99, 1, 1.01, 1.02, 1.02, 1.03, 1.04, 1.31, 9];
    const rows = values.map((value, i) => rowOf(String(i + 1), { numbers: [measured(value)] }));
    expect(fieldRanges(rows)).toEqual([
      expect.objectContaining({ rule: 'sprint-overshoot', subject: 'pair', count: 9, median: 1.02 }),
    ]);
    // Median absolute deviation of these values is 0.02 (by hand); 1.4826 of it is 0.030.
    expect(fieldRanges(rows)[0]!.spread).toBeCloseTo(0.03, 3);
  });

  it('is no field with fewer than eight, and is one for each category', () => {
    const rows = Array.from({ length: 14 }, (_, i) =>
      rowOf(String(i), { category: i < 7 ? 'A' : 'B', numbers: [measured(1)] }),
    );
    expect(fieldRanges(rows)).toEqual([]);
  });

  it('shows an effect that hits everyone as one of the event', () => {
    const rows = Array.from({ length: 12 }, (_, i) =>
      rowOf(String(i), { findings: i < 6 ? [finding('outside-race-window', 'query')] : [] }),
    );
    expect(fieldEffects(rows)).toEqual([
      { category: null, rule: 'outside-race-window', of: 12, riders: ['0', '1', '2', '3', '4', '5'] },
    ]);
    expect(fieldEffects(rows.slice(2, 12))).toEqual([]);
  });

  it('calls a quarter of a category one of the event, and a smaller share not', () => {
    const rows = Array.from({ length: 21 }, (_, i) =>
      rowOf(String(i), { findings: i < 5 ? [finding('late-drift', 'query')] : [] }),
    );
    expect(fieldEffects(rows.slice(0, 20))).toMatchObject([{ of: 20, riders: { length: 5 } }]);
    expect(fieldEffects(rows)).toEqual([]);
  });

  it('looks at the event first where the few that there are all lie outside the race, of whatever category', () => {
    const rows = (outside: number) =>
      Array.from({ length: 4 }, (_, i) =>
        rowOf(String(i), {
          category: i < 2 ? 'A' : 'B',
          findings: i < outside ? [finding('outside-race-window', 'query')] : [],
        }),
      );
    expect(fieldEffects(rows(4))).toEqual([
      { category: null, rule: 'outside-race-window', of: 4, riders: ['0', '1', '2', '3'] },
    ]);
    expect(fieldEffects(rows(3))).toEqual([]);
    expect(fieldEffects(rows(4).slice(0, 2))).toEqual([]);
  });

  it('counts no note, and nobody who was not audited', () => {
    const rows = Array.from({ length: 8 }, (_, i) =>
      rowOf(String(i), {
        state: i < 4 ? 'audited' : 'not audited',
        findings: [finding('late-drift', 'query'), finding('mean-bias', 'note')],
      }),
    );
    expect(fieldEffects(rows)).toEqual([]);
  });

  it('shows a device in two hands at once, not one that was lent afterwards, nor one file twice', () => {
    const rows = (second: EventRow['recordings'][number]) => [
      rowOf('1', { recordings: [recorded('Tern 7', 0, 'a')] }),
      rowOf('2', { recordings: [second] }),
    ];
    expect(sharedDevices(rows(recorded('Tern 7', 100, 'b')))).toEqual([
      { device: 'Tern 7', riders: ['1', '2'] },
    ]);
    expect(sharedDevices(rows(recorded('Tern 7', 4000, 'b')))).toEqual([]);
    expect(sharedDevices(rows(recorded('Tern 7', 100, 'a')))).toEqual([]);
  });

  it('passes over a serial number that four riders bear at once: a habit of the recorder', () => {
    const rows = Array.from({ length: 4 }, (_, i) =>
      rowOf(String(i), { recordings: [recorded('App 1', 0, String(i))] }),
    );
    expect(sharedDevices(rows)).toEqual([]);
    expect(sharedDevices(rows.slice(1))).toEqual([{ device: 'App 1', riders: ['1', '2', '3'] }]);
  });

  it('shows meters that differ the same way at three events', () => {
    const at = (low: number, high: number) =>
      rowOf('7', { id: 'L-1', numbers: [measured((low + high) / 2, 'mean-bias', [low, high])] });
    const before = [
      { event: 'round 1', rows: [at(3, 5)] },
      { event: 'round 2', rows: [at(2, 6)] },
    ];
    expect(repeatedDifferences([at(3, 4)], before, ['mean-bias'])).toHaveLength(1);
    expect(repeatedDifferences([at(-1, 4)], before, ['mean-bias'])).toEqual([]);
    expect(repeatedDifferences([at(-4, -3)], before, ['mean-bias'])).toEqual([]);
    expect(repeatedDifferences([at(3, 4)], before.slice(1), ['mean-bias'])).toEqual([]);
  });
});
