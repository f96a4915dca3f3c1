import { expect } from 'vitest';
import { Problem } from '../../src/problem.ts';
import type { Parsed } from '../../src/read/format.ts';

/** Holds what every reading must hold: a Problem, or columns of one length with a finite time throughout. */
export function sound(read: () => Parsed): void {
  let parsed: Parsed;
  try {
    parsed = read();
  } catch (error) {
    expect(error).toBeInstanceOf(Problem);
    return;
  }
  soundRecording(parsed);
}

export function soundRecording(parsed: Parsed): void {
  const { length } = parsed.time;
  expect(parsed.time.every(Number.isFinite)).toBe(true);
  const columns = [...Object.values(parsed.channels), ...parsed.extraMeters.map(({ power }) => power)];
  for (const column of columns) {
    expect(column).toHaveLength(length);
    expect(column.some(Number.isFinite)).toBe(true);
    expect(column.every((value) => Number.isNaN(value) || Number.isFinite(value))).toBe(true);
  }
  for (const [from, to] of parsed.pauses) expect(to).toBeGreaterThan(from);
  for (const { from, to } of parsed.laps) expect(to).toBeGreaterThan(from);
  for (const total of Object.values(parsed.totals)) expect(Number.isFinite(total)).toBe(true);
}
