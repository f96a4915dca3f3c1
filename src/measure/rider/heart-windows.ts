import type { Stretch } from '../../types.ts';

/** A stretch in which power varied enough for a heart to show it, with what heart rate did there. */
export interface HeartWindow {
  readonly stretch: Stretch;
  /** SD of followed power without its slow drift, over its mean. */
  readonly variation: number;
  /** Heart rate without its mean and slow drift, bpm, from the stretch's first second; NaN where not known. */
  readonly heart: Float64Array;
  readonly known: number;
  /** Sum of the squares of `heart`. */
  readonly squares: number;
  /** Of the known seconds: their mean, and the sum of their squares around it. */
  readonly middle: number;
  readonly times: number;
}

export interface WindowLimits {
  readonly windowSeconds: number;
  /** Share of a window's seconds that must be known. */
  readonly leastKnown: number;
  /** SD of followed power over its mean below which a heart has nothing to answer to. */
  readonly leastVariation: number;
}

/** Windows of this length side by side from the start of the race; what is left at its end is in none. */
export function wholeWindows([from, to]: Stretch, seconds: number): Stretch[] {
  const count = Math.max(0, Math.floor((to - from) / seconds));
  return Array.from({ length: count }, (_, k) => [from + k * seconds, from + (k + 1) * seconds]);
}

/**
 * The windows in which there is something to answer to.
 *
 * @param felt power as a quick heart would follow it, W
 * @param heartRate bpm, NaN wherever it is not the heart
 */
export function heartWindows(
  felt: Float64Array,
  heartRate: Float64Array,
  race: Stretch,
  { windowSeconds, leastKnown, leastVariation }: WindowLimits,
): HeartWindow[] {
  const windows: HeartWindow[] = [];
  for (const stretch of wholeWindows(race, windowSeconds)) {
    const [start] = stretch;
    const heart = heartRate.slice(start, start + windowSeconds);
    const push = felt.subarray(start, start + windowSeconds);
    let known = 0;
    let t = 0;
    let tt = 0;
    let x = 0;
    let xx = 0;
    let xt = 0;
    let y = 0;
    let yt = 0;
    for (let i = 0; i < windowSeconds; i++) {
      const beats = heart[i]!;
      const watts = push[i]!;
      if (Number.isNaN(beats + watts)) {
        heart[i] = Number.NaN;
        continue;
      }
      known++;
      t += i;
      tt += i * i;
      x += watts;
      xx += watts * watts;
      xt += watts * i;
      y += beats;
      yt += beats * i;
    }
    if (known < leastKnown * windowSeconds || !(x > 0)) continue;
    const [middle, mean, beats] = [t / known, x / known, y / known];
    const times = tt - t * middle;
    const varied = xx - x * mean - (xt - x * middle) ** 2 / times;
    const variation = Math.sqrt(Math.max(0, varied) / known) / mean;
    if (!(variation >= leastVariation)) continue;
    const drift = (yt - y * middle) / times;
    let squares = 0;
    for (let i = 0; i < windowSeconds; i++) {
      heart[i]! -= beats + drift * (i - middle);
      if (!Number.isNaN(heart[i]!)) squares += heart[i]! ** 2;
    }
    windows.push({ stretch, variation, heart, known, squares, middle, times });
  }
  return windows;
}

/**
 * Correlation of a window's heart rate with power, slow drift taken out of both; 0 where either stands still.
 *
 * @param followed power as this heart is held to follow it, W; settled before its first second
 * @param lag seconds that heart rate arrives late
 */
export function answer(
  { stretch: [start], heart, known, squares, middle, times }: HeartWindow,
  followed: Float64Array,
  lag: number,
): number {
  const first = start - lag;
  // One by one: sums taken out of a list are held as objects, and a new one made at every addition.
  let x = 0;
  let xx = 0;
  let xt = 0;
  let xy = 0;
  for (let i = 0; i < heart.length; i++) {
    const beats = heart[i]!;
    if (Number.isNaN(beats)) continue;
    const push = followed[Math.max(0, first + i)]!;
    x += push;
    xx += push * push;
    xt += push * i;
    xy += push * beats;
  }
  // What is left of heart rate has neither mean nor trend: power's own need not be taken from the products.
  const size = Math.sqrt(Math.max(0, xx - (x * x) / known - (xt - x * middle) ** 2 / times) * squares);
  return size > 0 ? xy / size : 0;
}

/**
 * The correlation below which a heart would hardly fall in a window of this variation: what it would show beside
 * a heart's own unevenness, less what so short a window leaves open (Fisher's z).
 *
 * @param variation SD of followed power over its mean
 */
export function leastAnswer(
  variation: number,
  { ownVariation, openZ, leastCorrelation }: AnswerLimits,
): number {
  const usual = variation / Math.hypot(variation, ownVariation);
  return Math.min(leastCorrelation, Math.tanh(Math.atanh(usual) - openZ));
}

export interface AnswerLimits {
  /** Variation of power that would move a heart as much as it wavers by itself. */
  readonly ownVariation: number;
  /** How far a window's correlation may fall short, in Fisher's z. */
  readonly openZ: number;
  /** However much power varies, no more correlation is asked for. */
  readonly leastCorrelation: number;
}
