import { quantile } from 'simple-statistics';
import type { Stretch } from '../types.ts';
import { lagsWithin } from './lags-within.ts';
import { likeliestPath, type Near } from './path.ts';
import { settings } from './settings.ts';
import {
  correlationWithin,
  likelihood,
  likelihoods,
  type WindowSums,
  windowSums,
  windowsIn,
} from './window-sums.ts';

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
  /** What they make together at a lag. */
  readonly sumsAt: (lag: number) => WindowSums;
  readonly correlation: number;
}

/** What a lag is held against. */
export interface Evidence {
  /** The best that a second reaches by chance, as `lags` has it. */
  readonly surrogateGain: number;
  /** The gain of a lag in a stretch by those seconds alone that both recorders wrote. */
  readonly writtenGain: (stretch: Stretch, lag: number) => number;
  /** Whether what else was recorded in a stretch allows that it is of one ride at a lag. */
  readonly belongs: (stretch: Stretch, lag: number) => boolean;
  /** Whether legs, or all of that where there are none to compare, bear a lag out in a stretch. */
  readonly bearsOut: (stretch: Stretch, lag: number) => boolean;
}

/**
 * Finds which lag holds in which stretch, for clocks that skip pauses or creep. The answers of the whole ride, the
 * best first, and their neighbours are tried first; where none of them holds, the stretch is asked by itself for the lag that fits it, until nothing
 * new is found. A stretch that no lag explains goes with its neighbours where both have the same lag (a
 * value that stood still says nothing of clocks) and it belongs to the ride; between different lags it is left
 * out.
 */
export function segments(
  primary: Float64Array,
  second: Float64Array,
  answers: readonly number[],
  evidence: Evidence,
): Segment[] {
  const candidates = withNeighbours(answers);
  const sumsAt = oncePerLag((lag) => windowSums(primary, second, lag));
  let pair: Pair = { primary, second, sumsAt, correlation: sharedAtBest(candidates.map(sumsAt)) };
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
  const told = proven(pair, pieces, answers[0]!, evidence);
  const sharp = sharpen(pair, told).filter(({ stretch }) => stretch[1] > stretch[0]);
  return inOrder(filled(sharp, evidence.belongs));
}

/** Each lag with those that count as the same answer. */
function withNeighbours(lags: readonly number[]): number[] {
  const reach = settings.sameAnswerSeconds;
  const all = lags.flatMap((lag) => Array.from({ length: 2 * reach + 1 }, (_, i) => lag + i - reach));
  return [...new Set(all)].sort((a, b) => a - b);
}

export const sameAnswer = (a: number, b: number) => Math.abs(a - b) <= settings.sameAnswerSeconds;

function oncePerLag<T>(of: (lag: number) => T): (lag: number) => T {
  const known = new Map<number, T>();
  return (lag) => {
    const found = known.get(lag) ?? of(lag);
    known.set(lag, found);
    return found;
  };
}

/**
 * How much of the residuals the two share where a candidate fits best: the upper quartile over stretches of
 * some minutes. Over the whole ride one lag of several shows less than there is.
 */
function sharedAtBest(candidates: readonly WindowSums[]): number {
  const windows = candidates[0]?.count.length ?? 0;
  const best: number[] = [];
  for (let from = 0; from < windows; from += settings.shareWindows) {
    const to = Math.min(from + settings.shareWindows, windows);
    best.push(Math.max(0, ...candidates.map((sums) => correlationWithin(sums, from, to))));
  }
  return limited(quantile(best, 0.75));
}

/** The same at the lags found so far. */
function sharedBy({ sumsAt, correlation }: Pair, pieces: readonly Piece[]): number {
  let sum = 0;
  let seconds = 0;
  for (const { stretch, lag } of pieces) {
    if (lag === null) continue;
    const [from, to] = stretch;
    const within = correlationWithin(sumsAt(lag), windowsIn(from), windowsIn(to));
    sum += (to - from) * within;
    seconds += to - from;
  }
  return seconds === 0 ? correlation : limited(sum / seconds);
}

function limited(correlation: number): number {
  return Math.max(settings.leastSegmentCorrelation, Math.min(settings.segmentCorrelation, correlation));
}

/**
 * The most likely path of lags through windows of half a minute. Entering or leaving a stretch without a lag is a
 * jump as well; a window of it says nothing for or against.
 */
function likeliest({ primary, sumsAt, correlation }: Pair, lags: readonly number[]): Piece[] {
  const states = [...lags, null];
  const of = lags.map((lag) => likelihoods(sumsAt(lag), correlation));
  const path = likeliestPath([...of, new Float64Array(windowsIn(primary.length))], states.map(nearOf));
  return merge(path, states, primary.length);
}

/** The lags, in ascending order, that are the same answer as one of them; without a lag there is none other. */
function nearOf(lag: number | null, at: number, states: readonly (number | null)[]): Near {
  const same = (other: number | null) => lag !== null && other !== null && sameAnswer(lag, other);
  const first = states.findIndex(same);
  return first < 0 ? [at, at] : [first, states.findLastIndex(same)];
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
  const found = lagsWithin(primary, second, [from, to], [low, high], settings.margin);
  found.sort((a, b) => b.gain - a.gain);
  const distinct: number[] = [];
  for (const { lag } of found) {
    if (distinct.length === settings.lagsOfStretch) break;
    if (!distinct.some((other) => sameAnswer(lag, other))) distinct.push(lag);
  }
  return distinct;
}

