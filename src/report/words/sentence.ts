import { shorten } from '../clean.ts';

/** A stranger's string inside our own words: each medium quotes and escapes it in its own way. */
export interface Foreign {
  readonly foreign: string;
}
/** Our words and strangers' names, in order. */
export type Sentence = readonly (string | Foreign)[];

type Piece = string | number | Foreign | Sentence;

/** Longest name shown in a sentence; files keep theirs in full in the JSON. */
const longestName = 80;

export function foreign(text: string): Foreign {
  return { foreign: shorten(text, longestName) };
}

/** Builds a sentence from a template; pieces may be sentences themselves. */
export function say(parts: TemplateStringsArray, ...pieces: readonly Piece[]): Sentence {
  return join(parts.flatMap((part, index) => (index < pieces.length ? [part, pieces[index]!] : [part])));
}

/** Puts pieces one behind another, with `between` between them. */
export function join(pieces: readonly Piece[], between = ''): Sentence {
  const out: (string | Foreign)[] = [];
  const add = (piece: string | Foreign) => {
    const last = out.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') out[out.length - 1] = last + piece;
    else if (piece !== '') out.push(piece);
  };
  for (const [index, piece] of pieces.entries()) {
    if (index > 0) add(between);
    if (typeof piece === 'number') add(String(piece));
    else if (typeof piece === 'string' || 'foreign' in piece) add(piece);
    else for (const one of piece) add(one);
  }
  return out;
}

/** "a, b and c". */
export function list(pieces: readonly Piece[], last = 'and'): Sentence {
  if (pieces.length < 2) return join(pieces);
  return join([join(pieces.slice(0, -1), ', '), ` ${last} `, pieces.at(-1)!]);
}

/** In one string, strangers' words in quotation marks: for a terminal, a log, a cell. */
export function plain(sentence: Sentence): string {
  return sentence.map((piece) => (typeof piece === 'string' ? piece : `“${piece.foreign}”`)).join('');
}

/** The same with a capital at the front. */
export function capital(sentence: Sentence): Sentence {
  const [first, ...rest] = sentence;
  return typeof first === 'string' ? [first.charAt(0).toUpperCase() + first.slice(1), ...rest] : sentence;
}

/** A name from outside our tables where only a string will do: in a drawing or a cell, which quote it themselves. */
export function foreignText(text: string): string {
  return foreign(text).foreign;
}
