import type { PairSamples } from './samples.ts';

const kept = new WeakMap<PairSamples, Map<number, Blocks>>();

/** Means over blocks of the ride: seconds are not independent, blocks nearly are. */
export interface Blocks {
  /** Middle of the block, s on the primary's series. */
  readonly at: Float64Array;
  readonly own: Float64Array;
  readonly other: Float64Array;
  readonly cadence: Float64Array;
  readonly speed: Float64Array;
  readonly count: number;
}

/**
 * Averages the compared seconds in blocks of `seconds` by the clock; a block with less than half of its
 * seconds, with a sprint in it, or below a third of the mean power of the ride, is left out: of soft
 * pedalling and coasting a ratio says little. Worked out once for each length.
 */
export function blocksOf(samples: PairSamples, seconds: number): Blocks {
  const known = kept.get(samples) ?? new Map<number, Blocks>();
  kept.set(samples, known);
  const blocks = known.get(seconds) ?? average(samples, seconds);
  known.set(seconds, blocks);
  return blocks;
}

function average(samples: PairSamples, seconds: number): Blocks {
  const at: number[] = [];
  const own: number[] = [];
  const other: number[] = [];
  const cadence: number[] = [];
  const speed: number[] = [];
  const least = leastShare * meanOf(samples.other);
  for (let i = 0; i < samples.at.length; ) {
    const block = Math.floor(samples.at[i]! / seconds);
    const from = i;
    let ownSum = 0;
    let otherSum = 0;
    let cadenceSum = 0;
    let speedSum = 0;
    let sprints = 0;
    for (; i < samples.at.length && Math.floor(samples.at[i]! / seconds) === block; i++) {
      ownSum += samples.own[i]!;
      otherSum += samples.other[i]!;
      cadenceSum += samples.cadence[i]!;
      speedSum += samples.speed[i]!;
      sprints += samples.sprint[i]!;
    }
    const n = i - from;
    if (sprints > 0 || n * 2 < seconds || Math.min(ownSum, otherSum) < n * least) continue;
    at.push((block + 0.5) * seconds);
    own.push(ownSum / n);
    other.push(otherSum / n);
    cadence.push(cadenceSum / n);
    speed.push(speedSum / n);
  }
  return {
    at: Float64Array.from(at),
    own: Float64Array.from(own),
    other: Float64Array.from(other),
    cadence: Float64Array.from(cadence),
    speed: Float64Array.from(speed),
    count: at.length,
  };
}

/** Least mean power of a block, as a share of the second's mean over the ride. */
const leastShare = 1 / 3;

function meanOf(values: Float64Array): number {
  return values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
}
