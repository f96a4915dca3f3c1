/** A stretch of samples that occurs twice: `length` samples from `first` and again from `second`. */
export interface Repeat {
  readonly first: number;
  readonly second: number;
  readonly length: number;
}

export interface RepeatSearch {
  /** Shortest repeat looked for, samples. */
  readonly window: number;
  /**
   * Only pairs with the first copy before this index and the second from it on: two series laid end to
   * end. 0 to search one series against itself.
   */
  readonly split: number;
  /** Whether a window starting here is worth looking at; others may only extend a repeat. */
  readonly telling: (from: number) => boolean;
}

/** Earlier windows of equal hash that are compared: bounds the work on hostile, periodic input. */
const mostCandidates = 16;
const base = 0x01000193;

/**
 * Finds exact repeats by a rolling hash over windows, each match verified sample by sample and extended
 * both ways (Karp and Rabin 1987, IBM J Res Dev 31:249). NaN equals nothing, itself included. The two
 * copies do not overlap. Expected linear time; each diagonal is walked once.
 */
export function exactRepeats(values: Float64Array, { window, split, telling }: RepeatSearch): Repeat[] {
  const count = values.length - window + 1;
  if (count < 2) return [];
  const hashes = rollingHashes(values, window);
  let size = 1;
  while (size < 2 * count) size *= 2;
  const heads = new Int32Array(size).fill(-1);
  const before = new Int32Array(count).fill(-1);
  const reached = new Map<number, number>();
  const found: Repeat[] = [];
  for (let i = 0; i < count; i++) {
    if (Number.isNaN(hashes[i]!) || !telling(i)) continue;
    const slot = (hashes[i]! ^ (hashes[i]! >>> 15)) & (size - 1);
    let candidates = 0;
    for (let p = heads[slot]!; p >= 0 && candidates < mostCandidates; p = before[p]!, candidates++) {
      if (hashes[p] !== hashes[i] || p + window > i || (split > 0 && i < split)) continue;
      const done = reached.get(i - p) ?? split;
      if (done > i) continue;
      const repeat = extend(values, p, i, split, done);
      reached.set(i - p, Math.max(i + 1, repeat.second + repeat.length));
      if (repeat.length >= window) found.push(repeat);
    }
    if (split > 0 && i + window > split) continue;
    before[i] = heads[slot]!;
    heads[slot] = i;
  }
  return found;
}

/** Hash of each window of samples, NaN where it holds a NaN; equal to a thousandth means equal. */
export function rollingHashes(values: Float64Array, window: number): Float64Array {
  const hashes = new Float64Array(values.length - window + 1).fill(Number.NaN);
  let leading = 1;
  for (let k = 0; k < window; k++) leading = Math.imul(leading, base);
  let hash = 0;
  let clean = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (Number.isNaN(value)) {
      hash = 0;
      clean = 0;
      continue;
    }
    hash = (Math.imul(hash, base) + token(value)) | 0;
    if (clean >= window) hash = (hash - Math.imul(leading, token(values[i - window]!))) | 0;
    clean++;
    if (clean >= window) hashes[i - window + 1] = hash;
  }
  return hashes;
}

function token(value: number): number {
  return Math.imul(Math.round(value * 1000) | 0, 0x9e3779b1) ^ 0x5bd1e995;
}

/**
 * The longest repeat through two equal places: the second copy begins at `from` or later, and the first
 * ends before the second begins (before the split, where there is one).
 */
function extend(values: Float64Array, first: number, second: number, split: number, from: number): Repeat {
  const distance = second - first;
  let start = first;
  while (start > 0 && start - 1 + distance >= from && values[start - 1] === values[start - 1 + distance])
    start--;
  const most = Math.min(values.length - distance - start, split > 0 ? split - start : distance);
  let length = 0;
  while (length < most && values[start + length] === values[start + distance + length]) length++;
  return { first: start, second: start + distance, length };
}
