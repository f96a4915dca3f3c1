/**
 * Writes FIT files byte by byte, well-formed or not, after the open FIT protocol. It shares nothing with the
 * reader it tests.
 */

/** Base types and their invalid values: FIT Protocol, table "FIT Base Types and Invalid Values". */
export const baseTypes = {
  enum: { id: 0x00, size: 1, invalid: 0xff },
  sint8: { id: 0x01, size: 1, invalid: 0x7f },
  uint8: { id: 0x02, size: 1, invalid: 0xff },
  sint16: { id: 0x83, size: 2, invalid: 0x7fff },
  uint16: { id: 0x84, size: 2, invalid: 0xffff },
  sint32: { id: 0x85, size: 4, invalid: 0x7fffffff },
  uint32: { id: 0x86, size: 4, invalid: 0xffffffff },
  string: { id: 0x07, size: 1, invalid: 0 },
  float32: { id: 0x88, size: 4, invalid: Number.NaN },
  float64: { id: 0x89, size: 8, invalid: Number.NaN },
  uint8z: { id: 0x0a, size: 1, invalid: 0 },
  uint16z: { id: 0x8b, size: 2, invalid: 0 },
  uint32z: { id: 0x8c, size: 4, invalid: 0 },
  byte: { id: 0x0d, size: 1, invalid: 0xff },
} as const;
export type BaseTypeName = keyof typeof baseTypes;

/** A field of a message: its number in the profile, its type, and its size where that is not the type's own. */
export type FieldOf = readonly [number: number, type: BaseTypeName, size?: number];
export type DeveloperFieldOf = readonly [number: number, size: number, index: number, type: BaseTypeName];
/** A value as stored (scaled); null is written as the type's invalid value. */
export type Stored = number | string | readonly number[] | null;

interface Defined {
  readonly fields: readonly FieldOf[];
  readonly developer: readonly DeveloperFieldOf[];
}

/** Seconds between 1970-01-01 and the epoch of FIT, 1989-12-31T00:00:00Z (FIT Protocol, date_time). */
export const fitEpoch = 631_065_600;

/** CRC-16/ARC, bit by bit. */
export function crc(bytes: readonly number[]): number {
  let value = 0;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >> 1) ^ 0xa001 : value >> 1;
  }
  return value;
}

export class FitWriter {
  readonly #data: number[] = [];
  readonly #defined = new Map<number, Defined>();
  readonly #littleEndian: boolean;

  constructor(littleEndian = true) {
    this.#littleEndian = littleEndian;
  }

  define(
    local: number,
    global: number,
    fields: readonly FieldOf[],
    developer: readonly DeveloperFieldOf[] = [],
  ): this {
    this.#defined.set(local, { fields, developer });
    const kind = this.#littleEndian ? [global & 0xff, global >> 8] : [global >> 8, global & 0xff];
    this.raw(0x40 | local | (developer.length > 0 ? 0x20 : 0), 0, this.#littleEndian ? 0 : 1, ...kind);
    this.raw(fields.length);
    for (const [number, type, size] of fields)
      this.raw(number, size ?? baseTypes[type].size, baseTypes[type].id);
    if (developer.length > 0) this.raw(developer.length);
    for (const [number, size, index] of developer) this.raw(number, size, index);
    return this;
  }

  data(local: number, ...values: readonly Stored[]): this {
    return this.#message(local, this.#defined.get(local)!.fields, local, values);
  }

  /** A data message whose header carries the low five bits of the time; a timestamp field is left out. */
  compressed(local: number, time: number, ...values: readonly Stored[]): this {
    const fields = this.#defined.get(local)!.fields.filter(([number]) => number !== 253);
    return this.#message(0x80 | (local << 5) | (time & 0x1f), fields, local, values);
  }

  raw(...bytes: readonly number[]): this {
    for (const byte of bytes) this.#data.push(byte);
    return this;
  }

  /** The file: header, messages, checksum. `size` and `checksum` overrule what would be right. */
  bytes(options: { header?: 12 | 14; size?: number; checksum?: number } = {}): Uint8Array {
    const { header = 14, size = this.#data.length } = options;
    const head = [header, 0x20, 0x5c, 0x08, ...[0, 8, 16, 24].map((shift) => (size >>> shift) & 0xff)];
    head.push(...[...'.FIT'].map((letter) => letter.charCodeAt(0)));
    if (header === 14) {
      const own = crc(head);
      head.push(own & 0xff, own >> 8);
    }
    const all = [...head, ...this.#data];
    const checksum = options.checksum ?? crc(all);
    return Uint8Array.from([...all, checksum & 0xff, checksum >> 8]);
  }

  #message(header: number, fields: readonly FieldOf[], local: number, values: readonly Stored[]): this {
    this.raw(header);
    fields.forEach(([, type, size], i) => {
      this.#value(type, size ?? baseTypes[type].size, values[i] ?? null);
    });
    this.#defined.get(local)!.developer.forEach(([, size, , type], i) => {
      this.#value(type, size, values[fields.length + i] ?? null);
    });
    return this;
  }

