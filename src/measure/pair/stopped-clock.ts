import { addedSums, correlationOf, type LaggedSums, laggedSums } from '../../math/lagged.ts';
import { stretchesWhere } from '../../math/stretches.ts';
import { SecondState, type Series, type Stretch } from '../../types.ts';

/** A stretch of one recording that may have a lag of its own, if the other's clock stopped before it. */
export interface Leg {
  readonly stretch: Stretch;
  /** Seconds for which the other's clock has stood since the first leg, at least and at most. */
  readonly held: readonly [least: number, most: number];
}

interface StopOptions {
  readonly standingSeconds: number;
  readonly stopSeconds: number;
  readonly stretchSeconds: number;
}

/**
 * The stretches between which a recording shows that its rider stood still, or shows nothing: there the clock of
 * another recorder may have stopped, so that no one lag holds for all of them. None where nobody stood still.
 */
export function legsOf(series: Series, [start, end]: Stretch, options: StopOptions): Leg[] {
  const { power, cadence } = series.channels;
  const stands = (t: number) =>
    series.state[t] === SecondState.paused ||
    series.state[t] === SecondState.missing ||
    (power?.[t] === 0 && !((cadence?.[t] ?? 0) > 0));
  const stops = stretchesWhere(start, end, stands, options.standingSeconds);
  const legs: Leg[] = [];
  let from = start;
  let [least, most] = [0, 0];
  for (const [stop, go] of [...stops, [end, end] as const]) {
    if (stop - from >= options.stretchSeconds) legs.push({ stretch: [from, stop], held: [least, most] });
    from = go;
    least += Math.max(0, go - stop - options.stopSeconds);
    most += go - stop;
  }
  return legs.length > 1 ? legs : [];
}

/** Logarithm of how many sets of lags the legs may have, once the first has its own. */
export function chancesAlong(legs: readonly Leg[]): number {
  let sum = 0;
  for (let k = 0; k + 1 < legs.length; k++) {
    const [least, most] = heldBetween(legs, k);
    sum += Math.log(1 + most - least);
  }
  return sum;
}

/** Least and most seconds for which the other's clock stood between one leg and the next. */
function heldBetween(legs: readonly Leg[], k: number): [least: number, most: number] {
  const [before, after] = [legs[k]!.held, legs[k + 1]!.held];
  return [after[0] - before[0], after[1] - before[1]];
}

/**
 * What two traces make together, each leg at the lag that suits it best: the leg `first` within `reach` seconds of
 * none, every other as far from its neighbour as the other's clock may have stood between them.
 */
export function sumsAlong(
  own: Float64Array,
  other: Float64Array,
  legs: readonly Leg[],
  first: number,
  reach: number,
): LaggedSums {
  const best = (k: number, low: number, high: number) => bestOf(own, other, legs[k]!.stretch, low, high);
  const start = best(first, -reach, reach);
  const all = [start.sums];
  for (let k = first, { lag } = start; k + 1 < legs.length; k++) {
    const [least, most] = heldBetween(legs, k);
    const found = best(k + 1, lag + least, lag + most);
    all.push(found.sums);
    lag = found.lag;
  }
  for (let k = first, { lag } = start; k > 0; k--) {
    const [least, most] = heldBetween(legs, k - 1);
    const found = best(k - 1, lag - most, lag - least);
    all.push(found.sums);
    lag = found.lag;
  }
  return addedSums(all);
}

function bestOf(own: Float64Array, other: Float64Array, [from, to]: Stretch, low: number, high: number) {
  let best = { lag: low, sums: laggedSums(own, other, low, from, to) };
  for (let lag = low + 1; lag <= high; lag++) {
    const sums = laggedSums(own, other, lag, from, to);
    if (correlationOf(sums) > correlationOf(best.sums)) best = { lag, sums };
  }
  return best;
}
