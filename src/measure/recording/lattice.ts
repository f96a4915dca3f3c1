import { type Rounding, writeComb } from '../../math/lattice.ts';

export interface LatticeSearch {
  /** Range of factors looked for, and how near to 1 the search stays blind. */
  readonly leastFactor: number;
  readonly greatestFactor: number;
  readonly blindShare: number;
  /** From one factor tried to the next the comb moves by this much at its far end, W. */
  readonly stepWatts: number;
  /** Share of samples that a lattice may miss. */
  readonly strayShare: number;
  /** Watts on either side from which the height at a comb place is expected, W. */
  readonly flankWatts: number;
  /** Share of the samples up to whose watts combs are looked for: the rare highest tell nothing. */
  readonly commonShare: number;
  /** Standard deviations by which a comb must stand out of the whole before its stretches are looked at. */
  readonly firstLook: number;
  /** How many factors are then looked at. */
  readonly candidates: number;
  /** Where the halves of the ride begin that are looked at beside the whole, share of it. */
  readonly halvesFrom: readonly number[];
}

/** Whole watts that look like other whole numbers times a factor. */
export interface Lattice {
  readonly factor: number;
  /** Factors that explain it nearly as well (log-likelihood within 1.92: 95 %). */
  readonly low: number;
  readonly high: number;
  readonly rounding: Rounding;
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
  const most = quantile(watts, search.commonShare);
  const whole = new Histogram(watts, 0, watts.length, most, search);
  // Half of a ride shows the comb of a part that the whole of it drowns.
  const halves = search.halvesFrom.map((share) => {
    const from = Math.round(share * watts.length);
    return new Histogram(watts, from, from + (watts.length >> 1), most, search);
  });
  const { combs, tried } = firstLook([whole, ...halves], search);
  let best: Candidate | null = null;
  for (const comb of combs) {
    const placed = place(watts, whole, comb, search);
    if (placed !== null && (best === null || placed.gain > best.gain)) best = placed;
  }
  return best === null ? null : refine(watts, whole, best, tried, search);
}

interface Comb {
  readonly factor: number;
  readonly rounding: Rounding;
}
interface Candidate extends Comb {
  readonly from: number;
  readonly to: number;
  readonly gain: number;
}

/** Watts that this share of the samples does not exceed. */
function quantile(watts: Int32Array, share: number): number {
  let most = 0;
  for (let i = 0; i < watts.length; i++) if (watts[i]! > most) most = watts[i]!;
  const counts = new Int32Array(most + 1);
  for (let i = 0; i < watts.length; i++) counts[watts[i]!]!++;
  let below = 0;
  for (let k = 0; k < most; k++) {
    below += counts[k]!;
    if (below >= share * watts.length) return k;
  }
  return most;
}

/** Counts of whole watts, with what the flanks of each lead to expect: cautiously low, cautiously high. */
class Histogram {
  readonly most: number;
  readonly counts: Float64Array;
  readonly low: Float64Array;
  private readonly high: Float64Array;
  /** How far the counts lie below `low`, and below `high`. */
  private readonly belowLow: Float64Array;
  private readonly belowHigh: Float64Array;
  private readonly places: Int32Array;
  private readonly stray: number;

  constructor(watts: Int32Array, from: number, to: number, most: number, search: LatticeSearch) {
    const flank = search.flankWatts;
    const counts = new Float64Array(most + 2 + flank);
    for (let i = from; i < to; i++) if (watts[i]! < counts.length) counts[watts[i]!]!++;
    this.most = most;
    this.stray = search.strayShare;
    this.counts = counts;
    this.low = new Float64Array(most + 1);
    this.high = new Float64Array(most + 1);
    this.belowLow = new Float64Array(most + 1);
    this.belowHigh = new Float64Array(most + 1);
    this.places = new Int32Array(most + 1);
    let left = 0;
    let right = 0;
    for (let k = 1; k <= flank; k++) right += counts[k] ?? 0;
    for (let k = 0; k <= most; k++) {
      const agree = Math.abs(left - right) <= 2 * Math.sqrt(left + right);
      this.low[k] = (agree ? (left + right) / 2 : Math.min(left, right)) / flank;
      this.high[k] = (agree ? (left + right) / 2 : Math.max(left, right)) / flank;
      this.belowLow[k] = this.low[k]! - counts[k]!;
      this.belowHigh[k] = this.high[k]! - counts[k]!;
      left += counts[k]! - (k >= flank ? counts[k - flank]! : 0);
      right += counts[k + 1 + flank]! - counts[k + 1]!;
    }
  }

  /** The comb's places up to the highest watts looked at; overwritten by the next call. */
  placesOf({ factor, rounding }: Comb): Int32Array {
    return this.places.subarray(0, writeComb(factor, this.most, rounding, this.places));
  }

  /** Counts at the comb's places and what the flanks lead to expect there. */
  sumsAt(comb: Comb): { counted: number; expected: number } {
    const due = comb.factor > 1 ? this.low : this.high;
    let counted = 0;
    let expected = 0;
    for (const k of this.placesOf(comb)) {
      counted += this.counts[k]!;
      expected += due[k]!;
    }
    return { counted, expected };
  }

