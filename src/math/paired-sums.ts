import { mean } from './mean.ts';

/** Sums of two columns around a fixed centre; taking a point out is a subtraction. */
export interface PairedSums {
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

export function pairedSums(x: Float64Array, y: Float64Array): PairedSums {
  const centre = [mean(x), mean(y)] as const;
  let all: PairedSums = { n: 0, centre, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  for (let i = 0; i < x.length; i++) all = withPoint(all, x[i]!, y[i]!, 1);
  return all;
}

/** The sums with one point more (1), or one less (-1). */
export function withPoint(to: PairedSums, x: number, y: number, sign: 1 | -1): PairedSums {
  const dx = x - to.centre[0];
  const dy = y - to.centre[1];
  return {
    n: to.n + sign,
    centre: to.centre,
    x: to.x + sign * dx,
    y: to.y + sign * dy,
    xx: to.xx + sign * dx * dx,
    yy: to.yy + sign * dy * dy,
    xy: to.xy + sign * dx * dy,
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
