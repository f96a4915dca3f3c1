import { type CombSearch, outstandingCombs } from './comb-search.ts';
import { type Comb, commonest, type HistogramOptions, WattHistogram } from './watt-histogram.ts';

export interface LatticeSearch extends CombSearch, HistogramOptions {
  /** Where the halves of the ride begin that are looked at beside the whole, share of it. */
  readonly halvesFrom: readonly number[];
}

/** Whole watts that look like other whole numbers times a factor. */
export interface Lattice extends Comb {
  /** Factors that explain it nearly as well (log-likelihood within 1.92: 95 %). */
  readonly low: number;
  readonly high: number;
  /** Samples in which it holds, half open. */
  readonly from: number;
  readonly to: number;
  /** Log-likelihood over counts that follow their neighbours, without the place that adds most. */
  readonly gain: number;
  /** Log of the number of alternatives (factors and stretches) among which it is the best. */
  readonly logTried: number;
  /** Counts at the comb inside the stretch, and what neighbours lead to expect. */
  readonly counted: number;
  readonly expected: number;
}

/**
 * Looks for a comb in whole watts: places that a factor above 1 leaves empty, or that one below 1 fills
 * twice. At each place the count h stands against the height λ of its flanks, or, where these differ by more
 * than counting allows, of the one that speaks against a comb: so slopes and edges of an honest histogram
 * never look like one. The log-likelihood of a comb over none is Σ h·ln ε + (1 - ε)·λ, or Σ h·ln 2 - λ; by
 * Markov's inequality one among T alternatives exceeds x by chance with probability below T·exp(-x), so
 * nothing need be resampled.
 *
 * @param watts one whole number a sample, without immediate repeats
 */
export function findLattice(watts: Int32Array, search: LatticeSearch): Lattice | null {
  const most = commonest(watts, search.commonShare);
  const whole = new WattHistogram(watts, 0, watts.length, most, search);
  // Half of a ride shows the comb of a part that the whole of it drowns.
  const halves = search.halvesFrom.map((share) => {
    const from = Math.round(share * watts.length);
    return new WattHistogram(watts, from, from + (watts.length >> 1), most, search);
  });
  const { combs, tried } = outstandingCombs([whole, ...halves], search);
  let best: Candidate | null = null;
  for (const comb of combs) {
    const placed = place(watts, whole, comb, search);
    if (placed !== null && (best === null || placed.gain > best.gain)) best = placed;
  }
  return best === null ? null : refine(watts, whole, best, tried, search);
}

interface Candidate extends Comb {
  readonly from: number;
  readonly to: number;
  readonly gain: number;
}

/**
 * Whether the samples outside the lattice's stretch are no part of it: enough of them are due at its places,
 * and they speak against it by more than the choice of the best stretch alone would make them.
 *
 * @param due counts expected at its places, at least
 * @param loss log-likelihood against it, at least
 */
export function isPart(
  watts: Int32Array,
  lattice: Lattice,
  due: number,
  loss: number,
  search: LatticeSearch,
): boolean {
  const outside = new Int32Array(watts.length - (lattice.to - lattice.from));
  outside.set(watts.subarray(0, lattice.from));
  outside.set(watts.subarray(lattice.to), lattice.from);
  const most = commonest(watts, search.commonShare);
  const histogram = new WattHistogram(outside, 0, outside.length, most, search);
  return histogram.sumsAt(lattice).expected >= due && histogram.gainAt(lattice).gain <= -loss;
}

/** The stretch of samples in which a comb gains most: the greatest sum of a run, in one pass. */
function place(watts: Int32Array, whole: WattHistogram, comb: Comb, search: LatticeSearch): Candidate | null {
  const credit = whole.sumsAt(comb).expected / watts.length;
  const up = comb.factor > 1;
  const hit = up ? Math.log(search.strayShare) : Math.LN2;
  const miss = up ? (1 - search.strayShare) * credit : -credit;
  const worth = new Float64Array(whole.counts.length).fill(miss);
  for (const k of whole.placesOf(comb)) worth[k] = hit;
  let sum = 0;
  let start = 0;
  let best = 0;
  let from = 0;
  let to = 0;
  for (let i = 0; i < watts.length; i++) {
    if (sum <= 0) {
      sum = 0;
      start = i;
    }
    const watt = watts[i]!;
    sum += watt < worth.length ? worth[watt]! : miss;
    if (sum > best) {
      best = sum;
      from = start;
      to = i + 1;
    }
  }
  if (to === from) return null;
  const { gain } = new WattHistogram(watts, from, to, whole.most, search).gainAt(comb);
  return { ...comb, from, to, gain };
}

/** The best factor on a finer grid, its range, and the gain that stands without the best place. */
function refine(
  watts: Int32Array,
  whole: WattHistogram,
  start: Candidate,
  tried: number,
  search: LatticeSearch,
): Lattice {
  const { from, to, rounding } = start;
  const part = new WattHistogram(watts, from, to, whole.most, search);
  const width = 4 / whole.most;
  const steps = 128;
  const gains: (readonly [factor: number, gain: number])[] = [];
  for (let k = -steps; k <= steps; k++) {
    const factor = 1 + (start.factor - 1) * (1 + (width * k) / steps);
    gains.push([factor, part.gainAt({ factor, rounding }).gain]);
  }
  const most = gains.reduce((a, b) => (b[1] > a[1] ? b : a));
  const near = gains.filter(([, gain]) => gain >= most[1] - 1.92).map(([factor]) => factor);
  const low = Math.min(...near);
  const high = Math.max(...near);
  const best = { factor: most[0], rounding };
  const { gain, greatest } = part.gainAt(best);
  // Stretches that differ by less than a place of the comb are one alternative.
  const stretches = Math.max(1, whole.sumsAt(best).expected) ** 2;
  return {
    ...best,
    low,
    high,
    from,
    to,
    gain: gain - greatest,
    logTried: Math.log(tried * stretches),
    ...part.sumsAt(best),
  };
}
