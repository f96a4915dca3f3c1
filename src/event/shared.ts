import type { EventMarks, EventRow } from '../types.ts';
import { type Mark, parseMarks, span } from './fingerprint.ts';

/** Marks that must agree at one distance before two recordings are said to share content: few may be chance. */
const leastMarks = 3;
/** Recordings beyond which a mark tells nobody from anybody: a device's test pattern, not a ride. */
const mostHolders = 50;

/** A recording of this event, or of an earlier one. */
export interface Holder {
  readonly event: string | null;
  readonly number: string | null;
  readonly role: string;
}

export interface Shared {
  readonly a: Holder;
  readonly b: Holder;
  readonly seconds: number;
}

/**
 * Pairs of recordings of two riders, or of this event and an earlier one, that share content, each with the
 * seconds that are certainly the same: those under marks that agree, one behind the other at one distance.
 */
export function sharedContent(rows: readonly EventRow[], earlier: readonly EventMarks[]): Shared[] {
  const holders: Holder[] = [];
  const byDigest = new Map<string, { holder: number; at: number }[]>();
  const hold = (holder: Holder, marks: readonly Mark[]) => {
    const index = holders.push(holder) - 1;
    for (const { channel, at, digest } of marks) {
      const key = channel + digest;
      const places = byDigest.get(key);
      if (places === undefined) byDigest.set(key, [{ holder: index, at }]);
      else if (places.length <= mostHolders) places.push({ holder: index, at });
    }
  };
  for (const row of rows) {
    for (const { role, marks } of row.recordings) {
      hold({ event: null, number: row.number, role }, parseMarks(marks));
    }
  }
  for (const { event, recordings } of earlier) {
    for (const { code, marks } of recordings) hold({ event, number: null, role: code }, parseMarks(marks));
  }
  return pairsOf(holders, byDigest);
}

function pairsOf(
  holders: readonly Holder[],
  byDigest: ReadonlyMap<string, readonly { holder: number; at: number }[]>,
): Shared[] {
  // Pair → channel and distance → places in the first.
  const pairs = new Map<string, Map<string, number[]>>();
  for (const [key, places] of byDigest) {
    if (places.length < 2 || places.length > mostHolders) continue;
    for (const [i, first] of places.entries()) {
      for (const second of places.slice(i + 1)) {
        if (!comparable(holders[first.holder]!, holders[second.holder]!)) continue;
        const pair = `${first.holder} ${second.holder}`;
        const distances = pairs.get(pair) ?? new Map<string, number[]>();
        const distance = key[0]! + (second.at - first.at);
        distances.set(distance, [...(distances.get(distance) ?? []), first.at]);
        pairs.set(pair, distances);
      }
    }
  }
  return [...pairs].flatMap(([pair, distances]) => {
    const [a, b] = pair.split(' ').map((index) => holders[Number(index)]!) as [Holder, Holder];
    const seconds = Math.max(...[...distances.values()].map(covered));
    return seconds === 0 ? [] : [{ a, b, seconds }];
  });
}

/** Earlier events were compared with one another in their time; a rider's own recordings are audited together. */
function comparable(a: Holder, b: Holder): boolean {
  if (a.event !== null && b.event !== null) return false;
  return a.event !== b.event || a.number !== b.number;
}

/** Samples under marks that begin at these places. */
function covered(places: readonly number[]): number {
  if (places.length < leastMarks) return 0;
  let sum = 0;
  let reached = -1;
  for (const at of [...places].sort((a, b) => a - b)) {
    sum += at + span - Math.max(at, reached);
    reached = at + span;
  }
  return sum;
}
