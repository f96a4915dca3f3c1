import { crankTorque } from '../math/torque.ts';
import { SecondState, type Series } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';

/**
 * The highest crank torque that was held for some seconds at a steady cadence, in percent of the highest
 * that people reach at that cadence: a line that falls with cadence, raised with body mass.
 */
export const torqueShare = defineMeasure({
  id: 'torque-share',
  of: 'recording',
  unit: '%',
  options: {
    standstill: number('torque that people reach at a standstill, N·m'),
    slope: number('fall of it with cadence, N·m per rpm'),
    massKg: number('body mass above which it grows in proportion, kg'),
    holdSeconds: number('seconds it must be held'),
    leastCadence: number('cadence below which it is not judged, rpm'),
    steadyCadence: number('range of cadence within those seconds that counts as steady, rpm'),
    leastSeconds: number('seconds with power and cadence below which nothing is said'),
  },
  compute(all, series, options) {
    const { power, cadence } = series.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (cadence === undefined) return notApplicable('no-channel', { channel: 'cadence' });
    const heavier = Math.max(1, (all.rider.massKg ?? 0) / options.massKg);
    const limitAt = (rpm: number) => heavier * (options.standstill - options.slope * rpm);
    const hold = options.holdSeconds;
    const shares = sharesOf(power, cadence, limitAt);
    let judged = 0;
    let most = { share: 0, rpm: options.leastCadence, at: 0 };
    for (let at = 0; at + hold <= series.length; at++) {
      if (!isSteady(series, cadence, at, options)) continue;
      const share = lowest(shares, at, at + hold);
      if (Number.isNaN(share)) continue;
      judged++;
      if (share > most.share) most = { share, rpm: meanOf(cadence, at, at + hold), at };
    }
    if (judged < options.leastSeconds) return notApplicable('no-power-flow');
    const possible = limitAt(most.rpm);
    return exact(100 * most.share, judged, {
      stretches: [[most.at, most.at + hold]],
      details: {
        torque: { value: most.share * possible, unit: 'N·m' },
        cadence: { value: most.rpm, unit: 'rpm' },
        possible: { value: possible, unit: 'N·m' },
        seconds: { value: hold, unit: 's' },
      },
    });
  },
});

interface Hold {
  readonly holdSeconds: number;
  readonly leastCadence: number;
  readonly steadyCadence: number;
}

/** Recorded throughout, turning fast enough, and evenly: a cadence that lags behind power makes false torque. */
function isSteady({ state }: Series, cadence: Float64Array, at: number, options: Hold): boolean {
  let lowest = Infinity;
  let highest = -Infinity;
  for (let i = at; i < at + options.holdSeconds; i++) {
    if (state[i] !== SecondState.recorded || !(cadence[i]! >= options.leastCadence)) return false;
    lowest = Math.min(lowest, cadence[i]!);
    highest = Math.max(highest, cadence[i]!);
  }
  return highest - lowest <= options.steadyCadence;
}

/** The share of the possible torque in every second; NaN where power is missing. */
function sharesOf(
  power: Float64Array,
  cadence: Float64Array,
  limitAt: (rpm: number) => number,
): Float64Array {
  const shares = new Float64Array(power.length);
  for (let i = 0; i < shares.length; i++) {
    shares[i] = crankTorque(power[i]!, cadence[i]!) / limitAt(cadence[i]!);
  }
  return shares;
}

/** The lowest of some values; NaN where one of them is missing. */
function lowest(values: Float64Array, from: number, to: number): number {
  let least = Infinity;
  for (let i = from; i < to; i++) least = Math.min(least, values[i]!);
  return least;
}

const meanOf = (column: Float64Array, from: number, to: number) =>
  column.subarray(from, to).reduce((a, b) => a + b, 0) / (to - from);
