import type { Channel } from '../../types.ts';
import { finite } from '../number.ts';
import type { Message } from './decode.ts';

type Fill = (record: Message) => number;

/** Where each channel stands in a decoded record. Balance and packed speed are read apart. */
const plain: { readonly [C in Channel]?: Fill } = {
  power: (record) => finite(record.power),
  cadence: (record) => {
    const fraction = record.fractional_cadence;
    return finite(record.cadence) + (typeof fraction === 'number' ? fraction : 0);
  },
  heartRate: (record) => finite(record.heart_rate),
  // Newer recorders write the enhanced field alone, older ones the plain field alone.
  speed: (record) => finite(record.enhanced_speed ?? record.speed),
  altitude: (record) => finite(record.enhanced_altitude ?? record.altitude),
  distance: (record) => finite(record.distance),
  temperature: (record) => finite(record.temperature),
};

/** Native names that reading relies on: a developer field of such a name is worth a word. */
export const nativeNames: ReadonlySet<string> = new Set([
  'timestamp',
  'power',
  'cadence',
  'fractional_cadence',
  'heart_rate',
  'speed',
  'enhanced_speed',
  'altitude',
  'enhanced_altitude',
  'distance',
  'temperature',
  'left_right_balance',
  'compressed_speed_distance',
  'position_lat',
  'position_long',
]);

export function column(records: readonly Message[], fill: Fill): Float64Array {
  const values = new Float64Array(records.length);
  for (let i = 0; i < values.length; i++) values[i] = fill(records[i]!);
  return values;
}

/** Seconds since 1970 of any decoded time; NaN when there is none. */
export function clock(value: unknown): number {
  return value instanceof Date ? value.getTime() / 1000 : Number.NaN;
}

export function plainChannels(records: readonly Message[]): { [C in Channel]?: Float64Array } {
  const packed = unpackSpeedAndDistance(records);
  const channels: { [C in Channel]?: Float64Array } = { ...packed };
  for (const [channel, fill] of Object.entries(plain)) {
    if (packed !== null && channel in packed) continue;
    channels[channel as Channel] = column(records, fill);
  }
  return channels;
}

/**
 * The old field compressed_speed_distance: 12 bits of speed (1/100 m/s) and 12 of distance (1/16 m), the
 * distance starting over every 256 m (FIT Profile, message record, field 8: accumulated). The decoder hands
 * over its three bytes, a byte 255 as null. Null when no record has it, or has the plain fields as well.
 */
function unpackSpeedAndDistance(
  records: readonly Message[],
): { speed: Float64Array; distance: Float64Array } | null {
  if (!records.some((record) => packedBytes(record) !== null)) return null;
  if (records.some((record) => typeof record.distance === 'number')) return null;
  const speed = new Float64Array(records.length).fill(Number.NaN);
  const distance = new Float64Array(records.length).fill(Number.NaN);
  let before: number | null = null;
  let total = 0;
  records.forEach((record, i) => {
    const bytes = packedBytes(record);
    if (bytes === null) return;
    const [low, middle, high] = bytes;
    const sixteenths = (middle >> 4) | (high << 4);
    total += before === null ? sixteenths : (sixteenths - before) & 0xfff;
    before = sixteenths;
    speed[i] = (low | ((middle & 0x0f) << 8)) / 100;
    distance[i] = total / 16;
  });
  return { speed, distance };
}

function packedBytes(record: Message): [number, number, number] | null {
  const value = record.compressed_speed_distance;
  if (!Array.isArray(value) || value.length !== 3 || value.every((byte) => byte === null)) return null;
  const [low, middle, high] = value.map((byte) => (typeof byte === 'number' ? byte & 0xff : 0xff));
  return [low!, middle!, high!];
}
