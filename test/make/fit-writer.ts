import type { Channel, Recording } from '../../src/types.ts';

/**
 * A recording as a FIT activity file: file id, devices, timer events, records, laps, session, activity, in
 * the order head units write them. Written from the protocol's description, little-endian, one definition
 * a message kind.
 */
export function writeFit(recording: Recording): Uint8Array<ArrayBuffer> {
  const bytes = new ByteWriter(4096 + recording.time.length * 32);
  const file = new FitFile(bytes);
  const first = recording.time[0] ?? epoch;
  const last = recording.time[recording.time.length - 1] ?? first;
  identity(file, recording, first);
  timer(file, first, 'start');
  records(file, recording);
  timer(file, last, 'stop');
  summaries(file, recording, first, last);
  return file.close();
}

/** FIT counts seconds from 1989-12-31T00:00:00Z. */
const epoch = 631065600;

/** 255 means "development" in the protocol's list: no maker's number is borrowed. */
const developmentMaker = 255;
const productNumber = 40_000;

type Kind = 'enum' | 'u8' | 's8' | 'u16' | 'u32' | 'u32z' | 'text' | 'bytes';
interface Field {
  readonly number: number;
  readonly kind: Kind;
  /** A number is written as it stands; NaN as the kind's "invalid". */
  readonly value: number | string | Uint8Array;
}
const kinds: Readonly<Record<Kind, { code: number; size: number; invalid: number }>> = {
  enum: { code: 0x00, size: 1, invalid: 0xff },
  s8: { code: 0x01, size: 1, invalid: 0x7f },
  u8: { code: 0x02, size: 1, invalid: 0xff },
  text: { code: 0x07, size: 0, invalid: 0 },
  bytes: { code: 0x0d, size: 0, invalid: 0xff },
  u16: { code: 0x84, size: 2, invalid: 0xffff },
  u32: { code: 0x86, size: 4, invalid: 0xffffffff },
  u32z: { code: 0x8c, size: 4, invalid: 0 },
};

const field = (number: number, kind: Kind, value: number | string | Uint8Array): Field => ({
  number,
  kind,
  value,
});

function identity(file: FitFile, { device, extraMeters }: Recording, first: number): void {
  const serial = Number(device.serial ?? 0);
  const product = device.product ?? '';
  file.message(0, [
    field(0, 'enum', 4), // an activity
    field(1, 'u16', developmentMaker),
    field(2, 'u16', productNumber),
    field(3, 'u32z', serial),
    field(4, 'u32', first - epoch),
    field(8, 'text', product),
  ]);
  file.message(23, [
    field(253, 'u32', first - epoch),
    field(0, 'u8', 0), // the recorder itself
    field(2, 'u16', developmentMaker),
    field(3, 'u32z', serial),
    field(4, 'u16', productNumber),
    field(5, 'u16', 100),
    field(27, 'text', product),
  ]);
  file.message(23, [
    field(253, 'u32', first - epoch),
    field(0, 'u8', 1),
    field(1, 'u8', 11), // a bicycle power sensor
    field(2, 'u16', developmentMaker),
    field(3, 'u32z', serial + 1),
  ]);
  if (extraMeters.length === 0) return;
  file.message(207, [field(1, 'bytes', new Uint8Array(16).fill(7)), field(3, 'u8', 0)]);
  extraMeters.forEach(({ name }, number) => {
    file.message(206, [
      field(0, 'u8', 0),
      field(1, 'u8', number),
      field(2, 'u8', kinds.u16.code),
      field(3, 'text', name),
      field(8, 'text', 'watts'),
    ]);
  });
}

function timer(file: FitFile, clock: number, what: 'start' | 'stop'): void {
  file.message(21, [
    field(253, 'u32', clock - epoch),
    field(0, 'enum', 0),
    field(1, 'enum', what === 'start' ? 0 : 4),
    field(4, 'u8', 0),
  ]);
}

