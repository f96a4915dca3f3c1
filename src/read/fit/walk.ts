import { Problem } from '../../problem.ts';
import { limits } from '../limits.ts';

/** One field of a definition message. */
export interface Field {
  readonly number: number;
  readonly size: number;
  readonly baseType: number;
  /** Offset from the first byte of the message's content. */
  readonly offset: number;
}

/** A field that a field_description message describes. */
export interface DeveloperPlace {
  /** Which app it is of. */
  readonly app: number;
  readonly number: number;
  readonly size: number;
  readonly offset: number;
}

/** What a definition message lays down for the data messages that name it. */
export interface Definition {
  /** Global message number. */
  readonly kind: number;
  readonly littleEndian: boolean;
  readonly fields: readonly Field[];
  readonly developerFields: readonly DeveloperPlace[];
  /** Bytes of content in a data message. */
  readonly size: number;
}

/** Global message numbers (FIT Profile, type mesg_num). */
export const kinds = { record: 20, fieldDescription: 206 } as const;

/** Told of a whole data message: its definition, where its content begins (its header lies before), and its end. */
export type Visit = (definition: Definition, at: number, end: number) => void;

/** How much may still be taken in, over all parts of a file. */
export interface Allowance {
  messages: number;
  fields: number;
}

export const freshAllowance = (): Allowance => ({ messages: limits.fitMessages, fields: limits.fitFields });

const compressedHeader = 0x80;
const definitionHeader = 0x40;
const developerFlag = 0x20;
const reservedFlag = 0x10;
/** Bits of a compressed header that hold the last bits of a time. */
export const timeBits = 0x1f;
const timestampField = 253;

/** The last five bits of the time that a compressed header carries; null of a plain header. */
export function timeInHeader(header: number): number | null {
  return (header & compressedHeader) === 0 ? null : header & timeBits;
}

/**
 * Walks the framing of FIT messages from `from`: follows the definitions and stops before the first message
 * that is not whole or makes no sense. Decodes nothing.
 *
 * @returns the end of the last whole message.
 * @throws Problem `format-limits` when the allowance is used up.
 */
export function walk(
  bytes: Uint8Array,
  from: number,
  to: number,
  allowance: Allowance,
  visit: Visit,
): number {
  const definitions: (Laid | undefined)[] = new Array(16).fill(undefined);
  let at = from;
  while (at < to) {
    const header = bytes[at]!;
    let end: number;
    let fields: number;
    if ((header & compressedHeader) === 0 && (header & definitionHeader) !== 0) {
      const read = readDefinition(bytes, at, to);
      if (read === null) return at;
      definitions[header & 0x0f] = read;
      end = read.end;
      fields = read.plain.fields.length;
    } else {
      const compressed = (header & compressedHeader) !== 0;
      if (!compressed && (header & (developerFlag | reservedFlag)) !== 0) return at;
      const laid = definitions[compressed ? (header >> 5) & 0x03 : header & 0x0f];
      if (laid === undefined) return at;
      const definition = compressed ? laid.compressed : laid.plain;
      end = at + 1 + definition.size;
      if (end > to) return at;
      visit(definition, at + 1, end);
      fields = definition.fields.length + definition.developerFields.length;
    }
    allowance.messages--;
    allowance.fields -= fields;
    if (allowance.messages < 0 || allowance.fields < 0) throw tooMany();
    at = end;
  }
  return at;
}

/** A definition for messages under either header, and where its own message ends. */
interface Laid {
  readonly plain: Definition;
  readonly compressed: Definition;
  readonly end: number;
}

function readDefinition(bytes: Uint8Array, at: number, to: number): Laid | null {
  if (at + 6 > to) return null;
  const header = bytes[at]!;
  const architecture = bytes[at + 2]!;
  const nativeEnd = at + 6 + bytes[at + 5]! * 3;
  const hasDeveloperFields = (header & developerFlag) !== 0;
  if ((header & reservedFlag) !== 0 || architecture > 1) return null;
  if (nativeEnd + (hasDeveloperFields ? 1 : 0) > to) return null;
  const end = hasDeveloperFields ? nativeEnd + 1 + bytes[nativeEnd]! * 3 : nativeEnd;
  if (end > to) return null;

  let size = 0;
  const fields: Field[] = [];
  for (let i = at + 6; i < nativeEnd; i += 3) {
    fields.push({ number: bytes[i]!, size: bytes[i + 1]!, baseType: bytes[i + 2]!, offset: size });
    size += bytes[i + 1]!;
  }
  const developerFields: DeveloperPlace[] = [];
  for (let i = nativeEnd + 1; i < end; i += 3) {
    developerFields.push({ number: bytes[i]!, size: bytes[i + 1]!, app: bytes[i + 2]!, offset: size });
    size += bytes[i + 1]!;
  }
  const littleEndian = architecture === 0;
  const kind = littleEndian ? bytes[at + 3]! | (bytes[at + 4]! << 8) : (bytes[at + 3]! << 8) | bytes[at + 4]!;
  const plain = { kind, littleEndian, fields, developerFields, size };
  return { plain, compressed: withoutTime(plain), end };
}

/** A compressed header carries the time itself: a leading timestamp field then has no bytes of its own. */
function withoutTime(definition: Definition): Definition {
  const [first, ...rest] = definition.fields;
  if (first?.number !== timestampField) return definition;
  const moved = <P extends { readonly offset: number }>(place: P) => ({
    ...place,
    offset: place.offset - first.size,
  });
  return {
    ...definition,
    fields: rest.map(moved),
    developerFields: definition.developerFields.map(moved),
    size: definition.size - first.size,
  };
}

function tooMany(): Problem {
  return new Problem({
    code: 'format-limits',
    what: 'this file holds more messages than a recording of a whole day',
    hint: 'Hand in the recording of this ride alone',
  });
}
