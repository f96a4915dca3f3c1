import { describe, expect, it } from 'vitest';
import { failLevels, statusOf } from '../../src/cli/status.ts';
import type { Grade, Level, Report } from '../../src/types.ts';
import { finding } from '../judge/make.ts';

const report = (grade: Grade, level: Level, lacks: Partial<{ missing: boolean; unreadable: boolean }> = {}) =>
  ({
    grade,
    findings: [finding(level)],
    missing: lacks.missing ? ['cadence'] : [],
    submission: { unreadable: lacks.unreadable ? [{ name: 'x', why: 'y' }] : [] },
  }) as unknown as Report;
const statuses = (given: Report) => failLevels.map((level) => statusOf(given, level));

describe('the exit status', () => {
  it('is 1 from the level on that fails', () => {
    // In the order note, query, refer, never.
    expect(statuses(report('clear', 'none'))).toEqual([0, 0, 0, 0]);
    expect(statuses(report('clear', 'note'))).toEqual([1, 0, 0, 0]);
    expect(statuses(report('query', 'query'))).toEqual([1, 1, 0, 0]);
    expect(statuses(report('refer', 'refer'))).toEqual([1, 1, 1, 0]);
  });

  it('is 1 where queries add up to a referral', () => {
    expect(statuses(report('refer', 'query'))).toEqual([1, 1, 1, 0]);
  });

  it('is 1 for what is incomplete, also behind a query', () => {
    expect(statuses(report('incomplete', 'none'))).toEqual([1, 1, 1, 0]);
    expect(statuses(report('query', 'query', { missing: true }))).toEqual([1, 1, 1, 0]);
    expect(statuses(report('query', 'query', { unreadable: true }))).toEqual([1, 1, 1, 0]);
  });
});