  /** Standard deviations by which counts at the first `count` places lie below what is due (`up`), or above it. */
  scoreAt(places: Int32Array, count: number, up: boolean): number {
    const due = up ? this.low : this.high;
    const below = up ? this.belowLow : this.belowHigh;
    let short = 0;
    let expected = 0;
    for (let i = 0; i < count; i++) {
      const k = places[i]!;
      short += below[k]!;
      expected += due[k]!;
    }
    return (up ? short : -short) / Math.sqrt(expected + 1);
  }

  /** Log-likelihood of the comb over none, and the part of it that its best place adds. */
  gainAt(comb: Comb): { gain: number; greatest: number } {
    const up = comb.factor > 1;
    const logStray = Math.log(this.stray);
    let gain = 0;
    let greatest = 0;
    for (const k of this.placesOf(comb)) {
      const due = up ? this.low[k]! : this.high[k]!;
      // A double holds twice what is due; more than that is a peak, not a comb.
      const count = up ? this.counts[k]! : Math.min(this.counts[k]!, 2 * due + 3 * Math.sqrt(2 * due));
      const here = up ? count * logStray + (1 - this.stray) * due : count * Math.LN2 - due;
      gain += here;
      if (here > greatest) greatest = here;
    }
    return { gain, greatest };
  }
}

/** Combs that stand out of any of the histograms (few counts where some are due, or many), and all tried. */
function firstLook(
  histograms: readonly Histogram[],
  search: LatticeSearch,
): { combs: Comb[]; tried: number } {
  const { most } = histograms[0]!;
  const places = new Int32Array(most + 1);
  const found = histograms.map((): { comb: Comb; score: number }[] => []);
  const ratio = 1 + search.stepWatts / most;
  let tried = 0;
  const look = (factor: number, rounding: Rounding) => {
    const count = writeComb(factor, most, rounding, places);
    for (let k = 0; k < histograms.length; k++) {
      const score = histograms[k]!.scoreAt(places, count, factor > 1);
      if (score >= search.firstLook) found[k]!.push({ comb: { factor, rounding }, score });
    }
    tried++;
  };
  for (const [direction, furthest] of [
    [1, search.greatestFactor - 1],
    [-1, 1 - search.leastFactor],
  ] as const) {
    for (let step = search.blindShare; step <= furthest; step *= ratio) {
      look(1 + direction * step, 'nearest');
      if (direction > 0) look(1 + direction * step, 'down');
    }
  }
  const combs = histograms.flatMap((histogram, k) =>
    foremost(found[k]!, search.candidates, ratio).map((comb) => sharpened(histogram, comb, ratio)),
  );
  return { combs, tried };
}

/** So many that stand out most, none beside another. */
function foremost(found: { comb: Comb; score: number }[], most: number, ratio: number): Comb[] {
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
function sharpened(histogram: Histogram, comb: Comb, ratio: number): Comb {
  const up = comb.factor > 1;
  let best = comb;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = -finer; k <= finer; k++) {
    const near = { ...comb, factor: 1 + (comb.factor - 1) * ratio ** (k / finer) };
    const places = histogram.placesOf(near);
    const score = histogram.scoreAt(places, places.length, up);
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
  const most = quantile(watts, search.commonShare);
  const histogram = new Histogram(outside, 0, outside.length, most, search);
  return histogram.sumsAt(lattice).expected >= due && histogram.gainAt(lattice).gain <= -loss;
}

/** Share of the watts never recorded, among those that their flanks lead to expect several times. */
export function neverRecorded(watts: Int32Array, due: number, search: LatticeSearch): number {
  const most = quantile(watts, search.commonShare);
  const histogram = new Histogram(watts, 0, watts.length, most, search);
  let looked = 0;
  let empty = 0;
  for (let k = 0; k <= most; k++) {
    if (histogram.low[k]! < due) continue;
    looked++;
    if (histogram.counts[k] === 0) empty++;
  }
  return looked === 0 ? 0 : empty / looked;
}

/** Counts of each watt up to the highest looked at, and what its flanks lead to expect. */
export function countsOf(
  watts: Int32Array,
  search: LatticeSearch,
): { counts: Float64Array; expected: Float64Array } {
  const most = quantile(watts, search.commonShare);
  const { counts, low } = new Histogram(watts, 0, watts.length, most, search);
  return { counts: counts.subarray(0, most + 1), expected: low };
}

/** The stretch of samples in which a comb gains most: the greatest sum of a run, in one pass. */
function place(watts: Int32Array, whole: Histogram, comb: Comb, search: LatticeSearch): Candidate | null {
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
  const { gain } = new Histogram(watts, from, to, whole.most, search).gainAt(comb);
  return { ...comb, from, to, gain };
}

/** The best factor on a finer grid, its range, and the gain that stands without the best place. */
function refine(
  watts: Int32Array,
  whole: Histogram,
  start: Candidate,
  tried: number,
  search: LatticeSearch,
): Lattice {
  const { from, to, rounding } = start;
  const part = new Histogram(watts, from, to, whole.most, search);
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
