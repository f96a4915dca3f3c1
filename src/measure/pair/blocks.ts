import { mean } from '../../math/mean.ts';
import type { PairSamples } from './samples.ts';

const kept = new WeakMap<PairSamples, Map<number, Blocks>>();

/** Means over blocks of the ride: seconds are not independent, blocks nearly are. */
export interface Blocks {
  /** Middle of the block, s on the primary's series. */
  readonly at: Float64Array;
  readonly own: Float64Array;
  readonly other: Float64Array;
  readonly cadence: Float64Array;
  /** Cadence and speed at which its work was done: in a block with coasting in it those of the coasting say nothing. */
  readonly cadenceOfWork: Float64Array;
  readonly speedOfWork: Float64Array;
  /** How power changes within the block, as a share of it, 1/s: what each second of lag puts into the ratio. */
  readonly rise: Float64Array;
  /** How that change changes, 1/s²: what unlike averaging puts into the ratio. */
  readonly turn: Float64Array;
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
  const cadenceOfWork: number[] = [];
  const speedOfWork: number[] = [];
  const rise: number[] = [];
  const turn: number[] = [];
  const least = leastShare * mean(samples.other);
  for (let i = 0; i < samples.at.length; ) {
    const block = Math.floor(samples.at[i]! / seconds);
    const from = i;
    let ownSum = 0;
    let otherSum = 0;
    let cadenceSum = 0;
    let turnedSum = 0;
    let movedSum = 0;
    let riseSum = 0;
    let turnSum = 0;
    let sprints = 0;
    for (; i < samples.at.length && Math.floor(samples.at[i]! / seconds) === block; i++) {
      ownSum += samples.own[i]!;
      otherSum += samples.other[i]!;
      const work = samples.own[i]! + samples.other[i]!;
      cadenceSum += samples.cadence[i]!;
      turnedSum += work * samples.cadence[i]!;
      movedSum += work * samples.speed[i]!;
      riseSum += samples.rise[i]!;
      turnSum += samples.turn[i]!;
      sprints += samples.sprint[i]!;
    }
    const n = i - from;
    if (sprints > 0 || n * 2 < seconds || Math.min(ownSum, otherSum) < n * least) continue;
    at.push((block + 0.5) * seconds);
    own.push(ownSum / n);
    other.push(otherSum / n);
    const work = ownSum + otherSum;
    cadence.push(cadenceSum / n);
    cadenceOfWork.push(turnedSum / work);
    speedOfWork.push(movedSum / work);
    rise.push((2 * riseSum) / work);
    turn.push((2 * turnSum) / work);
  }
  return {
    at: Float64Array.from(at),
    own: Float64Array.from(own),
    other: Float64Array.from(other),
    cadence: Float64Array.from(cadence),
    cadenceOfWork: Float64Array.from(cadenceOfWork),
    speedOfWork: Float64Array.from(speedOfWork),
    rise: Float64Array.from(rise),
    turn: Float64Array.from(turn),
    count: at.length,
  };
}

/** Least mean power of a block, as a share of the second's mean over the ride. */
const leastShare = 1 / 3;
