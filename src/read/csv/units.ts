import type { Channel } from '../../types.ts';
import { kmh } from '../../units.ts';

/** Value in our unit = value in theirs × scale + offset. */
export interface Conversion {
  readonly scale: number;
  readonly offset: number;
}

const by = (scale: number): Conversion => ({ scale, offset: 0 });
const named = (conversion: Conversion, ...units: string[]) =>
  units.map((unit) => [unit, conversion] as const);

const metres = named(by(1), 'm', 'meter', 'meters', 'metre', 'metres');
const rate = named(by(1), '1min', 'min1');

/** Units by channel, as `unitKey` writes them. The mile and the foot are the international ones of 1959. */
const units: Readonly<Record<Channel, ReadonlyMap<string, Conversion>>> = {
  power: new Map([...named(by(1), 'w', 'watt', 'watts'), ...named(by(1000), 'kw')]),
  cadence: new Map([...named(by(1), 'rpm'), ...rate]),
  heartRate: new Map([...named(by(1), 'bpm'), ...rate]),
  speed: new Map([
    ...named(by(1), 'ms', 'mps'),
    ...named(by(1 / kmh), 'kmh', 'kph', 'kmph'),
    ...named(by(0.44704), 'mph'),
  ]),
  distance: new Map([...metres, ...named(by(1000), 'km'), ...named(by(1609.344), 'mi', 'mile', 'miles')]),
  altitude: new Map([...metres, ...named(by(0.3048), 'ft', 'feet')]),
  temperature: new Map([
    ...named(by(1), 'c', 'degc', 'celsius'),
    ...named({ scale: 5 / 9, offset: -160 / 9 }, 'f', 'degf', 'fahrenheit'),
  ]),
  balance: new Map(named(by(1), '%', 'percent', 'left', 'leftpercent')),
};

/** What a channel is read as when its column names no unit; said in a defect where several are in use. */
export const assumedUnits: { readonly [C in Channel]?: string } = {
  speed: 'm/s',
  distance: 'm',
  altitude: 'm',
  temperature: '°C',
};

/** Units of a column of elapsed time, in seconds. */
export const timeUnits: ReadonlyMap<string, number> = new Map([
  ...['s', 'sec', 'secs', 'second', 'seconds'].map((unit) => [unit, 1] as const),
  ...['ms', 'millisecond', 'milliseconds'].map((unit) => [unit, 0.001] as const),
  ...['min', 'mins', 'minute', 'minutes'].map((unit) => [unit, 60] as const),
  ...['hhmmss', 'mmss', 'utc', 'gmt', 'iso', 'iso8601', 'unix', 'epoch'].map((unit) => [unit, 1] as const),
]);

/** A unit without what people write differently: "km/h", "km·h" and "KMH" are one. */
export function unitKey(unit: string): string {
  return unit.toLowerCase().replace(/[^a-z0-9%]/g, '');
}

export function conversionOf(channel: Channel, unit: string): Conversion | undefined {
  return units[channel].get(unitKey(unit));
}
