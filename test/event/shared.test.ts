import { describe, expect, it } from 'vitest';
import { sharedContent } from '../../src/event/shared.ts';
import type { EventRow } from '../../src/types.ts';
import { rowOf } from './make.ts';

/** Marks of power at these samples, each of content of its own, the same in every recording. */
const marksAt = (...places: readonly number[]) =>
  places.map((at, k) => `p${at.toString(36)}.${(k + 1).toString(16).padStart(12, '0')}`).join(' ');
const row = (number: string, ...marks: readonly string[]): EventRow =>
  rowOf(number, {
    recordings: marks.map((text, k) => ({
      role: k === 0 ? 'primary' : `second ${k}`,
      file: 'ride.fit',
      sha256: `${number} ${k}`,
      from: 0,
      to: 3600,
      device: null,
      marks: text,
    })),
  });
const secondsShared = (a: string, b: string) =>
  sharedContent([row('1', a), row('2', b)], []).map(({ seconds }) => seconds);

describe('content shared', () => {
  it('is said from three marks on, at one distance', () => {
    expect(secondsShared(marksAt(0, 100), marksAt(500, 600))).toEqual([]);
    expect(secondsShared(marksAt(0, 100, 200), marksAt(500, 600, 700))).toEqual([90]);
    expect(secondsShared(marksAt(0, 100, 200), marksAt(500, 600, 701))).toEqual([]);
  });

  it('counts samples under two marks once: each marks thirty', () => {
    expect(secondsShared(marksAt(0, 10, 20), marksAt(0, 10, 20))).toEqual([50]);
  });

  it('is not told by a mark that more than fifty recordings bear', () => {
    const rows = (count: number) =>
      Array.from({ length: count }, (_, i) => row(String(i), marksAt(0, 100, 200)));
    expect(sharedContent(rows(50), [])).toHaveLength((50 * 49) / 2);
    expect(sharedContent(rows(51), [])).toEqual([]);
  });

  it('is not looked for between the recordings of one rider', () => {
    const marks = marksAt(0, 100, 200);
    expect(sharedContent([row('1', marks, marks)], [])).toEqual([]);
  });
});
