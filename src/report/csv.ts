import type { Report, ReportMeasurement } from '../types.ts';
import { showable } from './clean.ts';
import { outline, type Told } from './outline.ts';
import { span } from './words/number.ts';
import { reasonInFull } from './words/reasons.ts';
import { plain } from './words/sentence.ts';
import { subjectName } from './words/subject.ts';

const head = [
  'rule',
  'title',
  'subject',
  'about',
  'state',
  'level',
  'value',
  'low',
  'high',
  'unit',
  'count',
  'note at least',
  'note at most',
  'query at least',
  'query at most',
  'refer at least',
  'refer at most',
  'stretches',
  'sentence',
] as const;

type Cell = string | number | null;

/** One row a check: the findings, then the checks that could not be made, which look like no pass. */
export function renderCsv(report: Report): string {
  const { raised, fine } = outline(report);
  const findings = [...raised.flatMap((group) => group.findings), ...fine].map(findingRow);
  const others = report.measurements
    .filter((one) => one.state !== 'measured')
    .map((one) => otherRow(report, one));
  return [head, ...findings, ...others].map(csvRow).join('');
}

/** One line of a table for spreadsheets. */
export function csvRow(cells: readonly Cell[]): string {
  return `${cells.map(cell).join(',')}\r\n`;
}

/** Quoted where needed. Text that a spreadsheet would run as a formula is kept from it by an apostrophe. */
function cell(value: Cell): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = showable(value);
  const safe = /^[\s]*[=+\-@]/.test(text) ? `'${text}` : text;
  return /[",\n\r;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function findingRow({ finding, title, about, claim }: Told): readonly Cell[] {
  const { limits } = finding;
  return [
    finding.rule,
    title,
    finding.subject,
    about,
    'measured',
    finding.level,
    finding.value,
    finding.interval?.[0] ?? null,
    finding.interval?.[1] ?? null,
    finding.unit,
    finding.count,
    ...(['note', 'query', 'refer'] as const).flatMap((level) => [
      limits[level]?.atLeast ?? null,
      limits[level]?.atMost ?? null,
    ]),
    finding.stretches.map(span).join(' '),
    plain(claim),
  ];
}

function otherRow(report: Report, one: ReportMeasurement): readonly Cell[] {
  const title = report.rules.items.find((rule) => rule.id === one.rule)?.title ?? one.rule;
  const why = one.reason === null ? '' : plain(reasonInFull(one.reason));
  return [
    one.rule,
    title,
    one.subject,
    subjectName(report, one.subject),
    one.state,
    ...Array<null>(13).fill(null),
    why,
  ];
}
