import { describe, expect, it } from 'vitest';
import { decisionsFrom, mattersOf, viewOf, withDecision } from '../../src/event/decisions.ts';
import { changesSince } from '../../src/event/since.ts';
import { titleOf } from '../../src/report/event/words.ts';
import type { Decision } from '../../src/types.ts';
import { finding, recordOf, rowOf } from './make.ts';

const row = rowOf('14', { id: 'L-14', grade: 'refer', findings: [finding('late-drift', 'refer')] });
const { event } = recordOf([]);
const standing = (more: Partial<Decision>) =>
  mattersOf(row, event, [{ rider: '14', rule: 'late-drift', ...more }], [], '2026-03-20')[0]?.standing;

describe('decisions', () => {
  it('move a matter from asking to deciding to decided', () => {
    expect(mattersOf(row, event, [], [], '2026-03-20')).toEqual([
      { rule: 'late-drift', standing: 'to ask', decision: null },
    ]);
    expect(standing({ asked: '2026-03-15' })).toBe('asked');
    expect(standing({ asked: '2026-03-15', due: '2026-03-20' })).toBe('asked');
    expect(standing({ asked: '2026-03-15', due: '2026-03-19' })).toBe('overdue');
    expect(standing({ asked: '2026-03-15', due: '2026-03-19', answered: '2026-03-21' })).toBe('to decide');
    expect(standing({ asked: '2026-03-15', answered: '2026-03-16' })).toBe('to decide');
    expect(standing({ decision: 'stands' })).toBe('decided');
    expect(standing({ decision: 'does not stand', appeal: 'open' })).toBe('to decide');
    expect(standing({ decision: 'explained' })).toBe('explained');
  });

  it('let an accepted explanation speak at a later event until it expires, for the same rider only', () => {
    const accepted = { event: 'Round 0', id: 'L-14', rider: '9', decision: 'explained' as const };
    expect(standing({ ...accepted, until: '2026-03-14' })).toBe('explained');
    expect(standing({ ...accepted, until: '2026-03-13' })).toBe('to ask');
    expect(standing({ ...accepted, until: '2026-12-31', id: 'L-15' })).toBe('to ask');
  });

  it('show an explanation that was accepted also when it holds no longer', () => {
    const once: Decision = {
      event: 'Round 0',
      id: 'L-14',
      rider: '9',
      rule: 'late-drift',
      decision: 'explained',
      until: '2026-03-13',
    };
    expect(mattersOf(row, event, [once], [], '2026-03-20')).toEqual([
      { rule: 'late-drift', standing: 'to ask', decision: once },
    ]);
  });

  it('never reach a rider through a number that another event gave to somebody else', () => {
    expect(standing({ event: 'Round 0', decision: 'explained', until: '2026-12-31' })).toBe('to ask');
  });

  it('must say by whom and why, and expire only where an explanation was accepted', async () => {
    const wrong = { decisions: [{ rider: '1', rule: 'x', decision: 'stands', until: '2026-01-01' }] };
    await expect(decisionsFrom(wrong, 'd.json')).rejects.toMatchObject({ errors: { length: 3 } });
    await expect(
      decisionsFrom({ decisions: [{ rider: '1', rule: 'x', asked: 'soon' }] }, 'd.json'),
    ).rejects.toThrow();
  });

  it('may be about a device in several hands, which nobody is asked about by itself', () => {
    const two = rowOf('15', { id: 'L-15' });
    const devices = [{ device: 'a head unit', riders: ['14', '15'] }];
    const crossChecks = { shared: [], devices, field: [], effects: [], repeated: [] };
    const record = recordOf([rowOf('14'), two, rowOf('16')], { crossChecks });
    const matters = (...decisions: Decision[]) => viewOf(record, decisions, null, '2026-03-20').matters;
    expect([...matters().values()].flat()).toEqual([]);
    const asked: Decision = { rider: '14', rule: 'shared-device', asked: '2026-03-15', due: '2026-03-18' };
    const taken = matters(asked, { ...asked, rider: '16' });
    expect(taken.get('14')).toEqual([{ rule: 'shared-device', standing: 'overdue', decision: asked }]);
    // The other rider is not asked with them, and where nothing is shared nothing is open.
    expect(taken.get('15')).toEqual([]);
    expect(taken.get('16')).toEqual([]);
    const once: Decision = { ...asked, rider: '3', id: 'L-15', event: 'Round 0', decision: 'explained' };
    expect(matters({ ...once, until: '2026-12-31' }).get('15')).toMatchObject([{ standing: 'explained' }]);
    expect(titleOf(record, 'shared-device')).toBe('One device in several hands');
  });

  it('keep one entry a rider, rule and event', () => {
    const first: Decision = { rider: '1', rule: 'x', event: 'e', asked: '2026-01-01' };
    expect(withDecision([first], { rider: '1', rule: 'x', event: 'e', answered: '2026-01-02' })).toEqual([
      { ...first, answered: '2026-01-02' },
    ]);
    expect(withDecision([first], { rider: '1', rule: 'x', event: 'f' })).toHaveLength(2);
  });
});

describe('since an earlier run', () => {
  it('says what is new, better, worse, the same and gone', () => {
    const before = recordOf([rowOf('1'), rowOf('2', { grade: 'query' }), rowOf('3'), rowOf('4')]);
    const now = recordOf([
      rowOf('1'),
      rowOf('2'),
      rowOf('3', { findings: [finding('x', 'note')] }),
      rowOf('5'),
    ]);
    expect(Object.fromEntries(changesSince(before, now))).toEqual({
      1: 'same',
      2: 'better',
      3: 'worse',
      4: 'gone',
      5: 'new',
    });
  });
});
