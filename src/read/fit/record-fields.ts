import { type BaseType, baseTypeOf, baseTypes, threeBytes } from './base-types.ts';
import type { Field } from './walk.ts';

/** A field of the record message: a stored number stands for number / scale + shift. */
interface RecordField {
  readonly number: number;
  readonly type: BaseType;
  readonly scale: number;
  readonly shift: number;
}

const field = (number: number, type: BaseType, scale = 1, shift = 0): RecordField => ({
  number,
  type,
  scale,
  shift,
});

const { uint8, sint8, uint16, sint32, uint32 } = baseTypes;

/** Seconds from 1970 to the FIT epoch, 1989-12-31T00:00:00Z (FIT Profile, type date_time). */
const fitEpoch = 631_065_600;

/** The fields that reading uses, in SI units and rpm (FIT Profile, message record). */
export const recordFields = {
  timestamp: field(253, uint32, 1, fitEpoch),
  power: field(7, uint16),
  cadence: field(4, uint8),
  fractional_cadence: field(53, uint8, 128),
  heart_rate: field(3, uint8),
  speed: field(6, uint16, 1000),
  enhanced_speed: field(73, uint32, 1000),
  altitude: field(2, uint16, 5, -500),
  enhanced_altitude: field(78, uint32, 5, -500),
  distance: field(5, uint32, 100),
  temperature: field(13, sint8),
  left_right_balance: field(30, uint8),
  compressed_speed_distance: field(8, threeBytes),
  ebike_battery_level: field(118, uint8),
  ebike_assist_mode: field(119, uint8),
  position_lat: field(0, sint32),
  position_long: field(1, sint32),
} as const;

export type RecordFieldName = keyof typeof recordFields;
export type RecordColumns = { readonly [F in RecordFieldName]?: Float64Array };

const names: ReadonlyMap<number, RecordFieldName> = new Map(
  Object.entries(recordFields).map(([name, { number }]) => [number, name as RecordFieldName]),
);

/** What a field of a record is to reading; undefined when it is nothing to it. */
export function recordFieldName({ number }: Field): RecordFieldName | undefined {
  return names.get(number);
}

/** Types of one byte each, which recorders use in place of one another. */
const bytes: readonly BaseType[] = [baseTypes.enum, baseTypes.uint8, baseTypes.byte];

/**
 * How the number of a field is stored; null where its type or size is none that it may have. Power is read
 * whatever number type a recorder gave it.
 */
export function storedType(name: RecordFieldName, { baseType, size }: Field): BaseType | null {
  const { type } = recordFields[name];
  const stored = baseTypeOf(baseType);
  if (stored === undefined || size === 0 || size % stored.size !== 0) return null;
  if (stored === type || name === 'power') return stored;
  if (!bytes.includes(stored)) return null;
  if (type === threeBytes) return size === threeBytes.size ? threeBytes : null;
  return bytes.includes(type) ? stored : null;
}
