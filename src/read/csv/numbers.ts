import { decimal } from '../number.ts';

/** What programs write where they have no value. */
const missing: ReadonlySet<string> = new Set([
  ...['', '-', '--', 'nan', 'null', 'na', 'n/a', '#n/a', 'none', 'undefined', 'inf', '-inf', 'infinity'],
]);

export function isMissing(cell: string): boolean {
  return missing.has(cell.toLowerCase());
}

const withComma = /^[-+]?\d+,\d+$/;
const thousands = /^[-+]?\d{1,3},\d{3}$/;

/**
 * The number in a cell; NaN when there is none. A decimal comma is read as such. In a table delimited by
 * commas (`commaIsDecimal` false) a quoted "1,234" could mean a thousand as well: that one is not read.
 */
export function cellNumber(cell: string, commaIsDecimal: boolean): number {
  if (!withComma.test(cell)) return decimal(cell);
  return !commaIsDecimal && thousands.test(cell) ? Number.NaN : decimal(cell.replace(',', '.'));
}
