import { rollingHashes } from '../math/repeats.ts';
import type { Recording } from '../types.ts';

/*
 * Marks of content: digests of short stretches, chosen by content alone, so that two copies choose the same
 * ones wherever they lie (winnowing: Schleimer, Wilkerson and Aiken 2003, SIGMOD, p. 76). A stretch that two
 * recordings share for `span + reach - 1` samples shares at least one mark. A mark is 48 bits made from thirty
 * samples of some seven bits each, or from forty-five of which it knows no more than whether they rise or fall:
 * no sample can be had from it. These numbers are part of the form: other ones would make marks that cannot be
 * compared with those of earlier events.
 */

/** What is marked: power, cadence, and the rises and falls of power, which stay where somebody multiplied it. */
export const markedChannels = ['p', 'c', 'r'] as const;
type MarkedChannel = (typeof markedChannels)[number];

interface Kind {
  /** Samples in a marked stretch. */
  readonly span: number;
  /** Starting places of which one is chosen. */
  readonly reach: number;
  /** Least share of a stretch's samples at which the channel bends. */
  readonly bends: number;
  /** Least number of different changes. */
  readonly changes: number;
}

/** Cadence moves by a turn or two, so that two riders' may agree for long where it is smooth. */
export const kinds: Readonly<Record<MarkedChannel, Kind>> = {
  p: { span: 30, reach: 60, bends: 0.4, changes: 4 },
  c: { span: 30, reach: 60, bends: 0.6, changes: 5 },
  r: { span: 45, reach: 40, bends: 0.4, changes: 3 },
};
/** Marks of one channel at most: two days at one sample a second leave half as many. */
const mostMarks = 17_000;
const hexDigits = 12;
/** Digits of a place at most, to the base of 36: no recording has more samples. */
const placeDigits = 6;

export interface Mark {
  readonly channel: MarkedChannel;
  /** Sample of the file at which the marked stretch begins. */
  readonly at: number;
  readonly digest: string;
}

/** The marks of a recording's power, of its cadence, which stays where somebody rescaled power, and of how power moves. */
export function marksOf({ channels }: Pick<Recording, 'channels'>): string {
  const { power, cadence } = channels;
  const marks = [
    ...marksIn('p', power),
    ...marksIn('c', cadence),
    ...marksIn('r', power === undefined ? undefined : directions(power)),
  ];
  return marks.map(({ channel, at, digest }) => `${channel}${at.toString(36)}.${digest}`).join(' ');
}

/** Told of a mark: `digest` is its text as a whole number, of 48 bits. */
export type MarkTold = (channel: Mark['channel'], at: number, digest: number) => void;

/**
 * Reads marks from their text; what is none is passed over. A season holds millions of them: none is made into a
 * text or an object of its own.
 */
export function readMarks(text: string, tell: MarkTold): void {
  let from = 0;
  while (from < text.length) {
    const next = text.indexOf(' ', from);
    const end = next < 0 ? text.length : next;
    readMark(text, from, end, tell);
    from = end + 1;
  }
}

const isMarked = (letter: string | undefined): letter is MarkedChannel =>
  (markedChannels as readonly unknown[]).includes(letter);

function readMark(text: string, from: number, end: number, tell: MarkTold): void {
  const channel = text[from];
  const dot = end - hexDigits - 1;
  const digits = dot - from - 1;
  if (!isMarked(channel) || digits < 1 || digits > placeDigits || text[dot] !== '.') return;
  const at = wholeNumber(text, from + 1, dot, 36);
  const digest = wholeNumber(text, dot + 1, end, 16);
  if (!Number.isNaN(at + digest)) tell(channel, at, digest);
}

/** The digits from one place to before another; NaN where one of them is none. */
function wholeNumber(text: string, from: number, to: number, base: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) {
    const code = text.charCodeAt(i);
    const digit = code >= 48 && code <= 57 ? code - 48 : code >= 97 && code <= 122 ? code - 87 : base;
    sum = digit < base ? sum * base + digit : NaN;
  }
  return sum;
}

