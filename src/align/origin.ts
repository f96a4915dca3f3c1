import { shortFilter } from '../math/short-filter.ts';
import type { Origin, OriginEvidence } from '../types.ts';
import { settings } from './settings.ts';

/**
 * How the second follows from the primary: the best gain, offset and three-second filter, and what is
 * left after it. Seconds count that are valid on both and their neighbours, with power on either. Null
 * when there are too few.
 */
export function originEvidence(own: Float64Array, other: Float64Array): OriginEvidence | null {
  const fit = shortFilter(other, own, 0, taps, 0, own.length, (t) => own[t]! > 0 || other[t]! > 0);
  if (fit === null || fit.count < settings.leastOverlapSeconds) return null;
  const times = new Int32Array(fit.count);
  const y = new Float64Array(fit.count);
  const residuals = new Float64Array(fit.count);
  const moves = new Float64Array(fit.count);
  const [ahead, now, behind] = fit.weights as unknown as [number, number, number];
  let count = 0;
  for (let t = 1; t + 1 < own.length && count < fit.count; t++) {
    const [before, at, after] = [own[t - 1]!, own[t]!, own[t + 1]!];
    const residual = other[t]! - fit.intercept - ahead * after - now * at - behind * before;
    if (Number.isNaN(residual) || !(at > 0 || other[t]! > 0)) continue;
    times[count] = t;
    y[count] = other[t]!;
    residuals[count] = residual;
    moves[count] = Math.abs(at - before) + Math.abs(after - at);
    count++;
  }
  return {
    left: detail(residuals, times) / detail(y, times),
    gain: ahead + now + behind,
    dynamics: dynamics(residuals, moves),
  };
}

/** The second before, the same and the one after. */
const taps = [-1, 0, 1];

/**
 * Whether the second is a measurement of its own. One sensor seen by two recorders differs by radio
 * timing and rounding alone: little of the detail is left over, and the gain is 1. Two meters leave much
 * more, most of it where power moves fast. What leaves little, with another gain and the same misfit
 * whether power moves or not, was computed from the first.
 */
export function originOf(evidence: OriginEvidence | null): Origin {
  if (evidence === null) return 'unknown';
  const { left, gain, dynamics: moving } = evidence;
  const sameGain = Math.abs(gain - 1) <= settings.sensorGain;
  if (sameGain && left <= settings.sensorResidual) return 'same sensor';
  if (!sameGain && left <= settings.derivedResidual && moving <= settings.derivedDynamics) return 'derived';
  return 'independent';
}

/** Sum of squared second-to-second changes, only between neighbours in time: the detail of a trace. */
function detail(values: Float64Array, times: Int32Array): number {
  let squares = 0;
  for (let i = 1; i < values.length; i++) {
    if (times[i]! - times[i - 1]! === 1) squares += (values[i]! - values[i - 1]!) ** 2;
  }
  return squares;
}

/** Mean square misfit in the third of the seconds where power moves most, over that where it moves least. */
function dynamics(residuals: Float64Array, moves: Float64Array): number {
  const sorted = moves.slice().sort();
  const slow = sorted[Math.floor(sorted.length / 3)]!;
  const fast = sorted[Math.floor((2 * sorted.length) / 3)]!;
  const meanSquare = (counts: (move: number) => boolean) => {
    let sum = 0;
    let count = 0;
    for (let i = 0; i < residuals.length; i++) {
      if (!counts(moves[i]!)) continue;
      sum += residuals[i]! ** 2;
      count++;
    }
    return sum / count;
  };
  const still = meanSquare((move) => move <= slow);
  return still > 0 ? meanSquare((move) => move >= fast) / still : Number.POSITIVE_INFINITY;
}
