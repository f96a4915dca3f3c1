import { describe, expect, it } from 'vitest';
import { viewOf } from '../../../src/event/decisions.ts';
import { renderOverview, renderSummaryCsv, renderSummaryMarkdown } from '../../../src/report/event/index.ts';
import type { Decision, EventView } from '../../../src/types.ts';
import { finding, recordOf, rowOf } from '../../event/make.ts';

const rider = (number: string, level: 'query' | 'refer' = 'query') =>
  rowOf(number, { grade: level, findings: [finding('late-drift', level)] });
const asked = (number: string, due?: string): Decision => ({
  rider: number,
  rule: 'late-drift',
  asked: '2026-03-15',
  ...(due === undefined ? {} : { due }),
});
const record = recordOf([
  rowOf('1'),
  rider('2'),
  rider('3', 'refer'),
  rider('4', 'refer'),
  rider('5'),
  rider('6'),
  rider('7'),
]);
const decisions: readonly Decision[] = [
  asked('4'),
  asked('5', '2026-03-19'),
  asked('6', '2026-03-18'),
  asked('7', '2026-03-22'),
];
const on = (today: string): EventView => viewOf(record, decisions, null, today);

describe('the order of an event', () => {
  const urgent = ['6', '5', '3', '2', '7', '4'];

  it('is the same in every form: what is overdue longest, what is to ask, what is due first', async () => {
    const view = on('2026-03-20');
    const page = await renderOverview(view);
    expect([...page.matchAll(/id="rider-(\d+)"/g)].map(([, number]) => number)).toEqual([...urgent, '1']);
    const lines = renderSummaryCsv(view).trim().split(/\r?\n/).slice(1);
    expect(lines.map((line) => line.split(',')[0])).toEqual([...urgent, '1']);
    const rows = renderSummaryMarkdown(view).match(/^\| \d+ /gm);
    expect(rows?.map((row) => row.slice(2).trim())).toEqual(urgent);
  });

  it('marks an answer as overdue from the day after it was due, and says by which day', async () => {
    const late = on('2026-03-20');
    // Numbers keep to their words.
    const page = (await renderOverview(late)).replaceAll('\u00A0', ' ');
    expect(page).toContain('Open on 2026-03-20: 2 answers overdue, 2 to ask, 2 answers awaited.');
    expect(page).toContain('<strong>answer overdue</strong> (due 2026-03-18)');
    expect(page).toContain('<option value="answer overdue">');
    expect(renderSummaryMarkdown(late)).toContain('answer overdue, due 2026-03-18');
    expect(renderSummaryCsv(late)).toMatch(/^6,.*late-drift: answer overdue,2026-03-18,/m);
    expect(await renderOverview(on('2026-03-18'))).not.toContain('overdue');
  });

  it('knows no day where no answer is due: the same bytes on every day', async () => {
    const [one, other] = ['2026-03-20', '2027-01-01'].map((day) => viewOf(record, [asked('4')], null, day));
    expect(await renderOverview(one!)).toBe(await renderOverview(other!));
  });
});
