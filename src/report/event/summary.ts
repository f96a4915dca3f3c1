import type { EventRow, EventView } from '../../types.ts';
import { showable } from '../clean.ts';
import { csvRow } from '../csv.ts';
import { text as markdownText } from '../markdown.ts';
import { plain, type Sentence } from '../words/sentence.ts';
import {
  changeWords,
  countsSaid,
  crossCheckLines,
  gradeSaid,
  lackSaid,
  numberSaid,
  openSaid,
  reachInShort,
  riderSaid,
  standingWords,
  titleOf,
} from './words.ts';

/** Submissions shown in a summary in Markdown; the overview shows them all. */
const mostRows = 200;

const head = [
  'number',
  'name',
  'category',
  'place',
  'grade',
  'judged',
  'not made',
  'broken',
  'missing',
  'refer',
  'query',
  'note',
  'open',
  'since',
  'why not audited',
  'report',
] as const;

/** One row a submission, for a spreadsheet. */
export function renderSummaryCsv(view: EventView): string {
  const rows = view.record.rows.map((row) => {
    const of = (level: string) =>
      row.findings.filter((one) => one.level === level).map(({ rule, subject }) => `${rule} (${subject})`);
    const matters = view.matters.get(row.number) ?? [];
    const change = view.changes?.get(row.number);
    return [
      row.number,
      row.name ?? '',
      row.category ?? '',
      row.place,
      row.state === 'audited' ? row.grade : row.state,
      row.reach.judged,
      row.reach.notApplicable,
      row.reach.failed,
      row.missing.join('; '),
      of('refer').join('; '),
      of('query').join('; '),
      of('note').join('; '),
      matters.map(({ rule, standing }) => `${rule}: ${standingWords[standing]}`).join('; '),
      change === undefined ? '' : changeWords[change],
      row.why ?? '',
      row.report === null ? '' : `${row.report}/report.html`,
    ];
  });
  return [head, ...rows].map(csvRow).join('');
}

/** The event on one page of Markdown: what is open first, then every grade. */
export function renderSummaryMarkdown(view: EventView): string {
  const { record, matters } = view;
  const open = openSaid([...matters.values()].flat().map(({ standing }) => standing));
  const lines = [
    `# ${markdownText(record.event.name)}`,
    '',
    `${record.rows.length} submissions. ${countsSaid(record)}. ${open === null ? 'Nothing is open.' : `Open: ${open}.`}`,
    '',
    'A flag is a question, not a verdict. Each rider’s report shows the evidence and its innocent explanations.',
    ...part(
      'Seen only in the event as a whole',
      crossCheckLines(record).map(({ said }) => `- ${text(said)}`),
    ),
    ...part('Submissions that ask for something', asking(view)),
    ...part('Since the earlier run', changed(view)),
    ...part(
      'Files that nobody was matched with',
      record.unmatched.map(
        ({ file, why, hint }) => `- ${markdownText(file)}: ${markdownText(why)}. ${markdownText(hint)}.`,
      ),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

function part(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', `## ${title}`, '', ...lines];
}

const text = (sentence: Sentence) => markdownText(plain(sentence));

function asking({ record, matters }: EventView): string[] {
  const rows = record.rows.filter(
    (row) => row.grade !== 'clear' || (matters.get(row.number) ?? []).length > 0,
  );
  if (rows.length === 0) return [];
  const shown = rows.slice(0, mostRows).map((row) => {
    const seen = row.findings
      .filter(({ level, explainedBy }) => level !== 'note' && explainedBy === null)
      .map((one) => `${titleOf(record, one.rule)} ${numberSaid(one)}`.trim());
    const lack = lackSaid(row);
    const said = [...seen.map((one) => markdownText(one)), ...(lack === null ? [] : [text(lack)])].join('; ');
    const standing = (matters.get(row.number) ?? [])[0]?.standing;
    return `| ${text(riderSaid(row))} | ${gradeSaid(row)} | ${reachInShort(row)} | ${said} | ${standing === undefined ? '' : standingWords[standing]} |`;
  });
  const more = rows.length - shown.length;
  return [
    '| rider | grade | checks made | what was seen | stands |',
    '| --- | --- | --- | --- | --- |',
    ...shown,
    ...(more > 0 ? ['', `${more} more are in the overview.`] : []),
  ];
}

function changed({ record, changes }: EventView): string[] {
  if (changes === null) return [];
  const rows = new Map<string, EventRow>(record.rows.map((row) => [row.number, row]));
  const all = [...changes].filter(([, change]) => change !== 'same');
  const same = changes.size - all.length;
  const lines = all.slice(0, mostRows).map(([number, change]) => {
    const row = rows.get(number);
    const grade = row === undefined ? '' : `, now ${gradeSaid(row)}`;
    return `- ${markdownText(showable(number))}: ${changeWords[change]}${grade}`;
  });
  return [...lines, `- the same: ${same}`];
}
