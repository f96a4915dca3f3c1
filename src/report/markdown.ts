import type { Chart, Raised, Report } from '../types.ts';
import { picture } from './chart/index.ts';
import { extent } from './chart/reduce.ts';
import { condense, spark } from './chart/spark.ts';
import { clean } from './clean.ts';
import { type Mermaid, mermaid } from './mermaid.ts';
import { type Outline, outline, type Told } from './outline.ts';
import { cautions } from './words/cautions.ts';
import {
  becauseSaid,
  gradeMeans,
  gradeWord,
  levelWords,
  missingSaid,
  reachSaid,
  unreadableSaid,
} from './words/grade.ts';
import { counted, spans } from './words/number.ts';
import { capital, foreign, type Sentence } from './words/sentence.ts';
import { damageSaid } from './words/story.ts';
import { meterName } from './words/subject.ts';

export interface MarkdownOptions {
  /** Most bytes of UTF-8, which no count of characters exceeds. */
  readonly limit: number;
}

/** Room kept for the line that says how much was left out. */
const closing = 200;
const sparkCells = 48;
/** More drawings than this make a summary slow to read. */
const mostDrawings = 2;

/**
 * The report as GitHub-flavoured Markdown for a job summary or a comment: grade, table of findings, drawings,
 * what to do. Whole parts are left out, the least urgent first, to keep within the limit.
 */
export function renderMarkdown(report: Report, { limit }: MarkdownOptions): string {
  const told = outline(report);
  const findings = told.raised.flatMap((group) => group.findings);
  const parts = [
    ...head(report),
    ...findingTable(findings),
    ...list(
      'What to do next',
      told.next.flatMap(({ whats }) => whats.map(text)),
    ),
    ...list('Before you decide', cautions(report).map(text)),
    ...findings.map((one) => details(report, one)),
    ...drawings(report, findings),
    ...unchecked(told),
    `Checksums: ${report.inputs.map(({ name, sha256 }) => `${code(foreign(name).foreign)} ${code(sha256)}`).join(', ')}`,
  ];
  return within(parts, limit);
}

const bytes = (part: string) => new TextEncoder().encode(part).length;

/** Parts one behind another, as many as the bytes allow, with a sentence about what is left out. */
export function within(parts: readonly string[], limit: number): string {
  const kept: string[] = [];
  let size = 0;
  for (const [index, part] of parts.entries()) {
    size += bytes(part) + 2;
    if (size > limit - (index === parts.length - 1 ? 0 : closing)) {
      kept.push(
        `Left out here for length: ${counted(parts.length - index, 'part')}. The full report holds them.`,
      );
      break;
    }
    kept.push(part);
  }
  return `${kept.join('\n\n')}\n`;
}

/** Text that Markdown, HTML inside it, and GitHub's own links and mentions must leave as it is. */
export function text(words: string): string {
  return clean(words)
    .replace(/[&<>]/g, (character) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[character]!)
    .replace(/[\\`*_[\]~|!]/g, '\\$&')
    .replace(/[@#]|:(?=\/\/)|www(?=\.)/gi, '$&\u2060');
}

/** A stranger's words as code: a fence longer than any run of backticks inside. */
export function code(words: string): string {
  const inside = clean(words).replaceAll('|', '\\|');
  const longest = Math.max(0, ...(inside.match(/`+/g) ?? []).map((run) => run.length));
  const fence = '`'.repeat(longest + 1);
  const pad = inside.startsWith('`') || inside.endsWith('`') || inside === '' ? ' ' : '';
  return fence + pad + inside + pad + fence;
}

function sentence(pieces: Sentence): string {
  return pieces.map((piece) => (typeof piece === 'string' ? text(piece) : code(piece.foreign))).join('');
}

function head(report: Report): readonly string[] {
  return [
    `## ${text(`${gradeWord(report.grade)}. ${gradeMeans(report.grade)}`)}`,
    [reachSaid(report), damageSaid(report), unreadableSaid(report), missingSaid(report), becauseSaid(report)]
      .filter((part) => part !== null)
      .map(text)
      .join(' '),
    `Primary recording: ${code(foreign(report.submission.primary.name).foreign)}`,
  ];
}

function findingTable(findings: readonly Told[]): readonly string[] {
  if (findings.length === 0) return [];
  return [
    table(
      ['level', 'finding', 'about', 'number', 'limits', 'when'],
      findings.map((one) => [
        levelWords[one.finding.level as Raised],
        text(one.title),
        text(one.about),
        text(one.value ?? 'withheld'),
        text(one.limits ?? ''),
        text(spans(one.finding.stretches, 2)),
      ]),
    ),
  ];
}

const tableRow = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;

/** A table of cells that are Markdown already. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map(tableRow).join('\n');
}

function list(title: string, items: readonly string[]): readonly string[] {
  return items.length === 0 ? [] : [`### ${title}\n\n${items.map((item) => `- ${item}`).join('\n')}`];
}

function details(report: Report, told: Told): string {
  const { rule, finding } = told;
  const chart = report.charts.find(({ id }) => id === finding.charts[0]);
  return [
    `### ${text(told.several ? `${told.title} (${told.about})` : told.title)}`,
    [told.claim, ...told.remarks].map(sentence).join(' '),
    told.honest === null ? '' : text(told.honest),
    told.accountedBy === null ? '' : `Accounted for by: ${text(told.accountedBy.title)}.`,
    told.accountsFor.length === 0
      ? ''
      : `It accounts as well for: ${told.accountsFor.map(({ title }) => text(title)).join('; ')}.`,
    chart === undefined ? '' : strip(report, chart),
    rule === null || rule.innocent.length === 0 || told.accountedBy !== null || told.under !== null
      ? ''
      : `It may be innocent:\n\n${rule.innocent.map((one) => `- ${text(one)}`).join('\n')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

function strip(report: Report, chart: Chart): string {
  const { strip: row } = picture(chart, {
    id: '',
    marked: [],
    meter: (subject) => meterName(report, subject),
  });
  if (row === null) return '';
  const cells = condense(row.values, sparkCells);
  const shown = extent(cells);
  if (shown === null) return '';
  return `${code(spark(cells, shown, false))} ${text(`${row.label}, ${row.say(shown[0])} to ${row.say(shown[1])}`)}`;
}

function drawings(report: Report, findings: readonly Told[]): readonly string[] {
  const wanted = new Set(findings.flatMap((one) => one.finding.charts));
  return report.charts
    .filter((chart) => wanted.has(chart.id))
    .map(mermaid)
    .filter((drawing) => drawing !== null)
    .slice(0, mostDrawings)
    .map((drawing) => `<details><summary>${drawing.title}</summary>\n\n${drawn(drawing)}\n\n</details>`);
}

/** A drawing for GitHub to render, with its legend as text. */
export function drawn({ source, legend }: Mermaid): string {
  return `\`\`\`mermaid\n${source}\n\`\`\`\n\n${text(legend)}`;
}

const inFull = (why: Sentence | null) => (why === null ? '' : ` (${sentence(why)})`);

function unchecked({ unchecked: groups }: Outline): readonly string[] {
  return list(
    'What could not be checked, and why',
    groups.map(
      ({ because, checks }) =>
        `${sentence(capital(because))}. ${checks.map((one) => text(one.question) + inFull(one.why)).join(' ')}`,
    ),
  );
}
