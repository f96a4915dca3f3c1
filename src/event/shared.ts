import type { EventMarks, EventRow, SharedContent } from '../types.ts';
import { kinds, type Mark, markedChannels, readMarks } from './fingerprint.ts';

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

export interface Shared extends Pick<SharedContent, 'seconds' | 'alike'> {
  readonly a: Holder;
  readonly b: Holder;
}

const channelNames = { p: 'power', c: 'cadence', r: 'rises and falls' } as const;

/**
 * Pairs of recordings of two riders, or of this event and an earlier one, that share content, each with the
 * seconds that are certainly the same: those under marks that agree, one behind the other at one distance.
 */
export function sharedContent(rows: readonly EventRow[], earlier: readonly EventMarks[]): Shared[] {
  const holders: Holder[] = [];
  const texts: string[] = [];
  for (const { number, recordings } of rows) {
    for (const { role, marks } of recordings) {
      holders.push({ event: null, number, role });
      texts.push(marks);
    }
  }
  for (const { event, recordings } of earlier) {
    for (const { code, marks } of recordings) {
      holders.push({ event, number: null, role: code });
      texts.push(marks);
    }
  }
  return pairsOf(holders, groupsOf(texts));
}

/** Where one mark stands: in which recording, and at which of its samples. */
interface Spot {
  readonly holder: number;
  readonly at: number;
  readonly channel: Mark['channel'];
}

/**
 * Spots of equal marks, group by group. A season holds millions of marks: they are kept as numbers in columns,
 * each group as a chain through its members.
 */
function* groupsOf(texts: readonly string[]): Generator<readonly Spot[]> {
  // Two characters and a digest of twelve at least, and what parts it from the next.
  const most = texts.reduce((sum, text) => sum + Math.ceil((text.length + 1) / 16), 0);
  let size = 1;
  while (size < 2 * most) size *= 2;
  const table = new Int32Array(size).fill(-1);
  const keys = new Float64Array(most);
  const holders = new Uint32Array(most);
  const places = new Uint32Array(most);
  const next = new Int32Array(most).fill(-1);
  // Of the first of a group: its last member, and how many there are.
  const last = new Int32Array(most);
  const members = new Uint32Array(most);
  let count = 0;
  for (const [holder, text] of texts.entries()) {
    readMarks(text, (channel, at, digest) => {
      const index = count++;
      // A digest has 48 bits: with two for the channel it is still a whole number.
      const key = digest * 4 + markedChannels.indexOf(channel);
      keys[index] = key;
      holders[index] = holder;
      places[index] = at;
      // The rest of a division by `size`, a power of two.
      let slot = (key >>> 0) & (size - 1);
      while (table[slot]! >= 0 && keys[table[slot]!] !== key) slot = (slot + 1) % size;
      const first = table[slot]! < 0 ? index : table[slot]!;
      if (first === index) table[slot] = index;
      else next[last[first]!] = index;
      last[first] = index;
      members[first] = members[first]! + 1;
    });
  }
  for (let first = 0; first < count; first++) {
    if (members[first]! < 2 || members[first]! > mostHolders) continue;
    const group: Spot[] = [];
    for (let i = first; i >= 0; i = next[i]!) {
      group.push({ holder: holders[i]!, at: places[i]!, channel: markedChannels[keys[i]! % 4]! });
    }
    yield group;
  }
}

/** Places in the first of two recordings, by the distance to those in the second. */
type Distances = Map<number, number[]>;

function pairsOf(holders: readonly Holder[], groups: Iterable<readonly Spot[]>): Shared[] {
  const pairs = new Map<string, Map<Mark['channel'], Distances>>();
  for (const group of groups) {
    for (const [i, first] of group.entries()) {
      for (const second of group.slice(i + 1)) {
        if (!comparable(holders[first.holder]!, holders[second.holder]!)) continue;
        const channels = got(pairs, `${first.holder} ${second.holder}`, () => new Map());
        const distances = got(channels, first.channel, (): Distances => new Map());
        got(distances, second.at - first.at, (): number[] => []).push(first.at);
      }
    }
  }
  const found = [...pairs].flatMap(([pair, channels]) => {
    const [a, b] = pair.split(' ').map(Number) as [number, number];
    const agreeing = markedChannels.flatMap((channel) => {
      const places = [...(channels.get(channel)?.values() ?? [])];
      const seconds = Math.max(0, ...places.map((one) => covered(one, kinds[channel].span)));
      return seconds === 0 ? [] : [{ what: channelNames[channel], seconds }];
    });
    if (agreeing.length === 0) return [];
    const longest = Math.max(...agreeing.map(({ seconds }) => seconds));
    const alike = agreeing.filter(({ seconds }) => seconds >= longest / 3);
    return [{ a, b, seconds: longest, alike }];
  });
  return found
    .sort((x, y) => x.a - y.a || x.b - y.b)
    .map((one) => ({ ...one, a: holders[one.a]!, b: holders[one.b]! }));
}

function got<K, V>(map: Map<K, V>, key: K, fresh: () => V): V {
  const known = map.get(key) ?? fresh();
  map.set(key, known);
  return known;
}

/** Earlier events were compared with one another in their time; a rider's own recordings are audited together. */
function comparable(a: Holder, b: Holder): boolean {
  if (a.event !== null && b.event !== null) return false;
  return a.event !== b.event || a.number !== b.number;
}

/** Samples under marks that begin at these places. */
function covered(places: readonly number[], span: number): number {
  if (places.length < leastMarks) return 0;
  let sum = 0;
  let reached = -1;
  for (const at of [...places].sort((a, b) => a - b)) {
    sum += at + span - Math.max(at, reached);
    reached = at + span;
  }
  return sum;
}
