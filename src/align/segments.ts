import { quantile } from 'simple-statistics';
import type { Stretch } from '../types.ts';
import { gainWithin } from './lags.ts';
import { settings } from './settings.ts';

export interface Segment {
  /** On the primary's series. */
  readonly stretch: Stretch;
  /** Grid index of the primary minus that of the second. */
  readonly lag: number;
}

/** A stretch with its lag; null where none of the lags tried explains what was recorded. */
interface Piece {
  readonly stretch: Stretch;
  readonly lag: number | null;
}

/** The residuals of both, and how much of them is shared where the lag is right. */
interface Pair {
  readonly primary: Float64Array;
  readonly second: Float64Array;
  readonly correlation: number;
}

/**
 * Finds which lag holds in which stretch, for clocks that skip pauses or creep. The candidates are tried
 * first; where none of them holds, the stretch is asked by itself for the lag that fits it, until nothing
 * new is found. A stretch that no lag explains goes with its neighbours where both have the same lag (a
 * value that stood still says nothing of clocks); between different lags it is left out.
 *
 * @param surrogateGain the best that a second reaches by chance, as `lags` has it
 */
export function segments(
  primary: Float64Array,
  second: Float64Array,
  candidates: readonly number[],
  surrogateGain: number,
): Segment[] {
  let pair: Pair = { primary, second, correlation: sharedAtBest(primary, second, candidates) };
  let known = candidates;
  let pieces = likeliest(pair, known);
  for (let round = 0; round < settings.segmentRounds; round++) {
    const more = pieces.flatMap((piece, i) => (piece.lag === null ? lagsFor(pair, pieces, i) : []));
    const fresh = withNeighbours(more).filter((lag) => !known.includes(lag));
    const shared = sharedBy(pair, pieces);
    if (fresh.length === 0 && Math.abs(shared - pair.correlation) < settings.segmentPrecision) break;
    pair = { ...pair, correlation: shared };
    known = [...known, ...fresh].sort((x, y) => x - y);
    pieces = likeliest(pair, known);
  }
  const told = proven(pair, sharpen(pair, pieces), candidates, surrogateGain);
  return inOrder(filled(sharpen(pair, told)));
}

/** Each lag with those that count as the same answer. */
export function withNeighbours(lags: readonly number[]): number[] {
  const reach = settings.sameAnswerSeconds;
  const all = lags.flatMap((lag) => Array.from({ length: 2 * reach + 1 }, (_, i) => lag + i - reach));
  return [...new Set(all)].sort((a, b) => a - b);
}

export const sameAnswer = (a: number, b: number) => Math.abs(a - b) <= settings.sameAnswerSeconds;

/**
 * How much of the residuals the two share where a candidate fits best: the upper quartile over stretches of
 * some minutes. Over the whole ride one lag of several shows less than there is.
 */
function sharedAtBest(primary: Float64Array, second: Float64Array, candidates: readonly number[]): number {
  const best: number[] = [];
  for (let from = 0; from < primary.length; from += settings.shareWindow) {
    const to = from + settings.shareWindow;
    best.push(Math.max(0, ...candidates.map((lag) => sharedWithin(primary, second, from, to, lag))));
  }
  return limited(quantile(best, 0.75));
}

/** The same at the lags found so far. */
function sharedBy({ primary, second, correlation }: Pair, pieces: readonly Piece[]): number {
  let sum = 0;
  let seconds = 0;
  for (const { stretch, lag } of pieces) {
    if (lag === null) continue;
    const length = stretch[1] - stretch[0];
    sum += length * sharedWithin(primary, second, stretch[0], stretch[1], lag);
    seconds += length;
  }
  return seconds === 0 ? correlation : limited(sum / seconds);
}

function sharedWithin(primary: Float64Array, second: Float64Array, from: number, to: number, lag: number) {
  let products = 0;
  let own = 0;
  let other = 0;
  let count = 0;
  for (let t = Math.max(from, lag); t < Math.min(to, primary.length, second.length + lag); t++) {
    const a = primary[t]!;
    const b = second[t - lag]!;
    if (a === 0 || b === 0) continue;
    products += a * b;
    own += a * a;
    other += b * b;
    count++;
  }
  // Of a few seconds at the end of an overlap a correlation says nothing.
  return count >= settings.segmentWindow ? products / Math.sqrt(own * other) : 0;
}

