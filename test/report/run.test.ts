import { describe, expect, it } from 'vitest';
import { renderRunSummary, runMarks } from '../../src/report/event/index.ts';
import type { EventRun } from '../../src/types.ts';
import { finding, recordOf, rowOf } from '../event/make.ts';

const limit = 65_536;

const run = (more: Partial<EventRun> = {}): EventRun => ({
  scope: { kind: 'all', because: null },
  terms: { from: 'checkout', because: null },
  rules: [{ name: 'shipped', sha256: 'a'.repeat(64), differs: [] }],
  entries: 3,
  single: 0,
  remarks: [],
  unmatched: 0,
  compared: null,
  folder: 'audited',
  ...more,
});

const many = (count: number, more: Parameters<typeof rowOf>[1]) =>
  Array.from({ length: count }, (_, at) => rowOf(String(at + 1), more));

describe('the summary of a run', () => {
  it('counts grades with their reach, the gravest first', () => {
    const record = recordOf([
      rowOf('1', { reach: { judged: 12, notApplicable: 20, failed: 0 } }),
      rowOf('2', { reach: { judged: 24, notApplicable: 8, failed: 0 } }),
      rowOf('3', { grade: 'refer', findings: [finding('late-drift', 'refer')] }),
    ]);
    const summary = renderRunSummary(record, run(), { limit });
    expect(summary).toContain('| Refer | 1 | 20 of 30 |\n| Clear | 2 | 12 to 24 of 32 |');
    expect(summary).toMatch(/x-axis \["Refer", "Clear"\]\n.*\n {2}bar \[1, 2\]/);
    expect(summary).toContain('Submissions by grade: Refer 1, Clear 2.');
  });

  it('shows what asks for an answer with number and limit, and leaves out what another finding explains', () => {
    const record = recordOf([
      rowOf('7', {
        grade: 'query',
        findings: [
          finding('late-drift', 'query'),
          { ...finding('other', 'query'), explainedBy: 'late-drift' },
          finding('third', 'note'),
        ],
      }),
    ]);
    const summary = renderRunSummary(record, run(), { limit });
    expect(summary).toContain(
      '| 7 | query | The difference grows through the ride | 12\u00a0% (11 to 13\u00a0%) | at least 8\u00a0% |',
    );
    expect(summary).not.toMatch(/other|third/);
  });

  it('draws findings by kind where some were made more than once, the most frequent first', () => {
    const asked = (number: string, rule: string) =>
      rowOf(number, { grade: 'query', findings: [finding(rule, 'query')] });
    const once = recordOf([asked('1', 'late-drift'), asked('2', 'other')]);
    expect(renderRunSummary(once, run(), { limit })).not.toContain('Findings by kind');
    const kinds = Array.from({ length: 13 }, (_, at) => asked(String(at + 3), `kind-${at}`));
    const often = recordOf([...kinds, asked('1', 'late-drift'), asked('2', 'late-drift')]);
    const summary = renderRunSummary(often, run(), { limit });
    expect(summary).toMatch(/bar \[2(, 1){11}\]/);
    expect(summary).toContain('A The difference grows through the ride; B ');
    expect(summary).toContain('2\u00a0kinds more.');
  });

  it('says withheld where a number is, and no more', () => {
    const bare = { ...finding('late-drift', 'query'), value: null, interval: null, limits: {} };
    const record = recordOf([rowOf('7', { grade: 'query', findings: [bare] })]);
    expect(renderRunSummary(record, run(), { limit })).toContain('| withheld |  |');
  });

  it('says why everything was audited, and by whose terms, for every reason', () => {
    const reasons = [
      'no change',
      'no repository',
      'first push',
      'no base',
      'too much',
      'workflow',
      'event new',
      'event was wrong',
      'part',
    ] as const;
    const said = reasons.map((because) =>
      renderRunSummary(recordOf([rowOf('1')]), run({ scope: { kind: 'all', because } }), { limit }),
    );
    expect(new Set(said).size).toBe(reasons.length);
    for (const one of said) expect(one).toMatch(/Every submission was audited, since [^.]/);
    for (const because of ['no base', 'event new', 'rules new', 'too much'] as const) {
      const terms = { from: 'checkout', because } as const;
      expect(renderRunSummary(recordOf([]), run({ terms }), { limit })).toContain(
        'Look at what this change does to them',
      );
    }
  });

  it('says what could not be checked, and never as if it had passed', () => {
    const record = recordOf([
      rowOf('1', { state: 'not audited', grade: 'incomplete', why: 'No recording was handed in.' }),
      rowOf('2', { grade: 'incomplete', missing: ['second recording'] }),
      rowOf('3', { reach: { judged: 1, notApplicable: 1, failed: 1 } }),
    ]);
    const scope = { kind: 'changed', since: 'c'.repeat(40), gone: ['9'], links: 2 } as const;
    const summary = renderRunSummary(
      record,
      run({ scope, single: 1, unmatched: 4, compared: false, remarks: ['no place is known'] }),
      { limit },
    );
    for (const words of [
      'Not audited: 1. “No recording was handed in.”',
      'not all there: 2.',
      'Without a second recording: 1 of 3.',
      'A check broke, by a fault of the program: 3.',
      '4\u00a0files could not be matched',
      '2\u00a0links passed over',
      'there are no fingerprints',
      'What asks for the whole field',
      'No place is known.',
      'No longer there: 9.',
      '3 of 3\u00a0submissions',
    ]) {
      expect(summary).toContain(words);
    }
  });

  it('gives each thing that differs from the shipped rules, beside the checksum', () => {
    const differs = [
      'late-drift › limits › query › atLeast: 3 → 30',
      'over-smoothed: switched off: <b>No</b>',
    ];
    const rules = [{ name: 'ours', sha256: 'b'.repeat(64), differs }];
    const summary = renderRunSummary(recordOf([rowOf('1')]), run({ rules }), { limit });
    expect(summary).toContain(`checksum \`${'b'.repeat(64)}\``);
    expect(summary).toContain('- late-drift › limits › query › atLeast: 3 → 30');
    expect(summary).toContain('switched off: &lt;b&gt;No&lt;/b&gt;');
  });

  it('keeps within its bytes whatever comes, and says so', () => {
    const long = '|'.repeat(5000);
    const titles = Object.fromEntries(
      Array.from({ length: 200 }, (_, at) => [`rule-${at}`, { title: long, family: 'trace' as const }]),
    );
    const rows = Array.from({ length: 2000 }, (_, at) =>
      rowOf(String(at), { grade: 'refer', why: long, findings: [finding(`rule-${at % 200}`, 'refer')] }),
    );
    const differs = Array.from({ length: 5000 }, () => long);
    const summary = renderRunSummary(
      recordOf(rows, { titles }),
      run({ rules: Array.from({ length: 9 }, () => ({ name: long, sha256: 'b'.repeat(64), differs })) }),
      { limit },
    );
    expect(new TextEncoder().encode(summary).length).toBeLessThanOrEqual(limit);
    expect(summary).toContain('Left out here for length');
    expect(summary).toContain('findings more: the overview shows them all');
  });
});

