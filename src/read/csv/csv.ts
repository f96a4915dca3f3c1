import { Problem } from '../../problem.ts';
import type { Channel, Defect, ExtraMeter } from '../../types.ts';
import { assemble } from '../columns.ts';
import type { Parsed } from '../format.ts';
import { limits } from '../limits.ts';
import { decodeText, shortName } from '../text.ts';
import { findHeadings, firstColumns, type Headings } from './headings.ts';
import { cellNumber, isMissing } from './numbers.ts';
import { eachRow, tooMany } from './rows.ts';
import { type TimeReader, timeReader } from './times.ts';
import { assumedUnits, type Conversion, conversionOf } from './units.ts';

/** A column that is read. */
interface Column {
  readonly index: number;
  readonly name: string;
  /** Null: a power column beside the first, perhaps a meter of its own. */
  readonly channel: Channel | null;
  conversion: Conversion | null;
  readonly values: number[];
  unreadable: number;
}

/**
 * Reads a table with one row per record: comma, semicolon or tab; decimal point or comma; headings with or
 * without units (a line of units below them is understood). Times without a zone are read as UTC; times
 * without a date count from 1970. Both are said in a defect.
 *
 * @throws Problem `format-unknown`, with the columns found, when there is no time or no channel among them;
 * `format-limits` when there is more of it than a recording has.
 */
export function readCsv(bytes: Uint8Array): Parsed {
  const text = decodeText(bytes);
  const headings = findHeadings(text);
  if (headings === null) throw noColumns(text);
  const columns = columnsIn(headings);
  const time: number[] = [];
  const commaIsDecimal = headings.delimiter !== ',';
  let clock: TimeReader | null = null;
  let hasPositions = false;
  let short: number | null = null;

  const unclosed = eachRow(text, headings.delimiter, (cells, line) => {
    if (line <= headings.line) return true;
    if (time.length === 0 && takeUnits(columns, cells)) return true;
    clock ??= timeReader(headings, cells);
    time.push(clock?.read(cells) ?? Number.NaN);
    // However short its rows are, each takes a value of every column.
    if (time.length * columns.length > limits.csvValues) throw tooMany('values', limits.csvValues);
    for (const column of columns) {
      const cell = cells[column.index] ?? '';
      const value = cellNumber(cell, commaIsDecimal);
      column.values.push(value);
      if (Number.isNaN(value) && !isMissing(cell)) column.unreadable++;
    }
    hasPositions ||= headings.meanings.some(
      ({ kind }, i) => kind === 'position' && !Number.isNaN(cellNumber(cells[i] ?? '', commaIsDecimal)),
    );
    short = cells.length < headings.names.length ? line : null;
    return true;
  });

  const defects: Defect[] = [];
  const cut = unclosed ?? (text.endsWith('\n') ? null : short);
  if (cut !== null) defects.push({ id: 'markup-ends-early', values: { line: cut } });
  // The cut row's last number may have lost its end.
  if (cut !== null && unclosed === null)
    for (const values of [time, ...columns.map((c) => c.values)]) values.pop();

  defects.push(...columns.flatMap(columnDefects));
  defects.push(...timeDefects(clock));
  const { defects: columnsDefects, ...assembled } = assemble(typed(time, columns));
  return {
    ...assembled,
    sport: null,
    indoors: hasPositions ? false : null,
    device: { maker: null, product: null, serial: null },
    balanceSide: balanceSide(columns),
    pauses: [],
    laps: [],
    totals: {},
    defects: [...defects, ...columnsDefects],
  };
}

/** The first column of each channel, and every further one of power. */
function columnsIn({ names, meanings }: Headings): Column[] {
  const seen = new Set<Channel>();
  return meanings.flatMap((meaning, index) => {
    if (meaning.kind !== 'channel' && meaning.kind !== 'meter') return [];
    const found = meaning.kind === 'channel' ? meaning.channel : null;
    const repeated = found !== null && seen.has(found);
    if (repeated && found !== 'power') return [];
    if (found !== null) seen.add(found);
    return [
      {
        index,
        name: shortName(names[index]) ?? `column ${index + 1}`,
        channel: repeated ? null : found,
        conversion: meaning.kind === 'channel' ? meaning.conversion : null,
        values: [],
        unreadable: 0,
      },
    ];
  });
}

/** Whether this row holds units instead of values; if so, the columns without one take theirs. */
function takeUnits(columns: readonly Column[], cells: readonly string[]): boolean {
  const cellOf = ({ index }: Column) => cells[index] ?? '';
  const unitOf = (column: Column) => conversionOf(column.channel ?? 'power', cellOf(column));
  const isUnit = (column: Column) => cellOf(column) === '' || unitOf(column) !== undefined;
  if (!columns.every(isUnit) || columns.every((column) => cellOf(column) === '')) return false;
  for (const column of columns) column.conversion ??= unitOf(column) ?? null;
  return true;
}

function typed(time: readonly number[], columns: readonly Column[]) {
  const channels: { [C in Channel]?: Float64Array } = {};
  const meters: ExtraMeter[] = [];
  for (const { name, channel, conversion, values } of columns) {
    const { scale, offset } = conversion ?? { scale: 1, offset: 0 };
    const column = Float64Array.from(values, (value) => value * scale + offset);
    if (channel === null) meters.push({ name, power: column });
    else channels[channel] = column;
  }
  return { time: Float64Array.from(time), channels, meters };
}

function columnDefects({ name, channel, conversion, unreadable, values }: Column): Defect[] {
  const unit = channel === null ? undefined : assumedUnits[channel];
  const assumed = conversion === null && unit !== undefined && values.some((value) => !Number.isNaN(value));
  return [
    ...(unreadable > 0
      ? [{ id: 'unreadable-values', values: { count: unreadable, column: name } } as const]
      : []),
    ...(assumed ? [{ id: 'unit-assumed', values: { column: name, unit } } as const] : []),
  ];
}

function timeDefects(clock: TimeReader | null): Defect[] {
  if (clock === null || (clock.dated && clock.zoned)) return [];
  return [{ id: clock.dated ? 'zone-assumed' : 'no-clock', values: {} }];
}

function balanceSide(columns: readonly Column[]): Parsed['balanceSide'] {
  const balance = columns.find(({ channel }) => channel === 'balance');
  if (balance === undefined || balance.values.every(Number.isNaN)) return null;
  return /left/i.test(balance.name) && !/right/i.test(balance.name) ? 'left' : 'unknown';
}

function noColumns(text: string): Problem {
  const names = firstColumns(text).map((name) => shortName(name) ?? '(empty)');
  const shown = names.slice(0, limits.columnsNamed).join(', ');
  const more = names.length > limits.columnsNamed ? ` and ${names.length - limits.columnsNamed} more` : '';
  return new Problem({
    code: 'format-unknown',
    what: `this table has no headings for a time and a channel; its columns are: ${shown}${more}`,
    hint: 'Name the columns in the first line, for example: time,power (W),cadence (rpm),heart rate (bpm)',
  });
}
