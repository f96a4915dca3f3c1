import { day } from '../../units.ts';
import { dateSeconds, parseClock, timeSeconds } from '../clock.ts';
import type { Headings } from './headings.ts';
import { cellNumber } from './numbers.ts';

/** How a table states the time of a row. */
export interface TimeReader {
  /** Seconds of a row since 1970 (or since an unknown start, without a date); NaN when it has none. */
  read(cells: readonly string[]): number;
  /** False: the times have no date. */
  readonly dated: boolean;
  /** False: no zone is named (or the times have no date). */
  readonly zoned: boolean;
}

/** Numbers from here on are seconds since 1970, not since a start (1973); from the second on, milliseconds. */
const epochSeconds = 1e8;
const epochMilliseconds = 1e11;

const dottedDate = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
const isoDate = /^(\d{4})-(\d\d)-(\d\d)$/;
const clockTime = /^(?:(\d{1,3}):)?(\d{1,2}):(\d\d(?:[.,]\d{1,9})?)$/;

/**
 * Finds out, on the first row of data, how the times are written: a column with date and time before one
 * with an epoch, a date beside a time of day, elapsed time. Null when no time column of this row can be read.
 */
export function timeReader({ meanings }: Headings, row: readonly string[]): TimeReader | null {
  const columns = meanings.flatMap((meaning, index) =>
    meaning.kind === 'time' ? [{ index, scale: meaning.scale, cell: row[index] ?? '' }] : [],
  );
  const stamped = columns.find(({ cell }) => stamp(cell) !== null);
  if (stamped !== undefined) {
    const { index, cell } = stamped;
    return {
      dated: true,
      zoned: stamp(cell)!.zoned,
      read: (cells) => stamp(cells[index])?.seconds ?? Number.NaN,
    };
  }
  const number = ({ cell }: { cell: string }) => cellNumber(cell, true);
  const epoch = columns.find((column) => number(column) >= epochSeconds);
  if (epoch !== undefined) {
    const scale = number(epoch) >= epochMilliseconds ? 0.001 : 1;
    return { dated: true, zoned: true, read: (cells) => cellNumber(cells[epoch.index] ?? '', true) * scale };
  }
  const date = columns.find(({ cell }) => !Number.isNaN(midnight(cell)));
  const clock = columns.find(({ cell }) => !Number.isNaN(timeOfDay(cell)));
  if (date !== undefined && clock !== undefined) {
    const read = (cells: readonly string[]) => midnight(cells[date.index]) + timeOfDay(cells[clock.index]);
    return { dated: true, zoned: false, read };
  }
  const elapsed = columns.find((column) => !Number.isNaN(number(column)));
  if (elapsed !== undefined) {
    const { index, scale } = elapsed;
    return { dated: false, zoned: false, read: (cells) => cellNumber(cells[index] ?? '', true) * scale };
  }
  return clock === undefined ? null : { dated: false, zoned: false, read: pastMidnight(clock.index) };
}

/** Date and time in one cell: ISO 8601, or day.month.year. Month/day/year is not read: it is also day/month. */
function stamp(cell = ''): { seconds: number; zoned: boolean } | null {
  const iso = parseClock(cell);
  if (iso !== null) return iso;
  const [date, time, ...more] = cell.split(/,?\s+/);
  if (time === undefined || more.length > 0 || !dottedDate.test(date!)) return null;
  const seconds = midnight(date) + timeOfDay(time);
  return Number.isNaN(seconds) ? null : { seconds, zoned: false };
}

function midnight(cell = ''): number {
  const iso = isoDate.exec(cell);
  if (iso !== null) return dateSeconds(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dotted = dottedDate.exec(cell);
  return dotted === null ? Number.NaN : dateSeconds(Number(dotted[3]), Number(dotted[2]), Number(dotted[1]));
}

/** "1:02:03.5", "02:03": seconds since midnight or since the start. */
function timeOfDay(cell = ''): number {
  const match = clockTime.exec(cell);
  if (match === null) return Number.NaN;
  const [, hours = '0', minutes, seconds] = match;
  const rest = timeSeconds(0, Number(minutes), Number(seconds!.replace(',', '.')));
  return Number(hours) * 3600 + rest;
}

/** A time of day that falls back by more than half a day has passed midnight. */
function pastMidnight(index: number): TimeReader['read'] {
  let days = 0;
  let before = Number.NaN;
  return (cells) => {
    const time = timeOfDay(cells[index]);
    if (time < before - day / 2) days++;
    if (!Number.isNaN(time)) before = time;
    return time + days * day;
  };
}
