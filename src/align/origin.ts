import { leastSquares } from '../math/least-squares.ts';
import type { Origin } from '../types.ts';
import { settings } from './settings.ts';

/**
 * Whether the second is a measurement of its own. One sensor seen by two recorders differs by radio
 * timing and rounding alone: after the best gain, offset and three-second filter almost nothing of the
 * detail is left over, and the gain is 1. Two meters on one ride leave much more. What leaves as little
 * as one sensor but with another gain was computed from the first.
 */
export function originOf(own: Float64Array, other: Float64Array): Origin {
  const used: number[] = [];
  for (let t = 1; t + 1 < own.length; t++) {
    const valid = own[t - 1]! + own[t]! + own[t + 1]! + other[t]!;
    if (!Number.isNaN(valid) && (own[t]! > 0 || other[t]! > 0)) used.push(t);
  }
  if (used.length < settings.leastOverlapSeconds) return 'unknown';
  const y = Float64Array.from(used, (t) => other[t]!);
  const ones = new Float64Array(used.length).fill(1);
  const taps = [-1, 0, 1].map((lag) => Float64Array.from(used, (t) => own[t - lag]!));
  const fit = leastSquares([ones, ...taps], y);
  if (fit === null) return 'unknown';
  const left = detail(fit.residuals, used) / detail(y, used);
  if (left > settings.sensorResidual) return 'independent';
  const gain = fit.coefficients[1]! + fit.coefficients[2]! + fit.coefficients[3]!;
  return Math.abs(gain - 1) <= settings.sensorGain ? 'same sensor' : 'derived';
}

/** Squares of second-to-second changes, only between neighbours in time: the detail of a trace. */
function detail(values: Float64Array, times: readonly number[]): number {
  let squares = 0;
  for (let i = 1; i < values.length; i++) {
    if (times[i]! - times[i - 1]! === 1) squares += (values[i]! - values[i - 1]!) ** 2;
  }
  return squares;
}
