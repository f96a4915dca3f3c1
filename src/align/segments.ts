import type { Stretch } from '../types.ts';
import { settings } from './settings.ts';

export interface Segment {
  /** On the primary's series. */
  readonly stretch: Stretch;
  /** Grid index of the primary minus that of the second. */
  readonly lag: number;
}

/**
 * Finds which lag holds in which stretch, for clocks that skip pauses or creep: the most likely path
 * through windows of half a minute (Viterbi 1967), where a jump costs `jumpCost` and a creep of one
 * second `creepCost`. The likelihood of a window is that of residuals that share a component of
 * correlation `correlation`, against none.
 */
export function segments(
  primary: Float64Array,
  second: Float64Array,
  candidates: readonly number[],
  correlation: number,
): Segment[] {
  const width = settings.segmentWindow;
  const windows = Math.ceil(primary.length / width);
  const states = candidates.length;
  const from = Array.from({ length: windows }, () => new Int16Array(states));
  let score = new Float64Array(states);
  for (let w = 0; w < windows; w++) {
    const next = new Float64Array(states);
    const best = score.indexOf(Math.max(...score));
    for (let s = 0; s < states; s++) {
      let origin = s;
      let value = score[s]!;
      const jumped = score[best]! - settings.jumpCost;
      if (jumped > value) [origin, value] = [best, jumped];
      for (let other = 0; other < states; other++) {
        if (Math.abs(candidates[other]! - candidates[s]!) !== 1) continue;
        const crept = score[other]! - settings.creepCost;
        if (crept > value) [origin, value] = [other, crept];
      }
      from[w]![s] = origin;
      next[s] = value + likelihood(primary, second, w * width, width, candidates[s]!, correlation);
    }
    score = next;
  }
  return merge(backtrack(from, score), candidates, primary.length);
}

function likelihood(
  primary: Float64Array,
  second: Float64Array,
  from: number,
  width: number,
  lag: number,
  correlation: number,
): number {
  let products = 0;
  let squares = 0;
  let count = 0;
  const to = Math.min(from + width, primary.length, second.length + lag);
  for (let t = Math.max(from, lag); t < to; t++) {
    const a = primary[t]!;
    const b = second[t - lag]!;
    if (a === 0 || b === 0) continue;
    products += a * b;
    squares += a * a + b * b;
    count++;
  }
  const left = 1 - correlation ** 2;
  return (correlation * products - (correlation ** 2 * squares) / 2) / left - (count / 2) * Math.log(left);
}

function backtrack(from: readonly Int16Array[], score: Float64Array): number[] {
  const path: number[] = [];
  let state = score.indexOf(Math.max(...score));
  for (let w = from.length - 1; w >= 0; w--) {
    path.unshift(state);
    state = from[w]![state]!;
  }
  return path;
}

function merge(path: readonly number[], candidates: readonly number[], length: number): Segment[] {
  const merged: { stretch: [number, number]; lag: number }[] = [];
  path.forEach((state, w) => {
    const lag = candidates[state]!;
    const to = Math.min((w + 1) * settings.segmentWindow, length);
    const last = merged.at(-1);
    if (last !== undefined && last.lag === lag) last.stretch[1] = to;
    else merged.push({ stretch: [w * settings.segmentWindow, to], lag });
  });
  return merged;
}
