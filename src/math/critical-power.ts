import { type LinearFit, leastSquares } from './least-squares.ts';
import { studentReach } from './student.ts';

export interface CriticalPower {
  /** W */
  readonly cp: number;
  /** W′, J */
  readonly reserve: number;
  /** Half-widths of the 95 % intervals; null where there are no points to spare. */
  readonly cpReach: number | null;
  readonly reserveReach: number | null;
}

/**
 * Two-parameter critical power from all-out efforts: work = W′ + CP·t, by linear least squares.
 *
 * @param seconds duration of each effort, at least two different ones
 * @param watts mean power of each
 */
export function workTimeFit(seconds: Float64Array, watts: Float64Array): CriticalPower | null {
  const work = watts.map((power, i) => power * seconds[i]!);
  const fit = leastSquares([new Float64Array(seconds.length).fill(1), seconds], work);
  if (fit === null) return null;
  return {
    cp: fit.coefficients[1]!,
    reserve: fit.coefficients[0]!,
    cpReach: reachOf(fit, 1),
    reserveReach: reachOf(fit, 0),
  };
}

/** Half the 95 % interval of a coefficient; null where as many are fitted as there are points. */
function reachOf({ residuals, inverse }: LinearFit, k: number): number | null {
  const freedom = residuals.length - inverse.length;
  if (freedom < 1) return null;
  const variance = residuals.reduce((sum, r) => sum + r * r, 0) / freedom;
  return studentReach(freedom) * Math.sqrt(variance * inverse[k]![k]!);
}

/** CP, W′ and Pmax of the curve t = W′/(P - CP) - W′/(Pmax - CP) (Morton 1996, Ergonomics 39:611-619). */
export interface ThreeParameters extends CriticalPower {
  readonly pMax: number;
}

/**
 * Three-parameter fit by least squares on time. For a given CP the curve is a straight line in 1/(P - CP),
 * so that only CP is searched for (golden section between 0 and the lowest power).
 *
 * @returns null with fewer than four efforts, or where no such curve fits
 */
export function threeParameterFit(seconds: Float64Array, watts: Float64Array): ThreeParameters | null {
  if (seconds.length < 4) return null;
  const lowest = watts.reduce((a, b) => Math.min(a, b), Infinity);
  const lineAt = (cp: number) => {
    const x = watts.map((power) => 1 / (power - cp));
    return leastSquares([x, new Float64Array(x.length).fill(1)], seconds);
  };
  const left = (cp: number) => lineAt(cp)?.residuals.reduce((sum, r) => sum + r * r, 0) ?? Infinity;
  const cp = lowestPoint(left, 0, lowest * (1 - 1e-9));
  const line = lineAt(cp);
  if (line === null) return null;
  const [reserve, offset] = [line.coefficients[0]!, -line.coefficients[1]!];
  if (!(reserve > 0 && offset > 0)) return null;
  // Linear in all three about the solution: the columns are the derivatives of time by CP, W′ and the offset.
  const [byReserve, ones] = [watts.map((power) => 1 / (power - cp)), new Float64Array(watts.length).fill(1)];
  const about = leastSquares([byReserve.map((x) => reserve * x * x), byReserve, ones], line.residuals);
  if (about === null) return null;
  const pMax = cp + reserve / offset;
  return { cp, reserve, pMax, cpReach: reachOf(about, 0), reserveReach: reachOf(about, 1) };
}

/** Where a function is lowest between two ends: the best of an even grid, then golden section around it. */
function lowestPoint(value: (x: number) => number, from: number, to: number): number {
  const steps = 200;
  let best = 0;
  for (let k = 1; k <= steps; k++) {
    if (value(from + ((to - from) * k) / steps) < value(from + ((to - from) * best) / steps)) best = k;
  }
  let low = from + ((to - from) * Math.max(0, best - 1)) / steps;
  let high = from + ((to - from) * Math.min(steps, best + 1)) / steps;
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 80; i++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (value(a) < value(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

/**
 * The most that was drawn at any time from a reserve that power above CP empties and power below CP fills
 * again as fast (linear: the generous case), J. A missing second counts as rest.
 */
export function mostDrawn(power: Float64Array, cp: number, from = 0, to = power.length): number {
  let drawn = 0;
  let most = 0;
  for (let i = from; i < to; i++) {
    const watts = power[i]!;
    drawn = Math.max(0, drawn + (Number.isNaN(watts) ? 0 : watts) - cp);
    if (drawn > most) most = drawn;
  }
  return most;
}