/**
 * Takes a lag back where its stretch does not prove it. The best was proved by all of the ride, and what goes on with
 * the lag of a proven neighbour claims nothing; every other one claims that a clock jumped, for a stretch that was
 * picked because it fits. There it must beat chance as a whole ride must, and as many lags as a pause may last either
 * way, for longer than a few spikes that happen to meet: otherwise two dropouts make a jump, or one set of efforts
 * that is like another.
 */
function proven(
  pair: Pair,
  pieces: readonly Piece[],
  best: number,
  { surrogateGain, writtenGain }: Evidence,
): Piece[] {
  const sharp = sharpen(pair, pieces);
  const gains = sharp.map(({ stretch, lag }) => (lag === null ? 0 : writtenGain(stretch, lag)));
  const tried = Math.log(2 * settings.longestPauseSeconds);
  const needed = Math.max(settings.surrogateFactor * surrogateGain, settings.margin + tried);
  const ofBest = gains.map((gain, i) =>
    sharp[i]!.lag !== null && sameAnswer(sharp[i]!.lag!, best) ? gain : 0,
  );
  const surest = ofBest.indexOf(Math.max(...ofBest));
  const sure = sharp.map(({ stretch: [from, to], lag }, i) => {
    if (lag === null) return false;
    if (i === surest && ofBest[i]! > 0) return true;
    return to - from >= settings.segmentWindow && gains[i]! >= needed;
  });
  const told = pieces.map(({ stretch, lag }, i): Piece => {
    if (lag === null || sure[i]!) return { stretch, lag };
    // The next that claims anything either way: nothing else may lie between.
    const claims = ({ lag: other }: Piece, k: number) =>
      other !== null && (sure[k]! || !sameAnswer(lag, other));
    const before = pieces.findLastIndex((piece, k) => k < i && claims(piece, k));
    const after = pieces.findIndex((piece, k) => k > i && claims(piece, k));
    const goesOn = [before, after].some((k) => k >= 0 && sameAnswer(lag, pieces[k]!.lag!));
    return { stretch, lag: goesOn ? lag : null };
  });
  return joined(told);
}

/**
 * Moves each change of the lag from the edge of a window to the second that fits best. Where the lag grows
 * by d, the second's clock stood still: d seconds of the primary have no counterpart and are left out, so
 * that no sample of the second is used twice.
 */
function sharpen({ primary, second, correlation }: Pair, coarse: readonly Piece[]): Piece[] {
  const at = (t: number, by: number | null) => {
    const a = primary[t]!;
    const b = by === null ? 0 : (second[t - by] ?? 0);
    return a === 0 || b === 0 ? 0 : likelihood(a * b, a * a + b * b, 1, correlation);
  };
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
  return sharp;
}

/** What no lag explains joins its neighbours where they agree, or where there is only one, if it belongs there. */
function filled(pieces: readonly Piece[], belongs: (stretch: Stretch, lag: number) => boolean): Segment[] {
  const known = pieces.filter((piece): piece is Segment => piece.lag !== null);
  const single = known.every(({ lag }) => sameAnswer(lag, known[0]!.lag));
  const out: { stretch: [number, number]; lag: number }[] = [];
  for (const [i, { stretch, lag }] of pieces.entries()) {
    const last = out.at(-1);
    if (lag !== null) {
      out.push({ stretch: [stretch[0], stretch[1]], lag });
      continue;
    }
    const before = pieces[i - 1]?.lag ?? null;
    const after = pieces[i + 1]?.lag ?? null;
    const joins = before !== null && after !== null ? sameAnswer(before, after) : single;
    const by = before ?? after;
    if (by === null || !joins || !belongs(stretch, by)) continue;
    if (before !== null) last!.stretch[1] = stretch[1];
    else out.push({ stretch: [stretch[0], stretch[1]], lag: by });
  }
  return joined(out);
}

/**
 * A segment without what at its ends bears its lag out by nothing: where power shares little detail, the path of lags
 * runs on past a stop of the clock at hardly a cost, and minutes before it would be compared with other minutes.
 *
 * @param length of the second: beyond its ends there is nothing to ask
 */
export function borneOut({ stretch, lag }: Segment, length: number, evidence: Evidence): Segment[] {
  const step = settings.endWindow;
  const stands = (part: Stretch) =>
    evidence.writtenGain(part, lag) >= settings.margin || evidence.bearsOut(part, lag);
  const [first, last] = [Math.max(stretch[0], lag), Math.min(stretch[1], length + lag)];
  let [from, to] = [first, last];
  while (from + step <= to && !stands([from, from + step])) from += step;
  while (from + step <= to && !stands([to - step, to])) to -= step;
  if (from === first && to === last) return [{ stretch, lag }];
  const kept: Stretch = [from === first ? stretch[0] : from, to === last ? stretch[1] : to];
  return from < to ? [{ stretch: kept, lag }] : [];
}

/** Neighbours that meet with one lag are one; as are those without any. */
function joined<P extends Piece>(pieces: readonly P[]): P[] {
  const out: P[] = [];
  for (const piece of pieces) {
    const { stretch, lag } = piece;
    const last = out.at(-1);
    if (last !== undefined && last.lag === lag && (lag === null || last.stretch[1] === stretch[0]))
      out[out.length - 1] = { ...last, stretch: [last.stretch[0], stretch[1]] };
    else out.push(piece);
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

function merge(path: Int32Array, states: readonly (number | null)[], length: number): Piece[] {
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
