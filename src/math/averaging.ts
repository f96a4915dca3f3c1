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
  for (let f = 1e-4; f < 4; f *= 1.03) {
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

const grid = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 25, 30, 37, 45] as const;
const curves = new Map<string, readonly number[]>();

/** Seconds of averaging at which `wanderRatio` comes down to this ratio; 1 where it is higher, at most 45. */
export function averagingFor(ratio: number, span: number, averaging: Averaging): number {
  const key = `${averaging} ${span}`;
  let curve = curves.get(key);
  if (curve === undefined) {
    curve = grid.map((seconds) => wanderRatio(seconds, span, averaging));
    curves.set(key, curve);
  }
  for (let k = 0; k < grid.length; k++) {
    if (curve[k]! > ratio) continue;
    if (k === 0) return 1;
    const part = (curve[k - 1]! - ratio) / (curve[k - 1]! - curve[k]!);
    return grid[k - 1]! * (grid[k]! / grid[k - 1]!) ** part;
  }
  return grid[grid.length - 1]!;
}
