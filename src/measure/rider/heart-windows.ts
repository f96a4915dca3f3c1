import type { Stretch } from '../../types.ts';

export interface HeartWindow {
  readonly stretch: Stretch;
  /** Correlation of heart rate with power as the heart would follow it, slow drift taken out. */
  readonly r: number;
}

export interface WindowLimits {
  readonly windowSeconds: number;
  /** Share of a window's seconds that must be known. */
  readonly leastKnown: number;
  /** SD of followed power over its mean below which a heart has nothing to answer to. */
  readonly leastVariation: number;
}

/** One value a second each. */
export interface HeartColumns {
  /** Power as a quick heart would follow it, W: whether there is anything to answer to. */
  readonly felt: Float64Array;
  /** Power as this heart is held to follow it, W. */
  readonly followed: Float64Array;
  /** bpm, NaN wherever it is not the heart. */
  readonly heartRate: Float64Array;
}

/**
 * Windows in which power varied enough for a heart to show it, each with how well heart rate followed.
 *
 * @param lag seconds that heart rate arrives late
 */
export function heartWindows(
  { felt, followed, heartRate }: HeartColumns,
  [from, to]: Stretch,
  lag: number,
  limits: WindowLimits,
): HeartWindow[] {
  const windows: HeartWindow[] = [];
  for (let start = from; start + limits.windowSeconds <= to; start += limits.windowSeconds) {
    const end = start + limits.windowSeconds;
    const { count, power, quick, squaresQuick, squares, squaresHeart, products } = moments(start, end);
    if (count < limits.leastKnown * limits.windowSeconds || !(power > 0)) continue;
    if (!(Math.sqrt(squaresQuick / count) >= limits.leastVariation * quick)) continue;
    const size = Math.sqrt(squares * squaresHeart);
    windows.push({ stretch: [start, end], r: size > 0 ? products / size : 0 });
  }
  return windows;

  /** Sums of squares and products around the straight trend over time, in one pass; means of power. */
  function moments(start: number, end: number) {
    let count = 0;
    let [t, q, x, y] = [0, 0, 0, 0];
    let [tt, qq, xx, yy] = [0, 0, 0, 0];
    let [qt, xt, yt, xy] = [0, 0, 0, 0];
    for (let i = Math.max(start, lag); i < end; i++) {
      const heart = heartRate[i]!;
      const push = followed[i - lag]!;
      if (Number.isNaN(heart + push)) continue;
      const time = i - start;
      const now = felt[i]!;
      count++;
      t += time;
      tt += time * time;
      q += now;
      qq += now * now;
      qt += now * time;
      x += push;
      xx += push * push;
      xt += push * time;
      y += heart;
      yy += heart * heart;
      yt += heart * time;
      xy += push * heart;
    }
    const around = (sum: number, a: number, b: number) => sum - (a * b) / count;
    const times = around(tt, t, t);
    const [tq, tx, ty] = [around(qt, q, t), around(xt, x, t), around(yt, y, t)];
    return {
      count,
      power: x / count,
      quick: q / count,
      squaresQuick: Math.max(0, around(qq, q, q) - (tq * tq) / times),
      squares: Math.max(0, around(xx, x, x) - (tx * tx) / times),
      squaresHeart: Math.max(0, around(yy, y, y) - (ty * ty) / times),
      products: around(xy, x, y) - (tx * ty) / times,
    };
  }
}
