import type { Quantity, Subject, Unit, Value, Values } from '../../types.ts';
import { decimals } from '../../units.ts';
import { channelNames, factNames, formatNames } from './names.ts';
import { number, position, quantity } from './number.ts';
import { foreign, join, type Sentence } from './sentence.ts';

/**
 * `{name}` · `{name:s}` gives a bare number its unit · `{name:at}` is a place in the ride ·
 * `{name:who}` is the meter that a subject stands for ·
 * `{name|record|records}` adds the noun in the right number.
 */
const placeholder = /\{([A-Za-z][\w-]*)(?::([^{}|]+))?(?:\|([^{}|]*)\|([^{}|]*))?\}/g;

/** What measures say of a finding in words instead of numbers. */
const wordsOfMeasures = [
  'none',
  '2 parameters',
  '3 parameters',
  'women',
  'open',
  'below to above',
  'above to below',
  'plain mean',
  'weighted mean',
  'throughout',
  'in one half of the ride',
] as const;

/** Strings that our own measures and readers put into a sentence, and how they are said. */
const vocabulary = new Map<string, string>([
  ...Object.entries({ ...channelNames, ...factNames, ...formatNames }),
  ...Object.values(channelNames).map((word) => [word, word] as const),
  ...wordsOfMeasures.map((word) => [word, word] as const),
]);

/** A word of ours, or a list of them with commas; null for everything else, which is a stranger's. */
export function ownWords(text: string): string | null {
  const words = text.split(', ').map((word) => vocabulary.get(word));
  return words.includes(undefined) ? null : words.join(', ');
}

const isQuantity = (value: Value): value is Quantity => typeof value === 'object';
const isUnit = (text: string | undefined): text is Unit =>
  text !== undefined && Object.hasOwn(decimals, text);

/** How a report calls the meter that a subject stands for. */
export type NameOf = (subject: Subject) => string;

function said(value: Value, unit: string | undefined, nameOf: NameOf | null): Sentence {
  if (typeof value === 'string' && unit === 'who' && nameOf !== null) return [nameOf(value)];
  if (typeof value === 'string') return [ownWords(value) ?? foreign(value)];
  if (unit === 'at') return [position(isQuantity(value) ? value.value : value)];
  if (isQuantity(value)) return [quantity(value.value, value.unit)];
  return [isUnit(unit) ? quantity(value, unit) : number(value)];
}

/** True when every placeholder of the template has its value. */
export function fillable(template: string, values: Values): boolean {
  return [...template.matchAll(placeholder)].every(([, name]) => Object.hasOwn(values, name!));
}

/**
 * Fills a template's placeholders. A value that is not there is said to be unstated, never left blank.
 *
 * @param nameOf null: no meter is named, as in what was done to a file
 */
export function fill(template: string, values: Values, nameOf: NameOf | null = null): Sentence {
  const pieces: (string | Sentence)[] = [];
  let from = 0;
  for (const match of template.matchAll(placeholder)) {
    const [whole, name, unit, one, many] = match;
    pieces.push(template.slice(from, match.index));
    from = match.index + whole.length;
    if (!Object.hasOwn(values, name!)) pieces.push('an unstated value');
    else {
      const value = values[name!]!;
      pieces.push(said(value, unit, nameOf));
      if (one !== undefined) pieces.push(` ${(isQuantity(value) ? value.value : value) === 1 ? one : many}`);
    }
  }
  return join([...pieces, template.slice(from)]);
}
