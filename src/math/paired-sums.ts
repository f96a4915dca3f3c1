import { mean } from './mean.ts';

/** Weighted sums of two columns around a fixed centre; taking a point out is a subtraction. */
export interface PairedSums {
  /** Sum of the weights: the number of points where each counts as one. */
  readonly n: number;
  readonly centre: readonly [x: number, y: number];
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/** What the sums are for: two means, and mean squares and product of the distances from them (over n). */
export interface PairedMoments {
  readonly meanX: number;
  readonly meanY: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

export function pairedSums(x: Float64Array, y: Float64Array, weights?: Float64Array): PairedSums {
  const centre = [mean(x), mean(y)] as const;
  let all: PairedSums = { n: 0, centre, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  for (let i = 0; i < x.length; i++) all = withPoint(all, x[i]!, y[i]!, weights?.[i] ?? 1);
  return all;
}

/** The sums with one point more, or one less where its weight is negative. */
export function withPoint(to: PairedSums, x: number, y: number, weight: number): PairedSums {
  const dx = x - to.centre[0];
  const dy = y - to.centre[1];
  return {
    n: to.n + weight,
    centre: to.centre,
    x: to.x + weight * dx,
    y: to.y + weight * dy,
    xx: to.xx + weight * dx * dx,
    yy: to.yy + weight * dy * dy,
    xy: to.xy + weight * dx * dy,
  };
}

export function momentsOf({ n, centre, x, y, xx, yy, xy }: PairedSums): PairedMoments {
  const [atX, atY] = [x / n, y / n];
  return {
    meanX: centre[0] + atX,
    meanY: centre[1] + atY,
    xx: xx / n - atX * atX,
    yy: yy / n - atY * atY,
    xy: xy / n - atX * atY,
  };
}
