/** Takes a stored number out of a file. */
type Take = (view: DataView, at: number, littleEndian: boolean) => number;

/** A base type of the open FIT protocol that can hold a number. */
export interface BaseType {
  readonly name: string;
  /** The number by which definition messages name it. */
  readonly id: number;
  /** Bytes. */
  readonly size: number;
  /** The value that stands for none. */
  readonly invalid: number;
  readonly take: Take;
}

const takeUint8: Take = (view, at) => view.getUint8(at);
const takeUint16: Take = (view, at, littleEndian) => view.getUint16(at, littleEndian);
const takeUint32: Take = (view, at, littleEndian) => view.getUint32(at, littleEndian);
const takeSint8: Take = (view, at) => view.getInt8(at);
const takeSint16: Take = (view, at, littleEndian) => view.getInt16(at, littleEndian);
const takeSint32: Take = (view, at, littleEndian) => view.getInt32(at, littleEndian);
const takeFloat32: Take = (view, at, littleEndian) => view.getFloat32(at, littleEndian);
const takeFloat64: Take = (view, at, littleEndian) => view.getFloat64(at, littleEndian);

/** Source: FIT Protocol, table "FIT Base Types and Invalid Values". */
export const baseTypes = {
  enum: { name: 'enum', id: 0x00, size: 1, invalid: 0xff, take: takeUint8 },
  sint8: { name: 'sint8', id: 0x01, size: 1, invalid: 0x7f, take: takeSint8 },
  uint8: { name: 'uint8', id: 0x02, size: 1, invalid: 0xff, take: takeUint8 },
  sint16: { name: 'sint16', id: 0x83, size: 2, invalid: 0x7fff, take: takeSint16 },
  uint16: { name: 'uint16', id: 0x84, size: 2, invalid: 0xffff, take: takeUint16 },
  sint32: { name: 'sint32', id: 0x85, size: 4, invalid: 0x7fffffff, take: takeSint32 },
  uint32: { name: 'uint32', id: 0x86, size: 4, invalid: 0xffffffff, take: takeUint32 },
  float32: { name: 'float32', id: 0x88, size: 4, invalid: Number.NaN, take: takeFloat32 },
  float64: { name: 'float64', id: 0x89, size: 8, invalid: Number.NaN, take: takeFloat64 },
  uint8z: { name: 'uint8z', id: 0x0a, size: 1, invalid: 0, take: takeUint8 },
  uint16z: { name: 'uint16z', id: 0x8b, size: 2, invalid: 0, take: takeUint16 },
  uint32z: { name: 'uint32z', id: 0x8c, size: 4, invalid: 0, take: takeUint32 },
  byte: { name: 'byte', id: 0x0d, size: 1, invalid: 0xff, take: takeUint8 },
} as const satisfies Readonly<Record<string, BaseType>>;

/** An array of three bytes as one number, the lowest first: none when all three are. */
export const threeBytes = {
  name: 'three bytes',
  id: -1,
  size: 3,
  invalid: 0xffffff,
  take: (view, at) => view.getUint16(at, true) | (view.getUint8(at + 2) << 16),
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
export function numberAt({ type, offset, littleEndian }: Stored, view: DataView, at: number): number {
  const value = type.take(view, at + offset, littleEndian);
  return isNumber(value, type) ? value : Number.NaN;
}

/** Whether what was taken stands for a number: neither the type's value for none, nor infinite. */
export function isNumber(taken: number, { invalid }: BaseType): boolean {
  return taken !== invalid && Number.isFinite(taken);
}
