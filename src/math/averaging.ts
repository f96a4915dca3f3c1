/** How readings are averaged: all of the last seconds alike, or the later the more (by an exponential). */
export type Averaging = 'plain' | 'weighted';

/**
 * What averaging does to the wander of a series like 1/f noise, as power on a crisp meter is up to half a
 * minute: means over 1, 4 and 30 s scatter alike (published of self-paced riding: a 1/f-like spectrum,
 * Tucker et al. 2006, BJSM 40:912–917).
 *
 * Ratio of the differences of neighbouring means over `span` and over twice that (the Allan deviation), when
 * readings are averaged: the square root of ∫ (1/f)·|H(f)|²·sin⁴(πf·span)/(πf·span)² df at the one span over
 * the same at the other; H = sinc(f·seconds), or 1/(1 + iπf·seconds) after a mean over the one second that
 * every reading is. `seconds` is twice the mean age of a reading in both.
 */
export function wanderRatio(seconds: number, span: number, averaging: Averaging): number {
  return Math.sqrt(wander(seconds, span, averaging) / wander(seconds, 2 * span, averaging));
}

function wander(seconds: number, span: number, averaging: Averaging): number {
  let sum = 0;
  // On a grid of log f, where df/f is constant.
  for (let f = 1e-4; f < 4; f *= 1.06) {
    const blur =
      averaging === 'plain'
        ? sinc(f * seconds) ** 2
        : sinc(f) ** 2 / (1 + (Math.PI * f * Math.max(0, seconds - 1)) ** 2);
    const angle = Math.PI * f * span;
    const turn = Math.sin(angle) ** 2 / angle;
    sum += blur * turn * turn;
  }
  return sum;
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
const curves = new Map<string, Float64Array>();

/** Seconds of averaging that explain these ratios best, by least squares, with their 95 % interval. */
export function fitAveraging(ratios: readonly ScatterRatio[], averaging: Averaging): AveragingFit {
  const misfits = new Float64Array(fine + 1);
  for (const { span, ratio, error } of ratios) {
    const curve = curveOf(span, averaging);
    for (let k = 0; k <= fine; k++) misfits[k]! += ((ratio - curve[k]!) / error) ** 2;
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
function curveOf(span: number, averaging: Averaging): Float64Array {
  const key = `${averaging} ${span}`;
  const known = curves.get(key);
  if (known !== undefined) return known;
  const atKnots = knots.map((seconds) => wanderRatio(seconds, span, averaging));
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
