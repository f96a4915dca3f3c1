import { type Rounding, writeComb } from '../../math/lattice.ts';

export interface HistogramOptions {
  /** Share of samples that a comb may miss. */
  readonly strayShare: number;
  /** Watts on either side from which the height at a place is expected, W. */
  readonly flankWatts: number;
  /** Share of the samples up to whose watts the histogram goes: the rare highest tell nothing. */
  readonly commonShare: number;
}

/** Which watts a factor leaves empty, or fills twice. */
export interface Comb {
  readonly factor: number;
  readonly rounding: Rounding;
}

/** Counts of whole watts, with what the flanks of each lead to expect: cautiously low, cautiously high. */
export class WattHistogram {
  readonly most: number;
  readonly counts: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** What is due comes in so many parts of a count: it is a mean over both flanks. */
  readonly dueParts: number;
  private readonly places: Int32Array;
  private readonly stray: number;

  /** @param most watts up to which it goes */
  constructor(watts: Int32Array, from: number, to: number, most: number, options: HistogramOptions) {
    const flank = options.flankWatts;
    const counts = new Float64Array(most + 2 + flank);
    for (let i = from; i < to; i++) if (watts[i]! < counts.length) counts[watts[i]!]!++;
    this.most = most;
    this.stray = options.strayShare;
    this.counts = counts;
    this.low = new Float64Array(most + 1);
    this.high = new Float64Array(most + 1);
    this.places = new Int32Array(most + 1);
    this.dueParts = 2 * flank;
    let left = 0;
    let right = 0;
    for (let k = 1; k <= flank; k++) right += counts[k] ?? 0;
    for (let k = 0; k <= most; k++) {
      const agree = Math.abs(left - right) <= 2 * Math.sqrt(left + right);
      this.low[k] = (agree ? (left + right) / 2 : Math.min(left, right)) / flank;
      this.high[k] = (agree ? (left + right) / 2 : Math.max(left, right)) / flank;
      left += counts[k]! - (k >= flank ? counts[k - flank]! : 0);
      right += counts[k + 1 + flank]! - counts[k + 1]!;
    }
  }

  /** The comb's places up to the highest watts looked at; overwritten by the next call. */
  placesOf({ factor, rounding }: Comb): Int32Array {
    return this.places.subarray(0, writeComb(factor, this.most, rounding, this.places));
  }

  /** What the flanks lead to expect of each watt, on the side that speaks against a comb of this factor. */
  dueBy(factor: number): Float64Array {
    return factor > 1 ? this.low : this.high;
  }

  /** Counts at the comb's places and what the flanks lead to expect there. */
  sumsAt(comb: Comb): { counted: number; expected: number } {
    const due = this.dueBy(comb.factor);
    let counted = 0;
    let expected = 0;
    for (const k of this.placesOf(comb)) {
      counted += this.counts[k]!;
      expected += due[k]!;
    }
    return { counted, expected };
  }

  /** How far the comb stands out: see `standing`. */
  scoreAt(comb: Comb): number {
    const { counted, expected } = this.sumsAt(comb);
    return standing(comb.factor, counted, expected);
  }

  /** Log-likelihood of the comb over none, and the part of it that its best place adds. */
  gainAt(comb: Comb): { gain: number; greatest: number } {
    const up = comb.factor > 1;
    const logStray = Math.log(this.stray);
    const allDue = this.dueBy(comb.factor);
    let gain = 0;
    let greatest = 0;
    for (const k of this.placesOf(comb)) {
      const due = allDue[k]!;
      // A double holds twice what is due; more than that is a peak, not a comb.
      const count = up ? this.counts[k]! : Math.min(this.counts[k]!, 2 * due + 3 * Math.sqrt(2 * due));
      const here = up ? count * logStray + (1 - this.stray) * due : count * Math.LN2 - due;
      gain += here;
      if (here > greatest) greatest = here;
    }
    return { gain, greatest };
  }
}

/** Standard deviations by which counts lie below what is expected (factor above 1), or above it. */
export function standing(factor: number, counted: number, expected: number): number {
  return (factor > 1 ? expected - counted : counted - expected) / Math.sqrt(expected + 1);
}

/** Watts that this share of the samples does not exceed. */
export function commonest(watts: Int32Array, share: number): number {
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

/** Share of the watts never recorded, among those that their flanks lead to expect several times. */
export function neverRecorded(watts: Int32Array, due: number, options: HistogramOptions): number {
  const most = commonest(watts, options.commonShare);
  const histogram = new WattHistogram(watts, 0, watts.length, most, options);
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
  options: HistogramOptions,
): { counts: Float64Array; expected: Float64Array } {
  const most = commonest(watts, options.commonShare);
  const { counts, low } = new WattHistogram(watts, 0, watts.length, most, options);
  return { counts: counts.subarray(0, most + 1), expected: low };
}