/** How each channel is stored: field number, kind, and value in the file's unit. */
const columns: readonly (readonly [Channel, number, Kind, (value: number) => number])[] = [
  ['altitude', 78, 'u32', (metres) => Math.round((metres + 500) * 5)],
  ['distance', 5, 'u32', (metres) => Math.round(metres * 100)],
  ['speed', 73, 'u32', (speed) => Math.round(speed * 1000)],
  ['power', 7, 'u16', Math.round],
  ['heartRate', 3, 'u8', Math.round],
  ['cadence', 4, 'u8', Math.round],
  ['temperature', 13, 's8', Math.round],
];

function records(file: FitFile, recording: Recording): void {
  const { time, channels, extraMeters } = recording;
  const present = columns.filter(([channel]) => channels[channel] !== undefined);
  const pauses = [...recording.pauses];
  for (let k = 0; k < time.length; k++) {
    const pause = pauses[0];
    if (pause !== undefined && time[k]! >= pause[1]) {
      timer(file, pause[0], 'stop');
      timer(file, pause[1], 'start');
      pauses.shift();
    }
    const fields: Field[] = [field(253, 'u32', time[k]! - epoch)];
    for (const [channel, number, kind, convert] of present) {
      fields.push(field(number, kind, convert(channels[channel]![k]!)));
    }
    file.message(
      20,
      fields,
      extraMeters.map(({ power }, number) => field(number, 'u16', Math.round(power[k]!))),
    );
  }
}

function summaries(file: FitFile, recording: Recording, first: number, last: number): void {
  const { totals, laps } = recording;
  const end = last - epoch;
  laps.forEach((lap, index) => {
    const seconds = (lap.to - lap.from) * 1000;
    file.message(19, [
      field(254, 'u16', index),
      field(253, 'u32', lap.to - 1 - epoch),
      field(0, 'enum', 9),
      field(1, 'enum', 1),
      field(2, 'u32', lap.from - epoch),
      field(7, 'u32', seconds),
      field(8, 'u32', seconds),
      ...optional(19, 'u16', lap.meanPower),
    ]);
  });
  file.message(18, [
    field(254, 'u16', 0),
    field(253, 'u32', end),
    field(0, 'enum', 8),
    field(1, 'enum', 1),
    field(2, 'u32', first - epoch),
    field(5, 'enum', 2), // cycling
    field(6, 'enum', recording.indoors ? 58 : 7), // virtual activity, road
    ...optional(7, 'u32', totals.elapsedS, 1000),
    ...optional(8, 'u32', totals.timerS, 1000),
    ...optional(9, 'u32', totals.distanceM, 100),
    ...optional(16, 'u8', totals.meanHeartRate),
    ...optional(17, 'u8', totals.maxHeartRate),
    ...optional(18, 'u8', totals.meanCadence),
    ...optional(20, 'u16', totals.meanPower),
    ...optional(21, 'u16', totals.maxPower),
    ...optional(48, 'u32', totals.workJ),
    field(25, 'u16', 0),
    field(26, 'u16', laps.length),
    field(28, 'enum', 0),
  ]);
  file.message(34, [
    field(253, 'u32', end),
    field(0, 'u32', (totals.timerS ?? last - first + 1) * 1000),
    field(1, 'u16', 1),
    field(2, 'enum', 0),
    field(3, 'enum', 26),
    field(4, 'enum', 1),
  ]);
}

function optional(number: number, kind: Kind, value: number | undefined, scale = 1): Field[] {
  return value === undefined ? [] : [field(number, kind, Math.round(value * scale))];
}

/** Frames messages: a definition whenever the layout of a local kind changes, then the data. */
class FitFile {
  private readonly bytes: ByteWriter;
  private readonly layouts: string[] = [];
  private readonly locals = new Map<number, number>();

  constructor(bytes: ByteWriter) {
    this.bytes = bytes;
    for (let i = 0; i < 14; i++) bytes.byte(0);
  }

  message(global: number, fields: readonly Field[], developer: readonly Field[] = []): void {
    const local = this.local(global);
    const layout = `${global}:${[...fields, ...developer].map((f) => `${f.number},${f.kind},${sizeOf(f)}`).join(';')}`;
    if (this.layouts[local] !== layout) {
      this.define(local, global, fields, developer);
      this.layouts[local] = layout;
    }
    this.bytes.byte(local);
    for (const f of fields) this.put(f);
    for (const f of developer) this.put(f);
  }

