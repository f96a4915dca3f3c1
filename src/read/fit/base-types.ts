/** A base type of the open FIT protocol that can hold a number. */
export interface BaseType {
  readonly name: string;
  /** The number by which definition messages name it. */
  readonly id: number;
  /** Bytes. */
  readonly size: number;
  /** The value that stands for none. */
  readonly invalid: number;
  read(view: DataView, at: number, littleEndian: boolean): number;
}

/** How each is read and which value stands for none. Source: FIT Protocol, table "FIT Base Types and Invalid Values". */
export const baseTypes = {
  enum: { name: 'enum', id: 0x00, size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) },
  sint8: { name: 'sint8', id: 0x01, size: 1, invalid: 0x7f, read: (v, at) => v.getInt8(at) },
  uint8: { name: 'uint8', id: 0x02, size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) },
  sint16: { name: 'sint16', id: 0x83, size: 2, invalid: 0x7fff, read: (v, at, le) => v.getInt16(at, le) },
  uint16: { name: 'uint16', id: 0x84, size: 2, invalid: 0xffff, read: (v, at, le) => v.getUint16(at, le) },
  sint32: {
    name: 'sint32',
    id: 0x85,
    size: 4,
    invalid: 2 ** 31 - 1,
    read: (v, at, le) => v.getInt32(at, le),
  },
  uint32: {
    name: 'uint32',
    id: 0x86,
    size: 4,
    invalid: 2 ** 32 - 1,
    read: (v, at, le) => v.getUint32(at, le),
  },
  float32: {
    name: 'float32',
    id: 0x88,
    size: 4,
    invalid: Number.NaN,
    read: (v, at, le) => v.getFloat32(at, le),
  },
  float64: {
    name: 'float64',
    id: 0x89,
    size: 8,
    invalid: Number.NaN,
    read: (v, at, le) => v.getFloat64(at, le),
  },
  uint8z: { name: 'uint8z', id: 0x0a, size: 1, invalid: 0, read: (v, at) => v.getUint8(at) },
  uint16z: { name: 'uint16z', id: 0x8b, size: 2, invalid: 0, read: (v, at, le) => v.getUint16(at, le) },
  uint32z: { name: 'uint32z', id: 0x8c, size: 4, invalid: 0, read: (v, at, le) => v.getUint32(at, le) },
  byte: { name: 'byte', id: 0x0d, size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) },
} as const satisfies Readonly<Record<string, BaseType>>;

const byId: ReadonlyMap<number, BaseType> = new Map(Object.values(baseTypes).map((type) => [type.id, type]));

/** The base type of this number; undefined where it can hold no number. */
export function baseTypeOf(id: number): BaseType | undefined {
  return byId.get(id);
}

/** Where messages of one definition store a number. */
export interface Stored {
  readonly type: BaseType;
  /** From the first byte of a message's content. */
  readonly offset: number;
  readonly littleEndian: boolean;
}

/** The number of the message whose content begins at `at`; NaN where it is none, or not finite. */
export function numberAt({ type, offset, littleEndian }: Stored, view: DataView, at: number): number {
  const value = type.read(view, at + offset, littleEndian);
  return value === type.invalid || !Number.isFinite(value) ? Number.NaN : value;
}