describe('marks on files', () => {
  it('are at most ten of a level, the gravest first, the rest counted, and none is an error', () => {
    const record = recordOf([
      ...many(14, { grade: 'query', findings: [finding('late-drift', 'query')] }),
      ...many(10, { grade: 'refer', findings: [finding('late-drift', 'refer')] }),
      ...many(3, { grade: 'incomplete', missing: ['power'] }),
      ...many(5, {}),
    ]);
    const marks = runMarks(record);
    const of = (level: string) => marks.filter((mark) => mark.level === level);
    expect([of('warning').length, of('notice').length, marks.length]).toEqual([10, 10, 20]);
    expect(of('warning').every(({ number }) => number !== null)).toBe(true);
    expect(of('notice').at(-1)).toMatchObject({
      number: null,
      said: expect.stringMatching(/^8\u00a0submissions more/),
    });
  });

  it('ask, and accuse nobody', () => {
    const record = recordOf([rowOf('1', { grade: 'refer', findings: [finding('late-drift', 'refer')] })]);
    const [mark] = runMarks(record);
    expect(mark?.said).toMatch(/^Submission 1: refer\. .*This is a question, not a verdict/);
  });

  it('are also on a clear submission that shares a recording with another', () => {
    const shared = [
      {
        rule: 'duplicate-submission',
        level: 'refer' as const,
        seconds: 900,
        alike: [{ what: 'power' as const, seconds: 900 }],
        a: { number: '1', role: 'primary' },
        b: { event: null, number: '2', role: 'primary' },
      },
    ];
    const crossChecks = { shared, devices: [], field: [], effects: [], repeated: [] };
    const marks = runMarks(recordOf([rowOf('1'), rowOf('2'), rowOf('3')], { crossChecks }));
    expect(marks.map(({ number }) => number)).toEqual(['1', '2']);
  });
});
