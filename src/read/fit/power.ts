import { type BaseType, baseTypes, uint16 } from './base-types.ts';
import { kinds, type Part, powerIn } from './parts.ts';
import { freshAllowance, walk } from './walk.ts';

/** Base types other than the profile's uint16 in which a part stores power; the decoder drops those. */
export function oddPowerTypes(part: Part): string[] {
  return [...part.powerTypes]
    .filter((type) => type !== uint16)
    .map((type) => baseTypes.get(type)?.name ?? `type ${type}`);
}

/** Native power (W) of each record of a part, whatever number type it is stored in; NaN where it has none. */
export function nativePower(bytes: Uint8Array, part: Part): Float64Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const power = new Float64Array(part.records).fill(Number.NaN);
  let record = 0;
  walk(bytes, part.start + part.headerSize, part.end, freshAllowance(), (definition, at) => {
    if (definition.kind !== kinds.record) return;
    const field = powerIn(definition);
    const type = field && baseTypes.get(field.baseType);
    if (field !== undefined && type !== undefined && field.size >= type.size) {
      power[record] = valueAt(type, view, at + field.offset, definition.littleEndian);
    }
    record++;
  });
  return power;
}

function valueAt(type: BaseType, view: DataView, at: number, littleEndian: boolean): number {
  const value = type.read(view, at, littleEndian);
  return value === type.invalid || !Number.isFinite(value) ? Number.NaN : value;
}
