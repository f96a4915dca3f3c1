import { leastSquares } from '../math/least-squares.ts';
import type { Origin, OriginEvidence } from '../types.ts';
import { settings } from './settings.ts';

/**
 * How the second follows from the primary: the best gain, offset and three-second filter, and what is
 * left after it. Seconds count that are valid on both and their neighbours, with power on either. Null
 * when there are too few.
 */
export function originEvidence(own: Float64Array, other: Float64Array): OriginEvidence | null {
  const used: number[] = [];
  for (let t = 1; t + 1 < own.length; t++) {
    const valid = own[t - 1]! + own[t]! + own[t + 1]! + other[t]!;
    if (!Number.isNaN(valid) && (own[t]! > 0 || other[t]! > 0)) used.push(t);
  }
  if (used.length < settings.leastOverlapSeconds) return null;
  const y = Float64Array.from(used, (t) => other[t]!);
  const ones = new Float64Array(used.length).fill(1);
  const taps = [-1, 0, 1].map((lag) => Float64Array.from(used, (t) => own[t - lag]!));
  const fit = leastSquares([ones, ...taps], y);
  if (fit === null) return null;
  const moves = Float64Array.from(
    used,
    (t) => Math.abs(own[t]! - own[t - 1]!) + Math.abs(own[t + 1]! - own[t]!),
  );
  return {
    left: detail(fit.residuals, used) / detail(y, used),
    gain: fit.coefficients[1]! + fit.coefficients[2]! + fit.coefficients[3]!,
    dynamics: dynamics(fit.residuals, moves),
  };
}

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
function detail(values: Float64Array, times: readonly number[]): number {
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
    residuals.forEach((residual, i) => {
      if (!counts(moves[i]!)) return;
      sum += residual ** 2;
      count++;
    });
    return sum / count;
  };
  const still = meanSquare((move) => move <= slow);
  return still > 0 ? meanSquare((move) => move >= fast) / still : Number.POSITIVE_INFINITY;
}
