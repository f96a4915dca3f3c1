import { type EventRecord, type EventRow, type EventRun, grades, type Raised } from '../../types.ts';
import { shorten } from '../clean.ts';
import { drawn, table, text, within } from '../markdown.ts';
import { bars } from '../mermaid.ts';
import { gravestFirst } from '../outline.ts';
import { counted, number } from '../words/number.ts';
import { foreignText, plain, type Sentence } from '../words/sentence.ts';
import {
  folderSaid,
  limitSaid,
  markSaid,
  moreMarksSaid,
  scopeSaid,
  termsSaid,
  uncheckedSaid,
} from './run-words.ts';
import { asking, countsSaid, crossCheckLines, gradeSaid, gradesSaid, numberSaid, titleOf } from './words.ts';

/** Findings, and lines of other kinds, that a summary shows: the overview shows them all. */
const mostFindings = 40;
const mostLines = 40;
const mostDifferences = 100;
/** Characters of one line that holds strangers' words. */
const longestLine = 240;
/** Rules that the drawing shows. */
const mostBars = 12;

/**
 * A run on a repository as a job summary in GitHub-flavoured Markdown.
 *
 * @param limit most bytes of UTF-8, which no count of characters exceeds
 */
export function renderRunSummary(record: EventRecord, run: EventRun, { limit }: { limit: number }): string {
  const parts = [
    `## ${text(foreignText(record.event.name))}`,
    [
      ...(record.rows.length === 0 ? [] : [`${countsSaid(record)}.`]),
      plain(scopeSaid(run, record)),
      termsSaid(run),
    ]
      .map(text)
      .join(' '),
    'A flag is a question, not a verdict. Each rider’s report shows the evidence, the innocent explanations and what would settle it.',
    ...byGrade(record),
    ...findings(record),
    ...list(
      'Seen only beside the other submissions',
      crossCheckLines(record).map(({ said }) => said),
    ),
    ...list('What could not be checked', uncheckedSaid(run, record)),
    ...(record.rows.length === 0 ? [] : [`### The full report\n\n${said(folderSaid(run, record))}`]),
    ...judgedBy(run),
  ];
  return within(parts, limit);
}

const said = (sentence: Sentence) => text(plain(sentence));

function list(title: string, sentences: readonly Sentence[]): readonly string[] {
  if (sentences.length === 0) return [];
  const lines = sentences.slice(0, mostLines).map((one) => `- ${said(one)}`);
  const more = sentences.length - lines.length;
  return [
    `### ${title}\n\n${lines.join('\n')}${more > 0 ? `\n- ${number(more)} more are in the overview` : ''}`,
  ];
}

/** How many of each grade, and in how many of the checks that could be made. */
function byGrade({ rows }: EventRecord): readonly string[] {
  if (rows.length === 0) return [];
  const groups = gradesSaid
    .map((word) => ({ word, rows: rows.filter((one) => gradeSaid(one) === word) }))
    .filter((group) => group.rows.length > 0);
  const drawing = bars(
    'Submissions by grade',
    'submissions',
    groups.map(({ word, rows: of }) => ({ name: word, value: of.length })),
  );
  return [
    `### Submissions by grade\n\n${table(
      ['grade', 'submissions', 'checks that could be made'],
      groups.map(({ word, rows: of }) => [word, number(of.length), reachOf(of)]),
    )}`,
    ...(drawing === null || groups.length < 2 ? [] : [drawn(drawing)]),
  ];
}

/** "12 to 24 of 38": a clear grade says as much as could be checked. */
function reachOf(rows: readonly EventRow[]): string {
  const judged = rows.map(({ reach }) => reach.judged);
  const all = rows.map(({ reach }) => reach.judged + reach.notApplicable + reach.failed);
  const across = (values: readonly number[]) => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return low === high ? number(low) : `${number(low)} to ${number(high)}`;
  };
  return `${across(judged)} of ${across(all)}`;
}

