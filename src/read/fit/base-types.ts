/**
 * The base types of the open FIT protocol that can hold a number: how each is read and which value stands
 * for "invalid". Source: FIT Protocol, table "FIT Base Types and Invalid Values".
 */
export interface BaseType {
  readonly name: string;
  readonly size: number;
  readonly invalid: number;
  read(view: DataView, at: number, littleEndian: boolean): number;
}

const types: readonly (readonly [number, BaseType])[] = [
  [0x00, { name: 'enum', size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) }],
  [0x01, { name: 'sint8', size: 1, invalid: 0x7f, read: (v, at) => v.getInt8(at) }],
  [0x02, { name: 'uint8', size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) }],
  [0x83, { name: 'sint16', size: 2, invalid: 0x7fff, read: (v, at, le) => v.getInt16(at, le) }],
  [0x84, { name: 'uint16', size: 2, invalid: 0xffff, read: (v, at, le) => v.getUint16(at, le) }],
  [0x85, { name: 'sint32', size: 4, invalid: 0x7fffffff, read: (v, at, le) => v.getInt32(at, le) }],
  [0x86, { name: 'uint32', size: 4, invalid: 0xffffffff, read: (v, at, le) => v.getUint32(at, le) }],
  [0x88, { name: 'float32', size: 4, invalid: Number.NaN, read: (v, at, le) => v.getFloat32(at, le) }],
  [0x89, { name: 'float64', size: 8, invalid: Number.NaN, read: (v, at, le) => v.getFloat64(at, le) }],
  [0x0a, { name: 'uint8z', size: 1, invalid: 0, read: (v, at) => v.getUint8(at) }],
  [0x8b, { name: 'uint16z', size: 2, invalid: 0, read: (v, at, le) => v.getUint16(at, le) }],
  [0x8c, { name: 'uint32z', size: 4, invalid: 0, read: (v, at, le) => v.getUint32(at, le) }],
  [0x0d, { name: 'byte', size: 1, invalid: 0xff, read: (v, at) => v.getUint8(at) }],
];

export const baseTypes: ReadonlyMap<number, BaseType> = new Map(types);
export const uint16 = 0x84;
