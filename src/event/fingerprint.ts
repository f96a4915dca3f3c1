import { sha256 } from '../math/digest.ts';
import { rollingHashes } from '../math/repeats.ts';
import type { Recording } from '../types.ts';

/*
 * Marks of content: digests of short stretches, chosen by content alone, so that two copies choose the same
 * ones wherever they lie (winnowing: Schleimer, Wilkerson and Aiken 2003, SIGMOD, p. 76). A stretch that two
 * recordings share for `span + reach - 1` samples shares at least one mark. A mark is 48 bits of a SHA-256 over
 * thirty samples: no sample can be had from it. These numbers are part of the form: other ones would make
 * marks that cannot be compared with those kept of earlier events.
 */

/** Samples in a marked stretch. */
export const span = 30;
/** Starting places of which one is chosen. */
const reach = 60;
/**
 * Least share of a stretch's samples at which the channel bends, and least number of different changes.
 * Cadence moves by a turn or two, so that two riders' may agree for long where it is smooth.
 */
const telling = { p: { share: 0.4, changes: 4 }, c: { share: 0.6, changes: 5 } } as const;
type Telling = (typeof telling)['p' | 'c'];
const hexDigits = 12;

export interface Mark {
  readonly channel: 'p' | 'c';
  /** Sample of the file at which the marked stretch begins. */
  readonly at: number;
  readonly digest: string;
}

/** The marks of a recording's power, and of its cadence, which stays where somebody rescaled power. */
export async function marksOf({ channels }: Pick<Recording, 'channels'>): Promise<string> {
  const marks = [...(await marksIn('p', channels.power)), ...(await marksIn('c', channels.cadence))];
  return marks.map(({ channel, at, digest }) => `${channel}${at.toString(36)}.${digest}`).join(' ');
}

/** Marks from their text; what is none is passed over. */
export function parseMarks(text: string): Mark[] {
  return [...text.matchAll(/(?:^| )([pc])([0-9a-z]{1,6})\.([0-9a-f]{12})(?= |$)/g)].map(
    ([, channel, at, digest]) => ({
      channel: channel as Mark['channel'],
      at: Number.parseInt(at!, 36),
      digest: digest!,
    }),
  );
}

async function marksIn(channel: Mark['channel'], values: Float64Array | undefined): Promise<Mark[]> {
  if (values === undefined || values.length < span) return [];
  const chosen = choose(values, telling[channel]);
  return Promise.all(
    chosen.map(async (at) => ({
      channel,
      at,
      digest: (await digestOf(channel, values, at)).slice(0, hexDigits),
    })),
  );
}

/** In every run of `reach` starting places the one of least hash; of equal ones the last. */
function choose(values: Float64Array, least: Telling): number[] {
  const hashes = rollingHashes(values, span);
  const bends = tellingPlaces(values, least);
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
function tellingPlaces(values: Float64Array, least: Telling): Uint8Array {
  const places = new Uint8Array(Math.max(0, values.length - span + 1));
  for (let at = 0; at < places.length; at++) {
    let bends = 0;
    const changes = new Set<number>();
    for (let i = at + 1; i < at + span; i++) {
      const change = values[i]! - values[i - 1]!;
      if (change !== 0) changes.add(change);
      if (i > at + 1 && change !== values[i - 1]! - values[i - 2]!) bends++;
    }
    if (bends >= least.share * span && changes.size >= least.changes) places[at] = 1;
  }
  return places;
}

function digestOf(channel: string, values: Float64Array, at: number): Promise<string> {
  return sha256(new TextEncoder().encode(`${channel}:${values.subarray(at, at + span).join()}`));
}
