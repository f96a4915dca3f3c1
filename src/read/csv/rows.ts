import { Problem } from '../../problem.ts';
import { limits } from '../limits.ts';

export const delimiters = [';', '\t', ','] as const;
export type Delimiter = (typeof delimiters)[number];

/**
 * Splits a table into rows of trimmed cells (quoting as in RFC 4180) and tells `visit` of each, with the
 * number of the line it begins on. Empty lines are passed over. `visit` returns false to stop.
 *
 * @returns the line on which a quoted cell is opened and never closed; null otherwise.
 * @throws Problem `format-limits` with too many lines or columns.
 */
export function eachRow(
  text: string,
  delimiter: Delimiter,
  visit: (cells: string[], line: number) => boolean,
): number | null {
  let quote = nextQuote(text, 0);
  for (let at = 0, line = 1; at < text.length; line++) {
    if (line > limits.csvLines) throw tooMany('lines', limits.csvLines);
    const newline = text.indexOf('\n', at);
    let end = newline === -1 ? text.length : newline;
    let cells: string[];
    const begins = line;
    if (quote < end) {
      const row = quotedRow(text, at, delimiter);
      if (row === null) return begins;
      cells = row.cells;
      line += countNewlines(text, at, row.end);
      end = row.end;
      quote = nextQuote(text, end);
    } else cells = text.slice(at, end).split(delimiter);
    if (cells.length > limits.csvColumns) throw tooMany('columns', limits.csvColumns);
    for (let i = 0; i < cells.length; i++) cells[i] = cells[i]!.trim();
    at = end + 1;
    if (cells.some((cell) => cell !== '') && !visit(cells, begins)) return null;
  }
  return null;
}

/** A row that holds a quote; null when it is never closed. */
function quotedRow(
  text: string,
  from: number,
  delimiter: Delimiter,
): { cells: string[]; end: number } | null {
  const cells: string[] = [];
  for (let at = from; ; at++) {
    let cell = '';
    while (text[at] === '"') {
      const close = text.indexOf('"', at + 1);
      if (close === -1) return null;
      cell += text.slice(at + 1, close);
      at = close + 1;
      if (text[at] === '"') cell += '"';
    }
    const rest = at;
    while (at < text.length && text[at] !== delimiter && text[at] !== '\n') at++;
    cells.push(cell + text.slice(rest, at));
    if (text[at] !== delimiter) return { cells, end: at };
  }
}

function nextQuote(text: string, from: number): number {
  const at = text.indexOf('"', from);
  return at === -1 ? Number.POSITIVE_INFINITY : at;
}

function countNewlines(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf('\n', from); at !== -1 && at < to; at = text.indexOf('\n', at + 1)) count++;
  return count;
}

export function tooMany(what: string, most: number): Problem {
  return new Problem({
    code: 'format-limits',
    what: `this table has more than ${most} ${what}`,
    hint: 'Hand in the recording of this ride alone',
  });
}
