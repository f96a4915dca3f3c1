import { nearest } from '../math/nearest.ts';
import { Problem } from '../problem.ts';
import type { EventRider } from '../types.ts';
import { numberPattern, sameNumber, whyNoPath } from './event-file.ts';

/** Lines beyond which a list is no results list. */
const mostLines = 20_000;

/** What a column may hold, by the headings that people give it. */
const columnNames: Readonly<Record<Column, readonly string[]>> = {
  number: ['number', 'no', 'no.', '#', 'bib', 'bib number', 'bib no', 'plate', 'race number', 'rider number'],
  place: ['place', 'rank', 'pos', 'position'],
  name: ['name', 'rider', 'rider name', 'full name'],
  id: ['id', 'licence', 'license', 'uci id'],
  category: ['category', 'cat', 'class'],
  primary: ['primary'],
  seconds: ['second', 'seconds'],
  history: ['history'],
  facts: ['facts'],
};
type Column = 'number' | 'place' | 'name' | 'id' | 'category' | 'primary' | 'seconds' | 'history' | 'facts';

const headings: ReadonlyMap<string, Column> = new Map(
  (Object.keys(columnNames) as Column[]).flatMap((column) =>
    columnNames[column].map((name) => [name, column] as const),
  ),
);

/**
 * The riders of a results list: a table with headings, parted by comma, semicolon or tab. Only the number is
 * needed; columns of other names are passed over; several second recordings stand in one cell, parted by |.
 */
export function resultsFrom(
  text: string,
  where: string,
): { riders: readonly EventRider[]; problems: readonly Problem[] } {
  const lines = text.split(/\r\n|\n|\r/);
  if (lines.length > mostLines) {
    return { riders: [], problems: [wrong(where, 1, `there are more than ${mostLines} lines`)] };
  }
  // Spreadsheets may write the mark between cells above the headings: "sep=;".
  if (/^sep=.$/.test(lines[0]!)) lines[0] = '';
  const top = lines.findIndex((line) => line.trim() !== '');
  const head = lines[top] ?? '';
  const mark = ['\t', ';', ','].find((one) => head.includes(one)) ?? ',';
  const names = cells(head, mark).map((cell) => cell.trim().toLowerCase());
  const columns = names.map((name) => headings.get(name) ?? null);
  if (!columns.includes('number')) {
    const near = nearest('number', names);
    const hint =
      near === null
        ? 'The first line names the columns: number, place, name, category'
        : `Write “number” where it says “${near}”`;
    return { riders: [], problems: [wrong(where, 1, 'there is no column “number”', hint)] };
  }
  const riders: EventRider[] = [];
  const problems: Problem[] = [];
  const seen = new Map<string, number>();
  for (const [index, line] of lines.entries()) {
    if (index <= top || line.trim() === '') continue;
    const { rider, faults } = riderOf(cells(line, mark), columns);
    const before = seen.get(sameNumber(rider.number));
    if (before !== undefined) faults.push(`line ${before} bears the number ${rider.number} too`);
    seen.set(sameNumber(rider.number), index + 1);
    problems.push(...faults.map((what) => wrong(where, index + 1, what)));
    if (faults.length === 0) riders.push(rider);
  }
  return { riders, problems };
}

function riderOf(
  values: readonly string[],
  columns: readonly (Column | null)[],
): { rider: EventRider; faults: string[] } {
  const faults: string[] = [];
  const rider: { -readonly [K in keyof EventRider]: EventRider[K] } = { number: '' };
  for (const [at, column] of columns.entries()) {
    const value = (values[at] ?? '').trim();
    if (column === null || (value === '' && column !== 'number')) continue;
    if (column === 'place') {
      // "DNF" and its like are no place, and no mistake.
      if (/^\d+$/.test(value)) rider.place = Number(value);
    } else if (column === 'seconds') rider.seconds = value.split('|').map((one) => one.trim());
    else rider[column] = value;
  }
  if (!numberPattern.test(rider.number)) {
    faults.push(`“${rider.number}” is no rider's number: up to 20 letters, digits, - and _`);
  }
  const { primary, seconds = [], history, facts } = rider;
  for (const path of [primary, ...seconds, history, facts]) {
    const why = typeof path === 'string' ? whyNoPath(path) : null;
    if (why !== null) faults.push(why);
  }
  return { rider, faults };
}

/** The cells of a line; in quotation marks a cell may hold the mark, and a doubled quotation mark is one. */
function cells(line: string, mark: string): string[] {
  const found: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < line.length; at++) {
    const character = line[at]!;
    if (quoted && character === '"' && line[at + 1] === '"') {
      cell += '"';
      at++;
    } else if (character === '"' && (quoted || cell.trim() === '')) quoted = !quoted;
    else if (character === mark && !quoted) {
      found.push(cell);
      cell = '';
    } else cell += character;
  }
  return [...found, cell];
}

function wrong(where: string, line: number, what: string, hint?: string): Problem {
  return new Problem({
    code: 'facts-wrong',
    what,
    where: `${where} › line ${line}`,
    ...(hint === undefined ? {} : { hint }),
  });
}
