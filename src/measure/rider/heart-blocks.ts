import type { Stretch } from '../../types.ts';

/** Block means over part of a ride. */
export interface HeartBlocks {
  /** Middle of each block, s. */
  readonly at: Float64Array;
  /** Power as measured, W. */
  readonly watts: Float64Array;
  /** Power as the heart follows it, W. */
  readonly followed: Float64Array;
  /** bpm */
  readonly heartRate: Float64Array;
}

/** Share of a block's seconds that must have both readings. */
const leastKnown = 0.75;

/** Means of whole blocks in which both power and heart rate are known for most of the seconds. */
export function heartBlocks(
  power: Float64Array,
  followed: Float64Array,
  heartRate: Float64Array,
  [from, to]: Stretch,
  seconds: number,
): HeartBlocks {
  const most = Math.max(0, Math.floor((to - from) / seconds));
  const blocks: HeartBlocks = {
    at: new Float64Array(most),
    watts: new Float64Array(most),
    followed: new Float64Array(most),
    heartRate: new Float64Array(most),
  };
  let count = 0;
  for (let start = from; start + seconds <= to; start += seconds) {
    let known = 0;
    let watts = 0;
    let answer = 0;
    let beats = 0;
    for (let i = start; i < start + seconds; i++) {
      if (Number.isNaN(power[i]! + heartRate[i]!)) continue;
      known++;
      watts += power[i]!;
      answer += followed[i]!;
      beats += heartRate[i]!;
    }
    if (known < leastKnown * seconds) continue;
    blocks.at[count] = start + seconds / 2;
    blocks.watts[count] = watts / known;
    blocks.followed[count] = answer / known;
    blocks.heartRate[count] = beats / known;
    count++;
  }
  return {
    at: blocks.at.subarray(0, count),
    watts: blocks.watts.subarray(0, count),
    followed: blocks.followed.subarray(0, count),
    heartRate: blocks.heartRate.subarray(0, count),
  };
}

/**
 * Share of the blocks of the last third whose power or heart rate also occurs in the first third (0–1),
 * whichever is more: a reading that has risen takes power out of its range, and not heart rate.
 */
export function sharedRange({ followed, heartRate }: HeartBlocks): number {
  return Math.max(sharedWithin(followed), sharedWithin(heartRate));
}

function sharedWithin(column: Float64Array): number {
  const third = Math.floor(column.length / 3);
  const early = column.subarray(0, third);
  const late = column.subarray(column.length - third);
  const lowest = early.reduce((a, b) => Math.min(a, b), Infinity);
  const highest = early.reduce((a, b) => Math.max(a, b), -Infinity);
  return late.filter((value) => value >= lowest && value <= highest).length / third;
}
