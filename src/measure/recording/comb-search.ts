import { combScores } from './comb-scores.ts';
import type { Comb, WattHistogram } from './watt-histogram.ts';

export interface CombSearch {
  /** Range of factors looked for, and how near to 1 the search stays blind. */
  readonly leastFactor: number;
  readonly greatestFactor: number;
  readonly blindShare: number;
  /** From one factor tried to the next the comb moves by this much at its far end, W. */
  readonly stepWatts: number;
  /** Standard deviations by which a comb must stand out before its stretches are looked at. */
  readonly firstLook: number;
  /** How many factors are then looked at. */
  readonly candidates: number;
}

interface Scored {
  readonly comb: Comb;
  /** Standard deviations by which it stands out. */
  readonly score: number;
}

/**
 * Combs that stand out of any of the histograms (few counts where some are due, or many), and how many were
 * tried. The histograms go up to the same watts.
 */
export function outstandingCombs(
  histograms: readonly WattHistogram[],
  search: CombSearch,
): { combs: Comb[]; tried: number } {
  const ratio = 1 + search.stepWatts / histograms[0]!.most;
  const tried = grid(ratio, search);
  const scores = combScores(tried, histograms);
  const combs = histograms.flatMap((histogram, k) => {
    const found = scored(tried, scores[k]!, search.firstLook);
    return foremost(found, search.candidates, ratio).map((comb) => sharpened(histogram, comb, ratio));
  });
  return { combs, tried: tried.length };
}

/** The combs that are tried: from one to the next of a kind, what its factor changes by grows by the ratio. */
function grid(ratio: number, { leastFactor, greatestFactor, blindShare }: CombSearch): Comb[] {
  const combs: Comb[] = [];
  for (let step = blindShare; step <= greatestFactor - 1; step *= ratio) {
    combs.push({ factor: 1 + step, rounding: 'nearest' }, { factor: 1 + step, rounding: 'down' });
  }
  for (let step = blindShare; step <= 1 - leastFactor; step *= ratio) {
    combs.push({ factor: 1 - step, rounding: 'nearest' });
  }
  return combs;
}

/** Those that stand out by this much. */
function scored(combs: readonly Comb[], scores: Float64Array, least: number): Scored[] {
  const found: Scored[] = [];
  for (let i = 0; i < scores.length; i++) {
    const score = scores[i]!;
    if (score >= least) found.push({ comb: combs[i]!, score });
  }
  return found;
}

/** So many that stand out most, none beside another. */
function foremost(found: Scored[], most: number, ratio: number): Comb[] {
  found.sort((a, b) => b.score - a.score);
  const combs: Comb[] = [];
  for (const { comb } of found) {
    if (combs.length === most) break;
    if (!combs.some((other) => neighbours(comb, other, ratio))) combs.push(comb);
  }
  return combs;
}

/** Parts of a step of the grid in which a candidate is looked at on both sides. */
const finer = 8;

/** The comb that stands out most between a factor of the grid and its neighbours. */
function sharpened(histogram: WattHistogram, comb: Comb, ratio: number): Comb {
  let best = comb;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = -finer; k <= finer; k++) {
    const near = { ...comb, factor: 1 + (comb.factor - 1) * ratio ** (k / finer) };
    const score = histogram.scoreAt(near);
    if (score > most) {
      best = near;
      most = score;
    }
  }
  return best;
}

/** Whether one of the two factors is only a few steps of the grid beside the other. */
function neighbours(a: Comb, b: Comb, ratio: number): boolean {
  const apart = Math.log((a.factor - 1) / (b.factor - 1));
  return a.rounding === b.rounding && Math.abs(apart) < 3 * Math.log(ratio);
}