function limited(correlation: number): number {
  return Math.max(settings.leastSegmentCorrelation, Math.min(settings.segmentCorrelation, correlation));
}

/**
 * The most likely path of lags through windows of half a minute (Viterbi 1967), where a jump costs
 * `jumpCost`, as does entering or leaving a stretch without a lag, and a creep of some seconds `creepCost`.
 * The likelihood of a window is that of residuals that share a component, against none.
 */
function likeliest(pair: Pair, candidates: readonly number[]): Piece[] {
  const width = settings.segmentWindow;
  const windows = Math.ceil(pair.primary.length / width);
  const states = [...candidates, null];
  const from = Array.from({ length: windows }, () => new Int16Array(states.length));
  let score = new Float64Array(states.length);
  for (let w = 0; w < windows; w++) {
    const next = new Float64Array(states.length);
    for (let s = 0; s < states.length; s++) {
      const lag = states[s]!;
      let origin = s;
      let value = score[s]!;
      for (let other = 0; other < states.length; other++) {
        const moved = score[other]! - costOf(states[other]!, lag);
        if (moved > value) [origin, value] = [other, moved];
      }
      from[w]![s] = origin;
      next[s] = value + likelihood(pair, w * width, width, lag);
    }
    score = next;
  }
  return merge(backtrack(from, score), states, pair.primary.length);
}

function costOf(before: number | null, after: number | null): number {
  return before !== null && after !== null && sameAnswer(before, after)
    ? settings.creepCost
    : settings.jumpCost;
}

