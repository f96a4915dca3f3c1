import { exactRepeats, type Repeat } from '../../math/repeats.ts';

export interface CopySearch {
  /** Shortest copy looked for, samples. */
  readonly windowSamples: number;
  /** Share of its samples at which the series must bend: its change differs from the change before. */
  readonly tellingShare: number;
  /** Different changes it must hold: an even ramp repeats its own rounding. */
  readonly distinctChanges: number;
  /** Number of such copies expected by chance, above which one counts for nothing. */
  readonly chance: number;
}

/**
 * Stretches whose changes occur twice, sample by sample, and that chance would not bring; the longest
 * first. Constant stretches and even ramps repeat by themselves and are passed over. Positions and lengths
 * are those of samples.
 *
 * @param split where a second series begins, when two are laid end to end with a NaN between them; else 0
 */
export function copiesIn(values: Float64Array, split: number, options: CopySearch): Repeat[] {
  const changes = new Float64Array(values.length).fill(Number.NaN);
  for (let i = 1; i < values.length; i++) changes[i] = values[i]! - values[i - 1]!;
  const bends = new Int32Array(values.length + 1);
  for (let i = 1; i < values.length; i++) bends[i + 1] = bends[i]! + (changes[i] === changes[i - 1] ? 0 : 1);
  const window = options.windowSamples;
  const bendsIn = (from: number, length: number) => bends[from + length]! - bends[from]!;
  const repeats = exactRepeats(changes, {
    window,
    split,
    telling: (from) => bendsIn(from, window) >= options.tellingShare * window,
  });
  if (repeats.length === 0) return [];
  const agreement = agreementByChance(changes);
  const pairs = (changes.length * changes.length) / 2;
  return (
    repeats
      .filter(({ first, length }) => {
        const expected = pairs * agreement ** bendsIn(first, length);
        const distinct = new Set(changes.subarray(first, first + length)).size;
        return expected <= options.chance && distinct >= options.distinctChanges;
      })
      // A repeat of changes is a repeat of samples from the one before the first change.
      .map(({ first, second, length }) => ({ first: first - 1, second: second - 1, length: length + 1 }))
      .sort((a, b) => b.length - a.length || a.first - b.first)
  );
}

/**
 * Probability that two places at which a series bends, alike so far, go on alike: from how often two
 * changes agree, alone and together with the change before them. The larger of the two counts.
 */
function agreementByChance(changes: Float64Array): number {
  const single = new Map<number, number>();
  const double = new Map<number, number>();
  for (let i = 2; i < changes.length; i++) {
    const change = changes[i]!;
    const before = changes[i - 1]!;
    if (Number.isNaN(change) || Number.isNaN(before) || change === before) continue;
    count(single, change);
    // Watts lie far below 2^20, and a thousandth is finer than any meter writes.
    count(double, Math.round(change * 1000) * 2 ** 21 + Math.round(before));
  }
  const alone = agreement(single);
  return alone === 0 ? 0 : Math.max(alone, agreement(double) / alone);
}

function count(counts: Map<number, number>, key: number): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

/** Probability that two draws, one after the other, give the same. */
function agreement(counts: ReadonlyMap<number, number>): number {
  let total = 0;
  let pairs = 0;
  for (const number of counts.values()) {
    total += number;
    pairs += number * (number - 1);
  }
  return total < 2 ? 0 : pairs / (total * (total - 1));
}
