/** A base type of the open FIT protocol that can hold a number. */
export interface BaseType {
  readonly name: string;
  /** The number by which definition messages name it. */
  readonly id: number;
  /** Bytes. */
  readonly size: number;
  /** The value that stands for none. */
  readonly invalid: number;
}

/** Source: FIT Protocol, table "FIT Base Types and Invalid Values". */
export const baseTypes = {
  enum: { name: 'enum', id: 0x00, size: 1, invalid: 0xff },
  sint8: { name: 'sint8', id: 0x01, size: 1, invalid: 0x7f },
  uint8: { name: 'uint8', id: 0x02, size: 1, invalid: 0xff },
  sint16: { name: 'sint16', id: 0x83, size: 2, invalid: 0x7fff },
  uint16: { name: 'uint16', id: 0x84, size: 2, invalid: 0xffff },
  sint32: { name: 'sint32', id: 0x85, size: 4, invalid: 0x7fffffff },
  uint32: { name: 'uint32', id: 0x86, size: 4, invalid: 0xffffffff },
  float32: { name: 'float32', id: 0x88, size: 4, invalid: Number.NaN },
  float64: { name: 'float64', id: 0x89, size: 8, invalid: Number.NaN },
  uint8z: { name: 'uint8z', id: 0x0a, size: 1, invalid: 0 },
  uint16z: { name: 'uint16z', id: 0x8b, size: 2, invalid: 0 },
  uint32z: { name: 'uint32z', id: 0x8c, size: 4, invalid: 0 },
  byte: { name: 'byte', id: 0x0d, size: 1, invalid: 0xff },
} as const satisfies Readonly<Record<string, BaseType>>;

/** An array of three bytes as one number, the lowest first: none when all three are. */
export const threeBytes = {
  name: 'three bytes',
  id: -1,
  size: 3,
  invalid: 0xffffff,
} as const satisfies BaseType;

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
export function numberAt(stored: Stored, view: DataView, at: number): number {
  const { type } = stored;
  const value = rawAt(type.id, view, at + stored.offset, stored.littleEndian);
  return value === type.invalid || !Number.isFinite(value) ? Number.NaN : value;
}

function rawAt(id: number, view: DataView, at: number, littleEndian: boolean): number {
  switch (id) {
    case baseTypes.sint8.id:
      return view.getInt8(at);
    case baseTypes.sint16.id:
      return view.getInt16(at, littleEndian);
    case baseTypes.uint16.id:
    case baseTypes.uint16z.id:
      return view.getUint16(at, littleEndian);
    case baseTypes.sint32.id:
      return view.getInt32(at, littleEndian);
    case baseTypes.uint32.id:
    case baseTypes.uint32z.id:
      return view.getUint32(at, littleEndian);
    case baseTypes.float32.id:
      return view.getFloat32(at, littleEndian);
    case baseTypes.float64.id:
      return view.getFloat64(at, littleEndian);
    case threeBytes.id:
      return view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
    default:
      return view.getUint8(at);
  }
}