/** Whether each sample lies above the one before (1), below (-1) or at it (0). */
function directions(values: Float64Array): Float64Array {
  return values.map((value, i) => Math.sign(value - (values[i - 1] ?? Number.NaN)));
}

function marksIn(channel: MarkedChannel, values: Float64Array | undefined): Mark[] {
  const kind = kinds[channel];
  if (values === undefined || values.length < kind.span) return [];
  return choose(values, kind)
    .slice(0, mostMarks)
    .map((at) => ({ channel, at, digest: digestOf(values, at, kind.span) }));
}

/** In every run of `reach` starting places the one of least hash; of equal ones the last. */
function choose(values: Float64Array, kind: Kind): number[] {
  const { span, reach } = kind;
  const hashes = rollingHashes(values, span);
  const bends = tellingPlaces(values, kind);
  const usable = (at: number) => !Number.isNaN(hashes[at]!) && bends[at] === 1;
  const chosen: number[] = [];
  let low = -1;
  for (let at = 0; at < hashes.length; at++) {
    if (low >= 0 && low <= at - reach) {
      low = -1;
      for (let i = Math.max(0, at - reach + 1); i < at; i++) {
        if (usable(i) && (low < 0 || hashes[i]! <= hashes[low]!)) low = i;
      }
    }
    if (usable(at) && (low < 0 || hashes[at]! <= hashes[low]!)) low = at;
    if (at >= reach - 1 && low >= 0 && chosen.at(-1) !== low) chosen.push(low);
  }
  return chosen;
}

/** Where a stretch holds enough of a rider to be told from any other: 1, elsewhere 0. */
function tellingPlaces(values: Float64Array, { span, bends: least, changes }: Kind): Uint8Array {
  const places = new Uint8Array(Math.max(0, values.length - span + 1));
  // bends[i]: how many samples up to the i-th change otherwise than the one before did.
  const bends = new Int32Array(values.length + 1);
  for (let i = 0; i < values.length; i++) {
    const bent = i > 1 && values[i]! - values[i - 1]! !== values[i - 1]! - values[i - 2]!;
    bends[i + 1] = bends[i]! + (bent ? 1 : 0);
  }
  for (let at = 0; at < places.length; at++) {
    const enough = bends[at + span]! - bends[at + 2]! >= least * span;
    if (enough && differs(values, at, span, changes)) places[at] = 1;
  }
  return places;
}

/** Whether a stretch holds so many different changes. */
function differs(values: Float64Array, at: number, span: number, changes: number): boolean {
  const seen: number[] = [];
  for (let i = at + 1; i < at + span; i++) {
    const change = values[i]! - values[i - 1]!;
    if (change === 0 || seen.includes(change)) continue;
    seen.push(change);
    if (seen.length >= changes) return true;
  }
  return false;
}

/**
 * Two lanes of multiplying and shifting, each finished as in MurmurHash3 (Appleby 2011, public domain), in
 * hexadecimal. A whole checksum of every stretch would cost more than the rest of an audit's bookkeeping.
 */
function digestOf(values: Float64Array, at: number, span: number): string {
  let a = 0x9e3779b9;
  let b = 0x85ebca6b;
  for (let i = at; i < at + span; i++) {
    const value = Math.round(values[i]! * 1000) | 0;
    a = Math.imul(a ^ value, 0xcc9e2d51);
    a = (a << 15) | (a >>> 17);
    b = Math.imul(b ^ Math.imul(value, 0x1b873593), 0xc2b2ae35);
    b = (b << 13) | (b >>> 19);
  }
  return (hex(finish(a)) + hex(finish(b ^ a))).slice(0, hexDigits);
}

function finish(lane: number): number {
  const once = Math.imul(lane ^ (lane >>> 16), 0x85ebca6b);
  const twice = Math.imul(once ^ (once >>> 13), 0xc2b2ae35);
  return (twice ^ (twice >>> 16)) >>> 0;
}

const hex = (value: number) => value.toString(16).padStart(8, '0');