/** What asks for something, the gravest first, with its number and the limit that it passed. */
function findings(record: EventRecord): readonly string[] {
  const all = record.rows.flatMap((of) => asking(of).map((finding) => ({ of, finding })));
  if (all.length === 0) return [];
  const sorted = gravestFirst.flatMap((level: Raised) =>
    all.filter(({ finding }) => finding.level === level),
  );
  const rows = sorted
    .slice(0, mostFindings)
    .map(({ of, finding }) => [
      text(of.number),
      finding.level,
      text(shorten(titleOf(record, finding.rule), longestLine)),
      text(finding.value === null ? 'withheld' : numberSaid(finding)),
      text(limitSaid(finding) ?? ''),
    ]);
  const more = sorted.length - rows.length;
  return [
    [
      `### What asks for an answer\n\n${table(['submission', 'level', 'finding', 'number', 'limit'], rows)}`,
      ...(more > 0 ? [`${counted(more, 'finding')} more: the overview shows them all.`] : []),
    ].join('\n\n'),
    ...byRule(
      record,
      sorted.map(({ finding }) => finding.rule),
    ),
  ];
}

/** How often each finding was made. Titles may be strangers' words: the drawing bears letters. */
function byRule(record: EventRecord, rules: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const rule of rules) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  const most = [...counts].sort(([, a], [, b]) => b - a).slice(0, mostBars);
  // Where each was made once, the table has said it.
  if (most.length < 2 || most[0]![1] < 2) return [];
  const letter = (at: number) => String.fromCharCode('A'.charCodeAt(0) + at);
  const drawing = bars(
    'Findings by kind',
    'findings',
    most.map(([, value], at) => ({ name: letter(at), value })),
  );
  const key = most.map(([rule], at) => `${letter(at)} ${shorten(titleOf(record, rule), longestLine)}`);
  const more = counts.size - most.length;
  const legend = [`${key.join('; ')}.`, ...(more > 0 ? [`${counted(more, 'kind')} more.`] : [])].join(' ');
  return drawing === null ? [] : [`${drawn(drawing)} ${text(legend)}`];
}

/** Whoever reads a grade must be able to see by which limits it came about. */
function judgedBy({ rules }: EventRun): readonly string[] {
  return rules.map(({ name, sha256, differs }) => {
    const shown = differs.slice(0, mostDifferences).map((line) => `- ${text(shorten(line, longestLine))}`);
    const more = differs.length - shown.length;
    const sum = `Rule set ${text(foreignText(name))}, checksum \`${sha256}\`.`;
    const lines =
      differs.length === 0
        ? [`${sum} Nothing in it differs from the shipped rules.`]
        : [
            `${sum} What differs from the shipped rules:`,
            '',
            ...shown,
            ...(more > 0
              ? [`- ${counted(more, 'difference')} more: \`wattassay rules check\` lists them`]
              : []),
          ];
    return `### Judged by\n\n${lines.join('\n')}`;
  });
}

/** A mark on a submitted file. */
export interface RunMark {
  readonly level: 'warning' | 'notice';
  /** Whose submission; null: it stands for those that are too many. */
  readonly number: string | null;
  readonly said: string;
}

/** Marks of one level that GitHub shows of a step. */
const mostMarks = 10;

/**
 * Marks for the submissions that ask for something, the gravest first, at most ten of a level, the rest counted.
 * None is an error: those are the run's own.
 */
export function runMarks(record: EventRecord): readonly RunMark[] {
  const shared = new Set(
    (record.crossChecks?.shared ?? []).flatMap(({ a, b, level }) =>
      level === 'note' ? [] : [a.number, ...(b.number === null ? [] : [b.number])],
    ),
  );
  const asked = record.rows.filter(
    (of) => of.grade !== 'clear' || of.state === 'not audited' || shared.has(of.number),
  );
  const sorted = grades.toReversed().flatMap((grade) => asked.filter((of) => of.grade === grade));
  return (['warning', 'notice'] as const).flatMap((level): RunMark[] => {
    const own = sorted.filter((of) => (of.grade === 'refer') === (level === 'warning'));
    const kept = own.length > mostMarks ? own.slice(0, mostMarks - 1) : own;
    const marks = kept.map((of) => ({ level, number: of.number, said: markSaid(record, of) }));
    const more = own.length - kept.length;
    return more === 0 ? marks : [...marks, { level, number: null, said: moreMarksSaid(more) }];
  });
}
