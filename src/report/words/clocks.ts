import type { Alignment, Report, ReportRecording } from '../../types.ts';
import { duration, number, quantity, span } from './number.ts';
import { list, plain } from './sentence.ts';

/** "7 min 11.7 s", without its sign: minutes and more in whole ones, the rest to a tenth of a second. */
function clockTime(seconds: number): string {
  const size = Math.round(Math.abs(seconds) * 10) / 10;
  const rest = Math.round((size % 60) * 10) / 10;
  const before = duration(size - rest);
  if (size < 60) return quantity(rest, 's');
  return rest === 0 ? before : `${before} ${quantity(rest, 's')}`;
}

/** "7 min 11.7 s ahead of the primary’s": what is added to a clock to get the primary's is how far it is behind. */
function apart(offset: number): string {
  const side = offset < 0 ? 'ahead of' : 'behind';
  return Math.abs(offset) < 0.05 ? 'the same as the primary’s' : `${clockTime(offset)} ${side} the primary’s`;
}

/** How far the second's clock is from the primary's, with its interval; null where no offset fits. */
export function offsetSaid({ offset, segments }: Alignment): string | null {
  if (offset === null) return null;
  if (segments.length > 1) return inPartsSaid(segments);
  return `${apart(offset.value)} (±\u00a0${quantity((offset.high - offset.low) / 2, 's')})`;
}

/** Clocks that skip pauses, or run apart by much: how far each stretch is off. */
function inPartsSaid(segments: Alignment['segments']): string {
  return plain(list(segments.map(({ stretch, offset }) => `${apart(offset)} (${span(stretch)})`)));
}

const secondsAnHour = (partsPerMillion: number) => partsPerMillion * 3600e-6;
const whole = (value: number) => number(Math.round(value));

/**
 * How the two clocks run apart: what is added to the second's grows or shrinks. In seconds an hour, for people,
 * and in parts in a million with the interval; null where it was not estimated.
 */
export function driftSaid({ driftPpm }: Alignment): string | null {
  if (driftPpm === null) return null;
  const { value, low, high } = driftPpm;
  const runs = value < 0 ? 'fast' : 'slow';
  return `${quantity(Math.abs(secondsAnHour(value)), 's')} an hour ${runs} (${whole(-value)} parts in a million, ${whole(-high)} to ${whole(-low)})`;
}

/** Whether the clocks surely run apart: the interval leaves out that they do not. */
export function runsApart({ driftPpm }: Alignment): boolean {
  return driftPpm !== null && (driftPpm.low > 0 || driftPpm.high < 0);
}

/** Whether a recording's times in the report are the primary's: its own clock may say something else. */
export function onPrimaryClock({ alignment }: Report, { subject }: ReportRecording): boolean {
  return alignment.some((one) => one.subject === subject && one.secure && one.reason !== 'same-recorder');
}