  #value(type: BaseTypeName, size: number, value: Stored): void {
    if (typeof value === 'string') {
      const text = new TextEncoder().encode(value).slice(0, size);
      this.raw(...text, ...new Array(size - text.length).fill(0));
      return;
    }
    const { size: one, invalid } = baseTypes[type];
    const values = Array.isArray(value) ? value : [value ?? invalid];
    for (let i = 0; i < size / one; i++) this.raw(...this.#number(type, values[i] ?? invalid));
  }

  #number(type: BaseTypeName, value: number): Uint8Array {
    const view = new DataView(new ArrayBuffer(baseTypes[type].size));
    if (type === 'float32') view.setFloat32(0, value, this.#littleEndian);
    else if (type === 'float64') view.setFloat64(0, value, this.#littleEndian);
    else if (view.byteLength === 4) view.setUint32(0, value >>> 0, this.#littleEndian);
    else if (view.byteLength === 2) view.setUint16(0, value & 0xffff, this.#littleEndian);
    else view.setUint8(0, value & 0xff);
    return new Uint8Array(view.buffer);
  }
}

/** Global message numbers (FIT Profile, type mesg_num). */
export const mesg = {
  fileId: 0,
  sport: 12,
  session: 18,
  lap: 19,
  record: 20,
  event: 21,
  deviceInfo: 23,
  fieldDescription: 206,
  developerDataId: 207,
} as const;

/** Field numbers of the record message (FIT Profile). */
export const record = {
  timestamp: [253, 'uint32'],
  power: [7, 'uint16'],
  cadence: [4, 'uint8'],
  heartRate: [3, 'uint8'],
  speed: [6, 'uint16'], // 1/1000 m/s
  altitude: [2, 'uint16'], // 1/5 m, offset 500
  distance: [5, 'uint32'], // 1/100 m
  temperature: [13, 'sint8'],
  balance: [30, 'uint8'],
  fractionalCadence: [53, 'uint8'], // 1/128 rpm
  enhancedSpeed: [73, 'uint32'], // 1/1000 m/s
  enhancedAltitude: [78, 'uint32'], // 1/5 m, offset 500
  latitude: [0, 'sint32'],
  longitude: [1, 'sint32'],
  packedSpeedDistance: [8, 'byte', 3],
} as const satisfies Record<string, FieldOf>;

/** An invented start: seconds since the FIT epoch of 2026-01-10T18:00:00Z. */
export const start = Date.UTC(2026, 0, 10, 18) / 1000 - fitEpoch;

/** A short ride: file_id, timer start, `seconds` records with whole watts, session and lap. */
export function smallRide(seconds = 60, littleEndian = true): FitWriter {
  const writer = new FitWriter(littleEndian)
    .define(0, mesg.fileId, [
      [0, 'enum'],
      [1, 'uint16'],
      [2, 'uint16'],
      [3, 'uint32z'],
    ])
    .data(0, 4, 255, 7, 12345)
    .define(1, mesg.event, [
      [253, 'uint32'],
      [0, 'enum'],
      [1, 'enum'],
    ])
    .data(1, start, 0, 0)
    .define(2, mesg.record, [
      record.timestamp,
      record.power,
      record.cadence,
      record.heartRate,
      record.distance,
    ]);
  for (let i = 0; i < seconds; i++) {
    writer.data(2, start + i, wattsAt(i), 85 + (i % 7), 120 + (i % 11), i * 900);
  }
  return writer
    .define(3, mesg.session, [
      [253, 'uint32'],
      [2, 'uint32'],
      [5, 'enum'],
      [6, 'enum'],
      [7, 'uint32'],
      [8, 'uint32'],
      [20, 'uint16'],
      [21, 'uint16'],
    ])
    .data(3, start + seconds, start, 2, 6, seconds * 1000, seconds * 1000, 203, 260);
}

export const wattsAt = (i: number) => 200 + ((i * 37) % 61);
