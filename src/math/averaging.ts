/** How readings are averaged: all of the last seconds alike, or the later the more (by an exponential). */
export type Averaging = 'plain' | 'weighted';

/** How the spectrum of power falls before any averaging, 1/f^exponent, and how that varies from ride to ride. */
export interface Pedalling {
  readonly exponent: number;
  /** Standard deviation among rides. */
  readonly spread: number;
}

/**
 * What averaging does to the wander of a series like 1/f noise, as power on a crisp meter is up to half a
 * minute: means over 1, 4 and 30 s scatter alike (published of self-paced riding: a 1/f-like spectrum,
 * Tucker et al. 2006, BJSM 40:912–917).
 *
 * Ratio of the differences of neighbouring means over `span` and over twice that (the Allan deviation), when
 * readings are averaged: the square root of ∫ (1/f^exponent)·|H(f)|²·sin⁴(πf·span)/(πf·span)² df at the one
 * span over the same at the other; H = sinc(f·seconds), or 1/(1 + iπf·seconds) after a mean over the one
 * second that every reading is. `seconds` is twice the mean age of a reading in both.
 */
export function wanderRatio(seconds: number, span: number, averaging: Averaging, exponent = 1): number {
  const passed = blur(seconds, averaging);
  return Math.sqrt(wander(passed, span, exponent) / wander(passed, 2 * span, exponent));
}

/** A grid of log f, where df/f is constant. */
const frequencies = Float64Array.from({ length: 182 }, (_, k) => 1e-4 * 1.06 ** k);

/** |H|² at every frequency. */
function blur(seconds: number, averaging: Averaging): Float64Array {
  return frequencies.map((f) =>
    averaging === 'plain'
      ? sinc(f * seconds) ** 2
      : sinc(f) ** 2 / (1 + (Math.PI * f * Math.max(0, seconds - 1)) ** 2),
  );
}

function wander(passed: Float64Array, span: number, exponent: number): number {
  const weights = weightsOf(span, exponent);
  let sum = 0;
  for (let k = 0; k < passed.length; k++) sum += passed[k]! * weights[k]!;
  return sum;
}

const weighed = new Map<string, Float64Array>();

/** What the differences of neighbouring means over a span take of each frequency, df/f left out. */
function weightsOf(span: number, exponent: number): Float64Array {
  const key = `${span} ${exponent}`;
  const known = weighed.get(key);
  if (known !== undefined) return known;
  const weights = frequencies.map((f) => {
    const angle = Math.PI * f * span;
    return f ** (1 - exponent) * (Math.sin(angle) ** 2 / angle) ** 2;
  });
  weighed.set(key, weights);
  return weights;
}

function sinc(x: number): number {
  return Math.sin(Math.PI * x) / (Math.PI * x);
}

/** How neighbouring means scatter: over `span` seconds, in terms of twice that; `error` is a standard error. */
export interface ScatterRatio {
  readonly span: number;
  readonly ratio: number;
  readonly error: number;
}

export interface AveragingFit {
  /** Twice the mean age of a reading, s; between 1 (a reading a second, crisp) and 45. */
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  /** Chi-squared of the best. */
  readonly misfit: number;
}

const knots = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 25, 30, 37, 45] as const;
/** Steps of the logarithm of seconds on which a fit is looked for. */
const fine = 120;
/** Exponents that are tried, in standard deviations from the usual one. */
const tried = [-3, -2.5, -2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3] as const;
const curves = new Map<string, Float64Array>();

/**
 * Seconds of averaging that explain these ratios best, by least squares, with their 95 % interval. How the
 * spectrum falls by itself is fitted along, held to what rides show: surges make a race look averaged.
 */
export function fitAveraging(
  ratios: readonly ScatterRatio[],
  averaging: Averaging,
  { exponent, spread }: Pedalling,
): AveragingFit {
  const misfits = new Float64Array(fine + 1).fill(Number.POSITIVE_INFINITY);
  for (const away of tried) {
    const here = new Float64Array(fine + 1).fill(away * away);
    for (const { span, ratio, error } of ratios) {
      const curve = curveOf(span, averaging, exponent + away * spread);
      for (let k = 0; k <= fine; k++) here[k]! += ((ratio - curve[k]!) / error) ** 2;
    }
    for (let k = 0; k <= fine; k++) misfits[k] = Math.min(misfits[k]!, here[k]!);
  }
  let best = 0;
  for (let k = 1; k <= fine; k++) if (misfits[k]! < misfits[best]!) best = k;
  const misfit = misfits[best]!;
  // A curve that fits badly is known badly.
  const allowed = misfit + 3.84 * Math.max(1, misfit / Math.max(1, ratios.length - 1));
  let low = best;
  let high = best;
  while (low > 0 && misfits[low - 1]! <= allowed) low--;
  while (high < fine && misfits[high + 1]! <= allowed) high++;
  return { seconds: secondsAt(best), low: secondsAt(low), high: secondsAt(high), misfit };
}

function secondsAt(step: number): number {
  return knots[knots.length - 1]! ** (step / fine);
}

/** `wanderRatio` over the fine steps, straight between the knots. */
function curveOf(span: number, averaging: Averaging, exponent: number): Float64Array {
  const key = `${averaging} ${span} ${exponent}`;
  const known = curves.get(key);
  if (known !== undefined) return known;
  const atKnots = knots.map((seconds) => wanderRatio(seconds, span, averaging, exponent));
  const curve = new Float64Array(fine + 1);
  for (let k = 0, knot = 1; k <= fine; k++) {
    const seconds = secondsAt(k);
    while (knot < knots.length - 1 && knots[knot]! < seconds) knot++;
    const part = Math.log(seconds / knots[knot - 1]!) / Math.log(knots[knot]! / knots[knot - 1]!);
    curve[k] = atKnots[knot - 1]! + (atKnots[knot]! - atKnots[knot - 1]!) * part;
  }
  curves.set(key, curve);
  return curve;
}