function likelihood({ primary, second, correlation }: Pair, from: number, width: number, lag: number | null) {
  if (lag === null) return 0;
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
 * The lags that fit one stretch best by itself, for the path to choose among: between those of its
 * neighbours, for a clock only ever stands still, and at either end as far as a pause may have been long. A
 * stretch may hold more than one.
 */
function lagsFor({ primary, second }: Pair, pieces: readonly Piece[], at: number): number[] {
  const [from, to] = pieces[at]!.stretch;
  if (to - from < settings.leastSegmentSeconds) return [];
  const before = pieces[at - 1]?.lag ?? null;
  const after = pieces[at + 1]?.lag ?? null;
  if (before === null && after === null) return [];
  const reach = settings.longestPauseSeconds;
  const low = Math.min(before ?? after! - reach, after ?? before! - reach);
  const high = Math.max(before ?? after! + reach, after ?? before! + reach);
  const found: { lag: number; gain: number }[] = [];
  for (let lag = low; lag <= high; lag++) {
    const gain = gainWithin(primary, second, from, to, lag);
    if (gain >= settings.margin) found.push({ lag, gain });
  }
  found.sort((a, b) => b.gain - a.gain);
  const distinct: number[] = [];
  for (const { lag } of found) {
    if (distinct.length === settings.lagsOfStretch) break;
    if (!distinct.some((other) => sameAnswer(lag, other))) distinct.push(lag);
  }
  return distinct;
}

/**
 * Takes a lag back where its stretch does not prove it. The surest was proved by all of the ride, and what goes on
 * with the lag of a proven neighbour claims nothing; every other one claims that a clock jumped, for a stretch that
 * was picked because it fits. There it must beat chance as a whole ride must, and all the lags that were tried, for
 * longer than a few spikes that happen to meet: otherwise two dropouts make a jump, or one set of efforts that is
 * like another.
 */
function proven(
  { primary, second }: Pair,
  pieces: readonly Piece[],
  candidates: readonly number[],
  surrogateGain: number,
): Piece[] {
  const gains = pieces.map(({ stretch: [from, to], lag }) =>
    lag === null ? 0 : gainWithin(primary, second, from, to, lag),
  );
  const surest = gains.indexOf(Math.max(...gains));
  const sure = pieces.map(({ stretch: [from, to], lag }, i) => {
    if (lag === null || i === surest) return lag !== null;
    const tried = candidates.includes(lag) ? candidates.length : 2 * settings.longestPauseSeconds;
    const needed = Math.max(settings.surrogateFactor * surrogateGain, settings.margin + Math.log(tried));
    return to - from >= settings.segmentWindow && gains[i]! >= needed;
  });
  const goesOn = (lag: number, neighbour: Piece | undefined) =>
    neighbour !== undefined && sameAnswer(lag, neighbour.lag!);
  return pieces.map(({ stretch, lag }, i): Piece => {
    const before = pieces.findLast((_, k) => k < i && sure[k]!);
    const after = pieces.find((_, k) => k > i && sure[k]!);
    const kept = lag !== null && (sure[i]! || goesOn(lag, before) || goesOn(lag, after));
    return { stretch, lag: kept ? lag : null };
  });
}

/**
 * Moves each change of the lag from the edge of a window to the second that fits best. Where the lag grows
 * by d, the second's clock stood still: d seconds of the primary have no counterpart and are left out, so
 * that no sample of the second is used twice.
 */
function sharpen({ primary, second, correlation }: Pair, coarse: readonly Piece[]): Piece[] {
  const at = (t: number, by: number | null) =>
    by === null ? 0 : likelihoodOf(primary[t]!, second[t - by] ?? 0, correlation);
  const sharp: { stretch: [number, number]; lag: number | null }[] = [];
  for (const { stretch, lag } of coarse) {
    const last = sharp.at(-1);
    if (last === undefined) {
      sharp.push({ stretch: [stretch[0], stretch[1]], lag });
      continue;
    }
    const skipped = last.lag === null || lag === null ? 0 : Math.max(0, lag - last.lag);
    const from = Math.max(last.stretch[0], stretch[0] - settings.segmentWindow - skipped);
    const to = Math.min(stretch[1] - skipped, stretch[0] + settings.segmentWindow);
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

/** What no lag explains joins its neighbours where they agree, or where there is only one. */
function filled(pieces: readonly Piece[]): Segment[] {
  const known = pieces.filter((piece): piece is Segment => piece.lag !== null);
  const single = known.every(({ lag }) => sameAnswer(lag, known[0]!.lag));
  const out: { stretch: [number, number]; lag: number }[] = [];
  for (const [i, { stretch, lag }] of pieces.entries()) {
    const last = out.at(-1);
    if (lag !== null) {
      out.push({ stretch: [stretch[0], stretch[1]], lag });
      continue;
    }
    const next = pieces[i + 1]?.lag ?? null;
    if (last !== undefined && (next === null ? single : sameAnswer(last.lag, next))) {
      last.stretch[1] = stretch[1];
    } else if (last === undefined && next !== null && single) {
      out.push({ stretch: [stretch[0], stretch[1]], lag: next });
    }
  }
  return joined(out);
}

function joined(pieces: readonly Segment[]): Segment[] {
  const out: { stretch: [number, number]; lag: number }[] = [];
  for (const { stretch, lag } of pieces) {
    const last = out.at(-1);
    if (last !== undefined && last.lag === lag && last.stretch[1] === stretch[0])
      last.stretch[1] = stretch[1];
    else out.push({ stretch: [stretch[0], stretch[1]], lag });
  }
  return out;
}

/** Leaves out what would use a sample of the second twice. */
function inOrder(pieces: readonly Segment[]): Segment[] {
  const out: Segment[] = [];
  for (const { stretch, lag } of pieces) {
    const last = out.at(-1);
    const from = last === undefined ? stretch[0] : Math.max(stretch[0], last.stretch[1] - last.lag + lag);
    if (from < stretch[1]) out.push({ stretch: [from, stretch[1]], lag });
  }
  return out;
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

function merge(path: readonly number[], states: readonly (number | null)[], length: number): Piece[] {
  const merged: { stretch: [number, number]; lag: number | null }[] = [];
  path.forEach((state, w) => {
    const lag = states[state]!;
    const to = Math.min((w + 1) * settings.segmentWindow, length);
    const last = merged.at(-1);
    if (last !== undefined && last.lag === lag) last.stretch[1] = to;
    else merged.push({ stretch: [w * settings.segmentWindow, to], lag });
  });
  return merged;
}
