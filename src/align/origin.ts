import { mean } from '../math/mean.ts';
import { nthSmallest } from '../math/nth-smallest.ts';
import { shortFilter } from '../math/short-filter.ts';
import type { Origin, OriginEvidence } from '../types.ts';
import { settings } from './settings.ts';

/**
 * How the second follows from the primary: its work over the primary's, and what is left of its detail after
 * the best filter over five seconds. Seconds count that are valid on both and their neighbours, with power on
 * either. The gain is a ratio of work, for the weights of a filter lose some of theirs to whatever the filter
 * cannot follow; seconds with power on both count for it. Null when there are too few.
 */
export function originEvidence(own: Float64Array, other: Float64Array): OriginEvidence | null {
  const fit = shortFilter(other, own, 0, reach, 0, own.length, (t) => own[t]! > 0 || other[t]! > 0);
  if (fit === null || fit.count < settings.leastOverlapSeconds) return null;
  const times = new Int32Array(fit.count);
  const y = new Float64Array(fit.count);
  const residuals = new Float64Array(fit.count);
  const moves = new Float64Array(fit.count);
  let count = 0;
  let ownWork = 0;
  let otherWork = 0;
  for (let t = reach; t + reach < own.length && count < fit.count; t++) {
    const at = own[t]!;
    const told = other[t]!;
    let residual = told - fit.intercept;
    for (let tap = -reach; tap <= reach; tap++) residual -= fit.weights[tap + reach]! * own[t - tap]!;
    if (Number.isNaN(residual) || !(at > 0 || told > 0)) continue;
    times[count] = t;
    y[count] = told;
    residuals[count] = residual;
    moves[count] = Math.abs(at - own[t - 1]!) + Math.abs(own[t + 1]! - at);
    count++;
    if (!(at > 0 && told > 0)) continue;
    ownWork += at;
    otherWork += told;
  }
  const misfit = detail(residuals, times);
  return {
    left: misfit / detail(y, times),
    noise: Math.sqrt(misfit / 2) / mean(y),
    gain: otherWork / ownWork,
    dynamics: dynamics(residuals, moves),
  };
}

/** Averaging over two seconds, moved by a fraction of one, reaches this far (s) to either side. */
const reach = 2;

/**
 * Whether the second is a measurement of its own. One sensor seen by two recorders differs by radio timing
 * and rounding alone: little of the detail is left over, and the work is the same to a tenth of a percent.
 * Two meters leave much more. What leaves little, of its detail or of its power, with other work, was computed
 * from the first: of an even ride there is so little detail that a hundredth of its power is much of it.
 */
export function originOf(evidence: OriginEvidence | null): Origin {
  if (evidence === null) return 'unknown';
  const { left, noise, gain } = evidence;
  if (Math.abs(gain - 1) <= settings.sensorGain)
    return left <= settings.sensorResidual ? 'same sensor' : 'independent';
  const most = noise <= settings.derivedNoise ? settings.derivedResidualOfNoise : settings.derivedResidual;
  return left <= most ? 'derived' : 'independent';
}

/**
 * Mean square of second-to-second changes, only between neighbours in time: the detail of a trace. The tenth that
 * changes most is left out: around dropouts and seconds that a recorder left out, no trace follows another.
 */
function detail(values: Float64Array, times: Int32Array): number {
  const squares = new Float64Array(values.length);
  let count = 0;
  for (let i = 1; i < values.length; i++) {
    if (times[i]! - times[i - 1]! === 1) squares[count++] = (values[i]! - values[i - 1]!) ** 2;
  }
  const kept = Math.ceil(0.9 * count);
  nthSmallest(squares.subarray(0, count), kept - 1);
  return mean(squares.subarray(0, kept));
}

/** Mean square misfit in the third of the seconds where power moves most, over that where it moves least. */
function dynamics(residuals: Float64Array, moves: Float64Array): number {
  const sizes = moves.slice();
  const slow = nthSmallest(sizes, Math.floor(sizes.length / 3));
  const fast = nthSmallest(sizes, Math.floor((2 * sizes.length) / 3));
  let still = 0;
  let stillCount = 0;
  let moving = 0;
  let movingCount = 0;
  for (let i = 0; i < residuals.length; i++) {
    const square = residuals[i]! ** 2;
    if (moves[i]! <= slow) {
      still += square;
      stillCount++;
    }
    if (moves[i]! >= fast) {
      moving += square;
      movingCount++;
    }
  }
  return still > 0 ? moving / movingCount / (still / stillCount) : Number.POSITIVE_INFINITY;
}
