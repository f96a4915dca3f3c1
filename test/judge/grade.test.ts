import { describe, expect, it } from 'vitest';
import { gradeOf, reachOf } from '../../src/judge/grade.ts';
import type { Grades, Rule } from '../../src/types.ts';
import { finding, measurement, outcome, rule } from './make.ts';

const never: Grades = { queriesThatRefer: null, why: '' };
const two: Grades = { queriesThatRefer: 2, why: '' };
const rules: readonly Rule[] = [
  rule,
  { ...rule, id: 'sway' },
  { ...rule, id: 'gap', family: 'agreement' },
  { ...rule, id: 'lack', family: 'recording', highest: 'incomplete' },
];
const whole = { missing: [], unreadable: 0 };
const grade = (findings: Parameters<typeof gradeOf>[0], grades = never, lacks = whole) =>
  gradeOf(findings, { rules, grades }, lacks);

describe('the grade', () => {
  it('is the highest finding, notes aside', () => {
    expect(grade([])).toBe('clear');
    expect(grade([finding('none'), finding('note')])).toBe('clear');
    expect(grade([finding('note'), finding('query')])).toBe('query');
    expect(grade([finding('query'), finding('refer')])).toBe('refer');
  });

  it('is incomplete when something is missing and nothing weighs more', () => {
    const lacks = { missing: ['cadence' as const], unreadable: 0 };
    expect(gradeOf([], { rules, grades: never }, lacks)).toBe('incomplete');
    expect(gradeOf([finding('query')], { rules, grades: never }, lacks)).toBe('query');
    expect(gradeOf([], { rules, grades: never }, { missing: [], unreadable: 1 })).toBe('incomplete');
    expect(grade([finding('note', 'lack')])).toBe('incomplete');
    expect(grade([finding('none', 'lack')])).toBe('clear');
  });

  it('adds queries up only where the rules say so, and only across families', () => {
    const oneFamily = [finding('query', 'wobble'), finding('query', 'sway')];
    const twoFamilies = [finding('query', 'wobble'), finding('query', 'gap')];
    expect(grade(twoFamilies)).toBe('query');
    expect(grade(oneFamily, two)).toBe('query');
    expect(grade(twoFamilies, two)).toBe('refer');
  });
});

describe('the reach', () => {
  it('counts what was judged, what was not and why, the weightiest reason first', () => {
    const none = (reason: 'no-second' | 'too-short' | 'no-fact') =>
      measurement({ state: 'not applicable', reason, values: {} });
    const rows = [
      measurement(outcome(1)),
      none('too-short'),
      none('no-second'),
      none('no-second'),
      none('no-fact'),
      measurement({ state: 'failed', message: 'x' }),
    ];
    expect(reachOf(rows)).toEqual({
      judged: 1,
      notApplicable: 4,
      failed: 1,
      because: [
        { id: 'no-second', count: 2 },
        { id: 'failed', count: 1 },
        { id: 'no-fact', count: 1 },
        { id: 'too-short', count: 1 },
      ],
    });
  });
});
