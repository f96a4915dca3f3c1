import { shortName } from '../text.ts';
import { type BaseType, baseTypeOf } from './base-types.ts';
import type { Definition, DeveloperPlace } from './walk.ts';

/** A field that an app added to the file, as its field_description message describes it. */
export interface DeveloperField {
  /** Where records name it: see `keyOf`. */
  readonly key: number;
  readonly name: string;
  readonly units: string;
  /** Undefined where the protocol has no such number. */
  readonly type: BaseType | undefined;
  /** A stored number stands for number / scale + shift. */
  readonly scale: number;
  readonly shift: number;
}

/** Fields of the message field_description (FIT Profile). */
const numbers = { app: 0, number: 1, baseType: 2, name: 3, scale: 6, offset: 7, units: 8 } as const;
const invalid = { uint8: 0xff, sint8: 0x7f } as const;

/** One number for an app's index and the field's number: records name developer fields by both. */
export function keyOf({ app, number }: Pick<DeveloperPlace, 'app' | 'number'>): number {
  return (app << 8) | number;
}

/** The field that a field_description describes whose content begins at `at`; null where it has no name. */
export function describedField(bytes: Uint8Array, definition: Definition, at: number): DeveloperField | null {
  const content = bytes.subarray(at, at + definition.size);
  const byte = (number: number, otherwise: number) =>
    contentOf(content, definition, number)?.[0] ?? otherwise;
  const name = textOf(content, definition, numbers.name);
  if (name === null) return null;
  const scale = byte(numbers.scale, invalid.uint8);
  const offset = byte(numbers.offset, invalid.sint8);
  return {
    key: keyOf({ app: byte(numbers.app, invalid.uint8), number: byte(numbers.number, invalid.uint8) }),
    name,
    units: textOf(content, definition, numbers.units) ?? '',
    type: baseTypeOf(byte(numbers.baseType, invalid.uint8)),
    scale: scale === invalid.uint8 || scale === 0 ? 1 : scale,
    // Stored as sint8, and taken off (FIT Profile: number / scale - offset).
    shift: offset === invalid.sint8 ? 0 : -((offset << 24) >> 24),
  };
}

function contentOf(content: Uint8Array, { fields }: Definition, number: number): Uint8Array | null {
  const field = fields.findLast((one) => one.number === number);
  return field === undefined ? null : content.subarray(field.offset, field.offset + field.size);
}

function textOf(content: Uint8Array, definition: Definition, number: number): string | null {
  const stored = contentOf(content, definition, number);
  if (stored === null) return null;
  const end = stored.indexOf(0);
  return shortName(new TextDecoder().decode(end === -1 ? stored : stored.subarray(0, end)));
}
