import type { EventRow, EventView } from '../../types.ts';
import { showable } from '../clean.ts';
import { csvRow } from '../csv.ts';
import { text as markdownText, table } from '../markdown.ts';
import { counted } from '../words/number.ts';
import { plain, type Sentence } from '../words/sentence.ts';
import { answerDue, inOrder } from './order.ts';
import {
  asking,
  changeWords,
  countsSaid,
  crossCheckLines,
  doneSaid,
  effectInShort,
  findingSaid,
  gradeSaid,
  lackSaid,
  onlyOfEvent,
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
  'answer due',
  'since',
  'why not audited',
  'report',
] as const;

/** One row a submission, for a spreadsheet: what is open first. */
export function renderSummaryCsv(view: EventView): string {
  const rows = inOrder(view).map(({ row, own }) => {
    const of = (level: string) =>
      row.findings.filter((one) => one.level === level).map(({ rule, subject }) => `${rule} (${subject})`);
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
      own.map(({ rule, standing }) => `${rule}: ${standingWords[standing]}`).join('; '),
      answerDue(own) ?? '',
      change === undefined ? '' : changeWords[change],
      row.why ?? '',
      row.report === null ? '' : `${row.report}/report.html`,
    ];
  });
  return [head, ...rows].map(csvRow).join('');
}

/** The event on one page of Markdown: what is open first, then every grade. */
export function renderSummaryMarkdown(view: EventView): string {
  const { record } = view;
  const lines = [
    `# ${markdownText(record.event.name)}`,
    '',
    `${counted(record.rows.length, 'submission')}. ${countsSaid(record)}. ${openSaid(view)}`,
    '',
    'A flag is a question, not a verdict. Each rider’s report shows the evidence and its innocent explanations.',
    ...part(
      'Seen only in the event as a whole',
      crossCheckLines(record).map(({ said }) => `- ${text(said)}`),
    ),
    ...part('Submissions that ask for something', asked(view)),
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

function asked(view: EventView): string[] {
  const { record } = view;
  const lines = inOrder(view).filter(({ row, own }) => row.grade !== 'clear' || own.length > 0);
  if (lines.length === 0) return [];
  const shown = lines.slice(0, mostRows).map(({ row, own }) => {
    const seen = asking(row).map((one) => {
      const common = effectInShort(record, row, one.rule);
      return findingSaid(record, one) + (common === null ? '' : ` (${common})`);
    });
    const lack = lackSaid(row);
    const together = onlyOfEvent(row, own).map((rule) => titleOf(record, rule));
    const said = [
      ...[...seen, ...together].map((one) => markdownText(one)),
      ...(lack === null ? [] : [text(lack)]),
    ].join('; ');
    const first = own[0];
    const stands =
      first === undefined
        ? ''
        : [standingWords[first.standing], ...doneSaid(first, record.event.name)].map(markdownText).join(', ');
    return [text(riderSaid(row)), gradeSaid(row), reachInShort(row), said, stands];
  });
  const more = lines.length - shown.length;
  return [
    table(['rider', 'grade', 'checks made', 'what was seen', 'stands'], shown),
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
