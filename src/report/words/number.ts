import type { EffectiveLimit, Stretch, Unit } from '../../types.ts';
import { decimals } from '../../units.ts';

/** Between a number and its unit: they stay on one line. */
const space = '\u00a0';
const minus = '\u2212';

/** Units whose trailing zeros carry meaning for a reader: a ratio of 1.000 was measured to three places. */
const keepsZeros: readonly Unit[] = ['ratio', 'r'];

function digits(value: number, places: number, keepZeros: boolean): string {
  const fixed = Math.abs(value).toFixed(places);
  const trimmed = keepZeros || !fixed.includes('.') ? fixed : fixed.replace(/\.?0+$/, '');
  const [whole, fraction] = trimmed.split('.') as [string, string?];
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  const text = fraction === undefined ? grouped : `${grouped}.${fraction}`;
  return value < 0 && /[1-9]/.test(text) ? minus + text : text;
}

/** A bare number: at most three decimals. */
export function number(value: number): string {
  return digits(value, 3, false);
}

/** The number as it is printed beside its unit; a share becomes a percentage. */
export function figure(value: number, unit: Unit): string {
  return unit === 'share'
    ? digits(value * 100, decimals.share - 2, false)
    : digits(value, decimals[unit], keepsZeros.includes(unit));
}

/** What is printed behind the number; empty for counts, ratios and correlations. */
export function unitMark(unit: Unit): string {
  if (unit === 'share') return '%';
  return unit === 'count' || unit === 'ratio' || unit === 'r' ? '' : unit;
}

/** Long times are said in hours, minutes and seconds. */
function isLong(value: number, unit: Unit): boolean {
  return unit === 's' && Number.isInteger(value) && Math.abs(value) >= 120;
}

/** A value with its unit. */
export function quantity(value: number, unit: Unit): string {
  if (isLong(value, unit)) return duration(value);
  const mark = unitMark(unit);
  return mark === '' ? figure(value, unit) : figure(value, unit) + space + mark;
}

/** "3.1 to 5.3 %", or null for an exact count, whose interval is itself. */
export function range([low, high]: readonly [number, number], unit: Unit): string | null {
  if (low === high) return null;
  const from = isLong(low, unit) || isLong(high, unit) ? quantity(low, unit) : figure(low, unit);
  return `${from} to ${quantity(high, unit)}`;
}

/** "at least 8 %", "at most −3 %", or both; null when it sets no number. */
export function limit(limit: EffectiveLimit, unit: Unit): string | null {
  const sides: string[] = [];
  if (limit.atMost !== null) sides.push(`at most ${quantity(limit.atMost, unit)}`);
  if (limit.atLeast !== null) sides.push(`at least ${quantity(limit.atLeast, unit)}`);
  return sides.length === 0 ? null : sides.join(' or ');
}

/** "1 h 2 min 3 s", "31 days 1 h"; parts that are nought are left out. */
export function duration(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  const days = Math.floor(whole / 86_400);
  const parts = [
    [days, days === 1 ? 'day' : 'days'],
    [Math.floor(whole / 3600) % 24, 'h'],
    [Math.floor(whole / 60) % 60, 'min'],
    [whole % 60, 's'],
  ] as const;
  const said = parts.filter(([count]) => count > 0).map(([count, unit]) => `${count}${space}${unit}`);
  return (seconds < 0 && said.length > 0 ? minus : '') + (said.length > 0 ? said.join(' ') : `0${space}s`);
}

/** A place in the ride, from its start: "12:34", "1:02:34". */
export function position(seconds: number): string {
  const whole = Math.abs(Math.round(seconds));
  const two = (part: number) => String(part).padStart(2, '0');
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  const clock = hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
  return seconds < 0 ? minus + clock : clock;
}

/** "12:34–12:50". */
export function span([from, to]: Stretch): string {
  return `${position(from)}–${position(to)}`;
}

/** The first stretches, and how many there are besides. */
export function spans(stretches: readonly Stretch[], most: number): string {
  const more = stretches.length - most;
  return stretches.slice(0, most).map(span).join(', ') + (more > 0 ? ` and ${more} more` : '');
}

/** Seconds that JavaScript's Date can hold. */
const lastSecond = 8.64e12;

/** "2026-03-14 19:02:11 UTC". */
export function clock(seconds: number): string {
  if (!(Math.abs(seconds) <= lastSecond)) return 'at an impossible time';
  return `${new Date(Math.round(seconds) * 1000).toISOString().slice(0, 19).replace('T', ' ')} UTC`;
}

/** A share of honest submissions: "1 in 2000", "fewer than 1 in 100,000". */
export function oneIn(share: number): string {
  if (share <= 0) return 'none that was tried';
  if (share >= 0.1) return quantity(share, 'share');
  if (share < 1e-5) return 'fewer than 1 in 100,000';
  const odds = 1 / share;
  const scale = 10 ** Math.max(0, Math.floor(Math.log10(odds)) - 1);
  return `1 in ${number(Math.round(odds / scale) * scale)}`;
}

/** Whole numbers out of a hundred or, of what is rarer than 2 in 100, out of a thousand. */
const outOf = (share: number) => (share >= 0.02 ? 100 : 1000);

/**
 * A share that was counted, no finer than the count supports: "3 in 1000"; null where too few were counted
 * to say more than their number.
 */
export function aboutIn(count: number, of: number): string | null {
  const base = outOf(count / of);
  const part = Math.round((base * count) / of);
  return part === 0 || of < 3 * base ? null : `${part} in ${base}`;
}

/** What a share does not exceed, never said smaller than it is: "4 in 1000", "1 in 2700". */
export function atMostIn(share: number): string {
  const base = outOf(share);
  const part = Math.ceil(base * share - 1e-9);
  if (part > 1) return `${part} in ${base}`;
  const odds = 1 / share;
  const scale = 10 ** Math.max(0, Math.floor(Math.log10(odds)) - 1);
  return `1 in ${number(Math.floor(odds / scale) * scale)}`;
}

/** "1 finding", "2 findings". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${number(count)}${space}${count === 1 ? one : many}`;
}
