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
  return sharpen(primary, second, merge(backtrack(from, score), candidates, primary.length), correlation);
}

function likelihood(
  primary: Float64Array,
  second: Float64Array,
  from: number,
  width: number,
  lag: number,
  correlation: number,
): number {
  let sum = 0;
  const to = Math.min(from + width, primary.length, second.length + lag);
  for (let t = Math.max(from, lag); t < to; t++)
    sum += likelihoodOf(primary[t]!, second[t - lag]!, correlation);
  return sum;
}

function likelihoodOf(a: number, b: number, correlation: number): number {
  if (a === 0 || b === 0) return 0;
  const left = 1 - correlation ** 2;
  return (correlation * a * b - (correlation ** 2 * (a * a + b * b)) / 2) / left - Math.log(left) / 2;
}

/**
 * Moves each change of the lag from the edge of a window to the second that fits best. Where the lag grows
 * by d, the second's clock stood still: d seconds of the primary have no counterpart and are left out, so
 * that no sample of the second is used twice.
 */
function sharpen(
  primary: Float64Array,
  second: Float64Array,
  coarse: readonly Segment[],
  correlation: number,
): Segment[] {
  const sharp: { stretch: [number, number]; lag: number }[] = [];
  for (const { stretch, lag } of coarse) {
    const last = sharp.at(-1);
    if (last === undefined) {
      sharp.push({ stretch: [stretch[0], stretch[1]], lag });
      continue;
    }
    const skipped = Math.max(0, lag - last.lag);
    const from = Math.max(last.stretch[0], stretch[0] - settings.segmentWindow - skipped);
    const to = Math.min(stretch[1] - skipped, stretch[0] + settings.segmentWindow);
    const at = (t: number, by: number) => likelihoodOf(primary[t]!, second[t - by] ?? 0, correlation);
    // Likelihood of changing at `from`, and what moving the change on by one second adds to it.
    let gain = 0;
    let best = { at: Math.min(from, stretch[1]), gain: 0 };
    for (let t = from; t < to; t++) {
      gain += at(t, last.lag) - at(t + skipped, lag);
      if (gain > best.gain) best = { at: t + 1, gain };
    }
    last.stretch[1] = best.at;
    sharp.push({ stretch: [Math.min(best.at + skipped, stretch[1]), stretch[1]], lag });
  }
  return sharp.filter(({ stretch }) => stretch[1] > stretch[0]);
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
