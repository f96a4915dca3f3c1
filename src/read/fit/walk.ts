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

/** What a definition message lays down for the data messages that name it. */
export interface Definition {
  /** Global message number: 20 is a record. */
  readonly kind: number;
  readonly littleEndian: boolean;
  readonly fields: readonly Field[];
  readonly developerFields: number;
  /** Bytes of content in a data message. */
  readonly size: number;
}

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
const timestampField = 253;

/**
 * Walks the framing of FIT messages from `from`: follows the definitions and stops before the first message
 * that is not whole or makes no sense. Decodes nothing; `visit` is told of every whole data message and where
 * its content begins.
 *
 * @returns the end of the last whole message.
 * @throws Problem `format-limits` when the allowance is used up.
 */
export function walk(
  bytes: Uint8Array,
  from: number,
  to: number,
  allowance: Allowance,
  visit: (definition: Definition, at: number) => void,
): number {
  const definitions: (Definition | undefined)[] = new Array(16).fill(undefined);
  let at = from;
  while (at < to) {
    const header = bytes[at]!;
    let end: number;
    let fields: number;
    if ((header & compressedHeader) === 0 && (header & definitionHeader) !== 0) {
      const read = readDefinition(bytes, at, to);
      if (read === null) return at;
      definitions[header & 0x0f] = read.definition;
      end = read.end;
      fields = read.definition.fields.length;
    } else {
      const compressed = (header & compressedHeader) !== 0;
      if (!compressed && (header & (developerFlag | reservedFlag)) !== 0) return at;
      const definition = definitions[compressed ? (header >> 5) & 0x03 : header & 0x0f];
      if (definition === undefined) return at;
      end = at + 1 + (compressed ? compressedSize(definition) : definition.size);
      if (end > to) return at;
      visit(definition, at + 1);
      fields = definition.fields.length + definition.developerFields;
    }
    allowance.messages--;
    allowance.fields -= fields;
    if (allowance.messages < 0 || allowance.fields < 0) throw tooMany();
    at = end;
  }
  return at;
}

/** A compressed header carries the time itself: a leading timestamp field then has no bytes of its own. */
function compressedSize({ fields, size }: Definition): number {
  const first = fields[0];
  return first?.number === timestampField ? size - first.size : size;
}

function readDefinition(
  bytes: Uint8Array,
  at: number,
  to: number,
): { definition: Definition; end: number } | null {
  if (at + 6 > to) return null;
  const header = bytes[at]!;
  const architecture = bytes[at + 2]!;
  const count = bytes[at + 5]!;
  const nativeEnd = at + 6 + count * 3;
  const hasDeveloperFields = (header & developerFlag) !== 0;
  if ((header & reservedFlag) !== 0 || architecture > 1) return null;
  if (nativeEnd + (hasDeveloperFields ? 1 : 0) > to) return null;
  const developerFields = hasDeveloperFields ? bytes[nativeEnd]! : 0;
  const end = nativeEnd + (hasDeveloperFields ? 1 + developerFields * 3 : 0);
  if (end > to) return null;

  let size = 0;
  const fields: Field[] = [];
  for (let i = at + 6; i < nativeEnd; i += 3) {
    fields.push({ number: bytes[i]!, size: bytes[i + 1]!, baseType: bytes[i + 2]!, offset: size });
    size += bytes[i + 1]!;
  }
  for (let i = nativeEnd + 1; i < end; i += 3) size += bytes[i + 1]!;
  const littleEndian = architecture === 0;
  const kind = littleEndian ? bytes[at + 3]! | (bytes[at + 4]! << 8) : (bytes[at + 3]! << 8) | bytes[at + 4]!;
  return { definition: { kind, littleEndian, fields, developerFields, size }, end };
}

function tooMany(): Problem {
  return new Problem({
    code: 'format-limits',
    what: 'this file holds more messages than a recording of a whole day',
    hint: 'Hand in the recording of this ride alone',
  });
}
