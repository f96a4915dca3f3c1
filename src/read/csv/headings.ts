import type { Channel } from '../../types.ts';
import { limits } from '../limits.ts';
import { isMeterName } from '../meters.ts';
import { type Delimiter, delimiters, eachRow } from './rows.ts';
import { type Conversion, conversionOf, timeUnits, unitKey } from './units.ts';

/** What a column means, by its heading. */
export type Meaning =
  | { readonly kind: 'time'; readonly scale: number }
  | { readonly kind: 'channel'; readonly channel: Channel; readonly conversion: Conversion | null }
  | { readonly kind: 'meter' }
  | { readonly kind: 'position' }
  | { readonly kind: 'other' };

export interface Headings {
  readonly delimiter: Delimiter;
  /** Line of the headings. */
  readonly line: number;
  readonly names: readonly string[];
  readonly meanings: readonly Meaning[];
}

const timeNames: ReadonlySet<string> = new Set([
  ...[
    'time',
    'timestamp',
    'time stamp',
    'datetime',
    'date time',
    'date',
    'clock',
    'local time',
    'utc',
    'utc time',
  ],
  ...['time of day', 'elapsed', 'elapsed time', 'time elapsed', 'duration', 'timer', 't', 'hh mm ss'],
  ...['s', 'sec', 'secs', 'seconds', 'ms', 'milliseconds', 'min', 'mins', 'minutes'],
]);
const positionNames: ReadonlySet<string> = new Set([
  ...['lat', 'latitude', 'position lat', 'lon', 'lng', 'long', 'longitude', 'position long', 'position lon'],
]);
/** Names of the trade, and units that stand as a name of their own. */
const channelNames: ReadonlyMap<string, Channel> = new Map([
  ...(['power', 'watts', 'watt', 'w', 'pwr'] as const).map((name) => [name, 'power'] as const),
  ...(['cadence', 'cad', 'rpm'] as const).map((name) => [name, 'cadence'] as const),
  ...(['heart rate', 'heartrate', 'hr', 'bpm', 'pulse'] as const).map((name) => [name, 'heartRate'] as const),
  ...(['speed', 'enhanced speed', 'velocity'] as const).map((name) => [name, 'speed'] as const),
  ...(['km h', 'kmh', 'kph', 'mph', 'm s', 'mps'] as const).map((name) => [name, 'speed'] as const),
  ...(['distance', 'dist', 'km', 'miles', 'mi'] as const).map((name) => [name, 'distance'] as const),
  ...(['altitude', 'enhanced altitude', 'alt', 'elevation', 'ele'] as const).map(
    (name) => [name, 'altitude'] as const,
  ),
  ...(['temperature', 'temp'] as const).map((name) => [name, 'temperature'] as const),
  ...(['balance', 'left balance', 'left right balance', 'lrbalance'] as const).map(
    (name) => [name, 'balance'] as const,
  ),
]);

const bracketed = /^([^([]*)[([]([^)\]]*)[)\]]$/;

/** What a heading means: "Power (W)", "power_watts", "Heart Rate [bpm]", "km/h", "secs" … */
export function meaningOf(heading: string): Meaning {
  const bracket = bracketed.exec(heading.trim());
  if (bracket !== null) {
    const [, name, unit] = bracket;
    return named(words(name!).join(' '), unit!) ?? meterOr(name!, unit!);
  }
  const all = words(heading);
  // A unit may stand at the end of the name: in one word or, as "km_h", in two.
  for (const units of [0, 1, 2]) {
    if (units >= all.length) break;
    const name = all.slice(0, all.length - units).join(' ');
    const found = named(name, all.slice(all.length - units).join(''));
    if (found !== null) return found;
  }
  return meterOr(heading, '');
}

/** "Heart-Rate", "heartRate" and "heart_rate" are one. */
function words(name: string): string[] {
  return name
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

/** The meaning of a name with its unit; null when the name is none of ours or the unit is none of its units. */
function named(name: string, unit: string): Meaning | null {
  if (positionNames.has(name)) return { kind: 'position' };
  if (timeNames.has(name)) {
    const scale = timeUnits.get(unitKey(unit === '' ? name : unit)) ?? (unit === '' ? 1 : null);
    return scale === null ? null : { kind: 'time', scale };
  }
  const channel = channelNames.get(name);
  if (channel === undefined) return null;
  const conversion = conversionOf(channel, unit === '' ? name : unit) ?? null;
  return conversion === null && unit !== '' ? null : { kind: 'channel', channel, conversion };
}

function meterOr(name: string, unit: string): Meaning {
  return isMeterName(name, unit) ? { kind: 'meter' } : { kind: 'other' };
}

/**
 * Finds the headings: the first line near the top that names a time and at least one channel. The delimiter
 * is the one under which most columns get a meaning.
 */
export function findHeadings(text: string): Headings | null {
  let best: Headings | null = null;
  for (const delimiter of delimiters) {
    const found = headingsUnder(text, delimiter);
    if (found !== null && known(found) > (best === null ? 0 : known(best))) best = found;
  }
  return best;
}

function headingsUnder(text: string, delimiter: Delimiter): Headings | null {
  let found: Headings | null = null;
  eachRow(top(text), delimiter, (names, line) => {
    const meanings = names.map(meaningOf);
    const has = (...kinds: Meaning['kind'][]) => meanings.some(({ kind }) => kinds.includes(kind));
    if (has('time') && has('channel', 'meter')) found = { delimiter, line, names, meanings };
    return found === null;
  });
  return found;
}

const known = ({ meanings }: Headings) => meanings.filter(({ kind }) => kind !== 'other').length;

/** The lines in which headings may stand. */
function top(text: string): string {
  let end = 0;
  for (let line = 0; line < limits.csvPreamble; line++) {
    const next = text.indexOf('\n', end);
    if (next === -1) return text;
    end = next + 1;
  }
  return text.slice(0, end);
}

/** The cells of the first line that has several, whatever they mean; none when no line has. */
export function firstColumns(text: string): string[] {
  for (const delimiter of delimiters) {
    let found: string[] = [];
    eachRow(top(text), delimiter, (cells) => {
      if (cells.length > 1) found = cells;
      return found.length === 0;
    });
    if (found.length > 0) return found;
  }
  return [];
}
