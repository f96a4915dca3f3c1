import { describe, expect, it } from 'vitest';
import { renderHtml, renderLetter, renderMarkdown, renderText } from '../../src/report/index.ts';
import { byTitle, outline } from '../../src/report/outline.ts';
import type { Finding, Report } from '../../src/types.ts';
import { makeFinding, makeReport } from './make-report.ts';

const other = 'pair:0badcafe';

/** A report in which one rule asks about two pairs, and a second rule accounts for one of these questions. */
function ofTwoPairs(): Report {
  const raised = (parts: Partial<Finding> & { readonly rule: string }) =>
    makeFinding({ level: 'query', summary: { id: 'above', values: {} }, charts: [], ...parts });
  const findings = [
    raised({ rule: 'mean-bias', explainedBy: 'late-drift' }),
    raised({ rule: 'mean-bias', subject: 'pair:11111111' }),
    raised({ rule: 'mean-bias', subject: other }),
    raised({ rule: 'late-drift' }),
  ];
  const whole = makeReport({}, 600);
  const measurements = findings.map(({ rule, subject }) => ({
    ...whole.measurements.find((one) => one.rule === rule)!,
    subject,
  }));
  return { ...whole, grade: 'query', findings, measurements };
}

const told = outline(ofTwoPairs()).raised[0]!.findings;

describe('outline', () => {
  it('tells what leads before what it accounts for, and each names the other', () => {
    const accounted = told.find(({ accountedBy }) => accountedBy !== null)!;
    const leading = told[accounted.accountedBy!.number - 1]!;
    expect(leading.finding).toMatchObject({ rule: 'late-drift' });
    expect(leading.accountsFor).toEqual([{ title: accounted.title, number: accounted.number }]);
    expect(leading.number).toBeLessThan(accounted.number);
  });

  it('puts a rule’s own words under the first of its findings that stands alone', () => {
    const [first, second] = told.filter(
      ({ finding, accountedBy }) => finding.rule === 'mean-bias' && accountedBy === null,
    );
    expect(first!.under).toBeNull();
    expect(second!.under).toEqual({ title: first!.title, number: first!.number });
  });

  it('names a title once, with all findings that bear it', () => {
    const titles = byTitle(told).map(([title, findings]) => [title, findings.length]);
    expect(new Map(titles as [string, number][]).get(told[0]!.title)).toBe(3);
    expect(titles).toHaveLength(2);
  });
});

it('says that the cautious end counts where it does, and nothing of it beside an exact count', async () => {
  const report = makeReport({}, 600);
  const [first] = report.findings;
  const exact = { ...report, findings: [{ ...first!, interval: [first!.value!, first!.value!] as const }] };
  const text = (of: Report) =>
    renderText(of, { width: 100, colour: false, ascii: false }).replace(/\s+/g, ' ');
  expect(text(report)).toContain('held against these by the cautious end of the interval');
  expect(text(exact)).not.toContain('cautious end');
  expect(await renderHtml(report)).toContain('Its end nearer to innocence is held against the limits.');
  expect(await renderHtml(exact)).not.toContain('nearer to innocence');
});

it('names as in the way only what kept a question from being answered', () => {
  const report = makeReport({}, 600);
  const because = [
    { id: 'no-drift', count: 3 },
    { id: 'no-history', count: 2 },
  ] as const;
  const text = renderText(
    { ...report, reach: { ...report.reach, because } },
    { width: 100, colour: false, ascii: false },
  ).replace(/\s+/g, ' ');
  expect(text).toContain('What stood in the way: no earlier rides were handed in (2).');
});

describe('several findings of one rule', () => {
  const innocent = told.find(({ finding }) => finding.rule === 'mean-bias')!.rule!.innocent[0]!;
  const times = (text: string) => text.replaceAll(/\s+/g, ' ').split(innocent).length - 1;

  it('bring its explanations once, in every form', async () => {
    const report = ofTwoPairs();
    const text = renderText(report, { width: 80, colour: false, ascii: false });
    for (const form of [
      text,
      await renderHtml(report),
      renderMarkdown(report, { limit: 60_000 }),
      renderLetter(report),
    ])
      expect(times(form)).toBe(1);
    expect(text).toContain('would settle it, stand under');
    expect(text).toMatch(/It also accounts for \d, “[^”]+”\./);
  });

  it('stand once in what the grade rests on, by their numbers', () => {
    const text = renderText(ofTwoPairs(), { width: 100, colour: false, ascii: false });
    expect(text).toMatch(/It rests on: .*\(\d and \d\)/);
  });
});
