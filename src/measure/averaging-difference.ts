import type { Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { stepRatio } from './pair/detail.ts';
import { gate } from './pair/gate.ts';

/**
 * How many more seconds one meter averages than the other: the length of the moving mean that makes the
 * crisper trace most like the smoother one, at the lag that suits it best; and that lag, which holds the
 * clock, the link and the averaging together and cannot be split from power alone.
 */
export const averagingDifference = defineMeasure({
  id: 'averaging-difference',
  of: 'pair',
  unit: 's',
  options: {
    longestSeconds: number('longest moving mean tried, s'),
    lagSeconds: number('lags tried either side, s'),
    leastSeconds: number('fewest seconds compared'),
  },
  compute(all, pair, { longestSeconds, lagSeconds, leastSeconds }) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const own = all.primary.channels.power!;
    const other = pair.series.channels.power!;
    if (all.window[1] - all.window[0] < leastSeconds) {
      return notApplicable('too-short', { seconds: all.window[1] - all.window[0], needed: leastSeconds });
    }
    const ratio = stepRatio(own, other, all.window);
    const ownSmoother = ratio < 1;
    const [crisp, smooth] = ownSmoother ? [other, own] : [own, other];
    // A moving mean of n lowers the mean square step by about n²: where it is hardly lower, none is tried.
    const most = Math.max(ratio, 1 / ratio) < sameRoughness ? 1 : longestSeconds;
    let best = { seconds: 1, lag: 0, correlation: -1 };
    for (let seconds = 1; seconds <= most; seconds++) {
      const averaged = trailingMean(crisp, seconds);
      for (let lag = -lagSeconds; lag <= lagSeconds; lag++) {
        const correlation = stepCorrelation(smooth, averaged, lag, all.window);
        if (correlation > best.correlation) best = { seconds, lag, correlation };
      }
    }
    return exact(best.seconds, all.window[1] - all.window[0], {
      stretches: [all.window],
      details: {
        smoother: ownSmoother ? 'primary' : pair.subject,
        lag: { value: best.lag, unit: 's' },
        correlation: { value: best.correlation, unit: 'r' },
      },
    });
  },
});

/** A moving mean of two seconds lowers the mean square step of a crisp trace by more than this factor. */
const sameRoughness = 2;

/** Mean of each second and those before it; NaN where one of them is missing. */
function trailingMean(column: Float64Array, seconds: number): Float64Array {
  if (seconds === 1) return column;
  let sum = 0;
  let gaps = 0;
  return column.map((value, t) => {
    sum += Number.isNaN(value) ? 0 : value;
    gaps += Number.isNaN(value) ? 1 : 0;
    if (t >= seconds) {
      const left = column[t - seconds]!;
      sum -= Number.isNaN(left) ? 0 : left;
      gaps -= Number.isNaN(left) ? 1 : 0;
    }
    return t + 1 < seconds || gaps > 0 ? Number.NaN : sum / seconds;
  });
}

/** Correlation of second-to-second steps: where averaging shows. */
function stepCorrelation(a: Float64Array, b: Float64Array, lag: number, [from, to]: Stretch): number {
  let products = 0;
  let squares = 0;
  let otherSquares = 0;
  for (let t = Math.max(from + 1, lag + 1); t < Math.min(to, b.length + lag); t++) {
    const x = a[t]! - a[t - 1]!;
    const y = b[t - lag]! - b[t - lag - 1]!;
    if (Number.isNaN(x) || Number.isNaN(y)) continue;
    products += x * y;
    squares += x * x;
    otherSquares += y * y;
  }
  return squares > 0 && otherSquares > 0 ? products / Math.sqrt(squares * otherSquares) : -1;
}
