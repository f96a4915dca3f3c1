import { medianDeviation } from '../../math/robust-spread.ts';

/** Differences wider than this (W times seconds) are counted together: they lie far above any median. */
const countedApart = 4095;
/** Blocks of the ride that can be left out. */
const blocks = 10;

/** How far neighbouring means over a span differ, W: with all of the ride, and without each block of it. */
export interface Deviation {
  readonly whole: number;
  readonly without: readonly number[];
  /** Pairs of means that it rests on. */
  readonly pairs: number;
}

/**
 * Robust Allan deviation: the median size of the differences of neighbouring means over `span` seconds, over
 * every pair of full windows, as the standard deviation of a normal; what rounding to the steps that the meter
 * works in adds is taken off.
 *
 * @param power W, one value a second, NaN where missing
 * @param widest differences wider than this (W) are steps of the ride and not its wander: left out
 */
export function deviation(power: Float64Array, span: number, widest = Number.POSITIVE_INFINITY): Deviation {
  const sizes = differences(power, span, widest * span);
  const step = stepOf(power);
  const counts = new Int32Array(countedApart + 1);
  for (let i = 0; i < sizes.length; i++) counts[sizes[i]!]!++;
  const spread = (pairs: number) => {
    const robust = median(counts, pairs, step) / medianDeviation / span;
    return Math.sqrt(Math.max(0, robust * robust - step ** 2 / (6 * span)));
  };
  const without = Array.from({ length: blocks }, (_, block) => {
    const from = Math.floor((block * sizes.length) / blocks);
    const to = Math.floor(((block + 1) * sizes.length) / blocks);
    for (let i = from; i < to; i++) counts[sizes[i]!]!--;
    const result = spread(sizes.length - (to - from));
    for (let i = from; i < to; i++) counts[sizes[i]!]!++;
    return result;
  });
  return { whole: spread(sizes.length), without, pairs: sizes.length };
}

/** Sizes of the differences of neighbouring sums over `span` seconds, rounded, up to the widest that counts. */
function differences(power: Float64Array, span: number, widest: number): Uint16Array {
  const sizes = new Uint16Array(Math.max(0, power.length - 2 * span + 1));
  let count = 0;
  let earlier = 0;
  let later = 0;
  let valid = 0;
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    // Sums start afresh after every second that is missing.
    if (Number.isNaN(watts)) {
      earlier = 0;
      later = 0;
      valid = 0;
      continue;
    }
    later += watts;
    valid++;
    if (valid > span) {
      later -= power[i - span]!;
      earlier += power[i - span]!;
    }
    if (valid > 2 * span) earlier -= power[i - 2 * span]!;
    if (valid < 2 * span) continue;
    const size = Math.min(countedApart, Math.round(Math.abs(later - earlier)));
    if (size <= widest) sizes[count++] = size;
  }
  return sizes.subarray(0, count);
}

/** The most watts that a meter's steps are known to have. */
const coarsest = 10;
/** Share of the readings that must be whole steps: zeros and odd values stray in. */
const onSteps = 0.98;

/** Steps in which a meter works, W: the largest whole number that next to all readings are multiples of. */
export function stepOf(power: Float64Array): number {
  let valid = 0;
  for (let i = 0; i < power.length; i++) if (!Number.isNaN(power[i]!)) valid++;
  if (valid === 0) return 1;
  const strays = valid - onSteps * valid;
  for (let step = coarsest; step > 1; step--) if (isStep(step, power, strays)) return step;
  return 1;
}

/** Whether no more than so many readings stray from whole steps: of most steps a few readings tell it. */
function isStep(step: number, power: Float64Array, strays: number): boolean {
  let strayed = 0;
  for (let i = 0; i < power.length; i++) {
    const rest = power[i]! % step;
    if (rest !== 0 && !Number.isNaN(rest) && ++strayed > strays) return false;
  }
  return true;
}

/** Median of multiples of a step from how often each occurs, straight within the middle one. */
function median(counts: Int32Array, total: number, step: number): number {
  let below = 0;
  for (let size = 0; size < counts.length; size++) {
    const here = counts[size]!;
    if (here > 0 && 2 * (below + here) >= total) {
      // Sizes are absolute: 0 stands for half a step, every other for a whole one.
      const part = (total / 2 - below) / here;
      return size === 0 ? (step * part) / 2 : size + step * (part - 0.5);
    }
    below += here;
  }
  return 0;
}