  close(): Uint8Array<ArrayBuffer> {
    const size = this.bytes.length - 14;
    this.bytes.header(size);
    this.bytes.number(checksum(this.bytes.view(14, this.bytes.length), checksum(this.bytes.view(0, 14))), 2);
    return this.bytes.done();
  }

  private local(global: number): number {
    const known = this.locals.get(global);
    if (known !== undefined) return known;
    const next = this.locals.size;
    this.locals.set(global, next);
    return next;
  }

  private define(local: number, global: number, fields: readonly Field[], developer: readonly Field[]): void {
    const { bytes } = this;
    bytes.byte(0x40 | local | (developer.length > 0 ? 0x20 : 0));
    bytes.byte(0);
    bytes.byte(0); // little-endian
    bytes.number(global, 2);
    bytes.byte(fields.length);
    for (const f of fields) {
      bytes.byte(f.number);
      bytes.byte(sizeOf(f));
      bytes.byte(kinds[f.kind].code);
    }
    if (developer.length === 0) return;
    bytes.byte(developer.length);
    for (const f of developer) {
      bytes.byte(f.number);
      bytes.byte(sizeOf(f));
      bytes.byte(0);
    }
  }

  private put({ kind, value }: Field): void {
    if (typeof value === 'string') {
      for (const byte of encoder.encode(value)) this.bytes.byte(byte);
      this.bytes.byte(0);
    } else if (typeof value === 'number') {
      const { size, invalid } = kinds[kind];
      this.bytes.number(Number.isNaN(value) ? invalid : within(value, kind), size);
    } else {
      for (const byte of value) this.bytes.byte(byte);
    }
  }
}

const encoder = new TextEncoder();

function sizeOf({ kind, value }: Field): number {
  if (typeof value === 'string') return encoder.encode(value).length + 1;
  return typeof value === 'number' ? kinds[kind].size : value.length;
}

/** Held inside what the kind can say, short of its "invalid". */
function within(value: number, kind: Kind): number {
  if (kind === 'u32z') return value;
  return Math.max(kind === 's8' ? -127 : 0, Math.min(kinds[kind].invalid - 1, value));
}

/** CRC-16 of the protocol (polynomial 0xA001, reflected), a nibble at a time. */
function checksum(bytes: Uint8Array, start = 0): number {
  let crc = start;
  for (const byte of bytes) {
    for (const nibble of [byte & 0xf, byte >> 4]) {
      const carry = crcTable[crc & 0xf]!;
      crc = ((crc >> 4) & 0x0fff) ^ carry ^ crcTable[nibble]!;
    }
  }
  return crc;
}
const crcTable = [
  0x0000, 0xcc01, 0xd801, 0x1400, 0xf001, 0x3c00, 0x2800, 0xe401, 0xa001, 0x6c00, 0x7800, 0xb401, 0x5000,
  0x9c01, 0x8801, 0x4400,
];

class ByteWriter {
  length = 0;
  private buffer: Uint8Array<ArrayBuffer>;

  constructor(size: number) {
    this.buffer = new Uint8Array(size);
  }

  byte(value: number): void {
    if (this.length === this.buffer.length) {
      const larger = new Uint8Array(this.buffer.length * 2);
      larger.set(this.buffer);
      this.buffer = larger;
    }
    this.buffer[this.length++] = value & 0xff;
  }

  number(value: number, size: number): void {
    let rest = value;
    for (let i = 0; i < size; i++) {
      this.byte(rest & 0xff);
      rest = Math.floor(rest / 256);
    }
  }

  /** 14 bytes: protocol 2.0, profile 21.32, size of the data, own checksum. */
  header(size: number): void {
    const end = this.length;
    this.length = 0;
    this.byte(14);
    this.byte(0x20);
    this.number(2132, 2);
    this.number(size, 4);
    for (const letter of encoder.encode('.FIT')) this.byte(letter);
    this.number(checksum(this.view(0, 12)), 2);
    this.length = end;
  }

  view(from: number, to: number): Uint8Array {
    return this.buffer.subarray(from, to);
  }

  done(): Uint8Array<ArrayBuffer> {
    return this.buffer.slice(0, this.length);
  }
}
