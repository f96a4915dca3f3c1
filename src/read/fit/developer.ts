import { shortName } from '../text.ts';
import type { Part, Place } from './parts.ts';
import type { Definition } from './walk.ts';

/** A field that an app added to the file, as its field_description message describes it. */
export interface DeveloperField {
  /** The property under which the decoded records carry it. */
  readonly key: string;
  readonly name: string;
  readonly units: string;
}

/** The developer fields of all parts of a file, by what they are. */
export type DeveloperFields = Map<string, DeveloperField>;

/** Fields of the message field_description (FIT Profile). */
const developerIndex = 0;
const definitionNumber = 1;
const fieldName = 3;
const unitsName = 8;

/**
 * Gives every developer field a name of its own in `copy`, a copy of the part's bytes from its start on, and
 * notes it in `known`. The decoder writes developer fields over native ones of the same name, and over one
 * another; under keys of ours they can do neither.
 */
export function renameDeveloperFields(copy: Uint8Array, part: Part, known: DeveloperFields): void {
  for (const { definition, at } of part.fieldDescriptions) {
    const place = { definition, at: at - part.start };
    const name = textOf(copy, place, fieldName);
    if (name === null) continue;
    const identity = `${byteOf(copy, place, developerIndex)} ${byteOf(copy, place, definitionNumber)} ${name}`;
    const field = known.get(identity) ?? {
      key: `f${known.size.toString(36).padStart(3, '0')}`,
      name,
      units: textOf(copy, place, unitsName) ?? '',
    };
    known.set(identity, field);
    for (const { offset, size } of fieldsOf(definition, fieldName)) {
      const stored = copy.subarray(place.at + offset, place.at + offset + size);
      // Too short for a key: too short for any name that matters, too.
      if (size >= field.key.length) stored.fill(0).set(new TextEncoder().encode(field.key));
    }
  }
}

const fieldsOf = (definition: Definition, number: number) =>
  definition.fields.filter((field) => field.number === number);

function byteOf(bytes: Uint8Array, { definition, at }: Place, number: number): number {
  const field = fieldsOf(definition, number).at(-1);
  return field === undefined ? 0xff : bytes[at + field.offset]!;
}

function textOf(bytes: Uint8Array, { definition, at }: Place, number: number): string | null {
  const field = fieldsOf(definition, number).at(-1);
  if (field === undefined) return null;
  const content = bytes.subarray(at + field.offset, at + field.offset + field.size);
  const end = content.indexOf(0);
  return shortName(new TextDecoder().decode(end === -1 ? content : content.subarray(0, end)));
}
