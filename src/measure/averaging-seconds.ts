import { autocovariance } from '../math/autoregression.ts';
import { type Averaging, averagingFor } from '../math/averaging.ts';
import { jackknifeReach } from '../math/jackknife.ts';
import { inSteadyWindow } from '../math/steady-windows.ts';
import type { AveragingChart } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { type Records, recordsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';
import { deviation } from './recording/wander.ts';

/**
 * Seconds over which power was averaged. Without averaging, means of power over a few seconds scatter as
 * widely as means over twice as long; averaging takes the short scatter away, and the shortfall tells its
 * length. Of several spans the least is believed: surges and intervals widen the longer means, and never the
 * shorter ones alone. A plain mean over k seconds shows itself besides: it undoes each change k seconds
 * later, so that second differences correlate by about -0.5 at that lag. The interval leaves out tenths of
 * the ride one at a time.
 */
export const averagingSeconds = defineMeasure({
  id: 'averaging-seconds',
  of: 'recording',
  options: {
    spans: numbers('spans of the shorter means, s'),
    longestSeconds: number('longest plain mean looked for, s'),
    dip: number('correlation of second differences from which a plain mean is recognised'),
    dipAgreement: number('factor by which the scatter may tell other seconds than the dip'),
    scatterTells: number('seconds beyond which the scatter cannot tell lengths of averaging apart'),
    plainFrom: number('averaging from which a plain mean is looked for, s'),
    clip: number('changes are clipped at this many of their robust standard deviations'),
    minimumWatts: number('power from which seconds count, W'),
    steadySeconds: number('length of a window that may stand still, s'),
    steadyWatts: number('standard deviation up to which it does and is left out, W'),
    minimumSeconds: number('seconds that follow one another below which nothing is said'),
  },
  compute(all, recording, options) {
    const records = recordsOf(recording);
    if (records === null) return notApplicable('no-channel', { channel: 'power' });
    const power = usable(records, options);
    const shortfalls = shortfallsOf(power, options.spans);
    const count = shortfalls[0]?.pairs ?? 0;
    if (count < options.minimumSeconds) {
      const pedalled = records.power.filter((watts) => watts >= options.minimumWatts).length;
      return pedalled >= 2 * options.minimumSeconds
        ? notApplicable('irregular-recorder', { share: 1 - count / pedalled })
        : notApplicable('too-short', { seconds: count, needed: options.minimumSeconds });
    }
    const least = (averaging: Averaging, by: number) =>
      Math.min(
        ...shortfalls.map(({ span, ratio, error }) => averagingFor(ratio + by * error, span, averaging)),
      );
    const ends = (averaging: Averaging) => [least(averaging, 1), least(averaging, -1)] as const;
    const correlation = least('plain', 0) < options.plainFrom ? null : bendCorrelation(power, options);
    const dip = correlation === null ? null : lagOfDip(correlation, options.dip);
    const averaging: Averaging = correlation === null || dip !== null ? 'plain' : 'weighted';
    const [low, high] = ends(averaging);
    // One plain mean dips at its own length; several in a row dip earlier, and the scatter tells their sum.
    const told = Math.min(low, options.scatterTells);
    const exactly = dip !== null && told <= dip * options.dipAgreement && high >= dip / options.dipAgreement;
    const seconds = exactly ? dip : least(averaging, 0);
    return measured(seconds, 's', exactly ? [dip - 0.5, dip + 0.5] : [low, high], count, {
      details: { averaging: exactly ? 'plain mean' : 'weighted mean' },
      charts:
        correlation === null
          ? []
          : [chart(`averaging:${subjectOf(all, recording)}`, records, power, correlation, seconds)],
    });
  },
});

interface Options {
  readonly longestSeconds: number;
  readonly clip: number;
  readonly minimumWatts: number;
  readonly steadySeconds: number;
  readonly steadyWatts: number;
}

/**
 * Power on a grid of seconds: NaN where there is no record, no pedalling, or nothing moves. Two records of
 * one run that are a second apart stay neighbours.
 */
function usable({ at, power }: Records, options: Options): Float64Array {
  const steady = inSteadyWindow(power, options.steadySeconds, options.steadyWatts);
  const length = at.length === 0 ? 0 : at[at.length - 1]! + 1;
  const seconds = new Float64Array(length).fill(Number.NaN);
  for (let i = 0; i < power.length; i++) {
    if (power[i]! >= options.minimumWatts && steady[i] === 0) seconds[at[i]!] = power[i]!;
  }
  return seconds;
}

interface Shortfall {
  readonly span: number;
  /** Scatter of means over the span, over that of means twice as long. */
  readonly ratio: number;
  /** Half of its 95 % interval. */
  readonly error: number;
  readonly pairs: number;
}

/** The interval leaves out one block of the ride at a time. */
function shortfallsOf(power: Float64Array, spans: readonly number[]): Shortfall[] {
  const deviations = new Map(
    spans.flatMap((span) => [span, 2 * span]).map((span) => [span, deviation(power, span)]),
  );
  return spans.map((span) => {
    const short = deviations.get(span)!;
    const long = deviations.get(2 * span)!;
    const ratioOf = (a: number, b: number) => (b === 0 ? 1 : a / b);
    const without = short.without.map((one, block) => ratioOf(one, long.without[block]!));
    return {
      span,
      ratio: ratioOf(short.whole, long.whole),
      error: jackknifeReach(without),
      pairs: short.pairs,
    };
  });
}

/** The lag at which second differences are undone most, if by enough. */
function lagOfDip(correlation: Float64Array, dip: number): number | null {
  let lag = 2;
  for (let k = 3; k < correlation.length; k++) if (correlation[k]! < correlation[lag]!) lag = k;
  return correlation[lag]! <= dip ? lag : null;
}

/** Correlation of the second differences of power, changes clipped, at lags 0 … `longestSeconds`. */
function bendCorrelation(power: Float64Array, { clip, longestSeconds }: Options): Float64Array {
  const changes = power.map((watts, i) => watts - (power[i - 1] ?? Number.NaN));
  const sizes = changes
    .filter((change) => !Number.isNaN(change))
    .map(Math.abs)
    .sort();
  const most = clip * Math.max(1, 1.4826 * (sizes[sizes.length >> 1] ?? 0));
  const clipped = changes.map((change) => Math.max(-most, Math.min(most, change)));
  const bends = clipped.map((change, i) => change - (clipped[i - 1] ?? Number.NaN));
  const covariance = autocovariance(bends, longestSeconds);
  // Rounding to whole watts adds 1/2 to the variance of second differences, and nothing three seconds on.
  const variance = Math.max(covariance[0]! / 3, covariance[0]! - 0.5);
  return covariance.map((value) => (variance > 0 ? value / variance : 0));
}

/** A minute from the middle of the ride, from where power flows, and the correlations. */
function chart(
  id: string,
  { at, power }: Records,
  used: Float64Array,
  correlation: Float64Array,
  seconds: number,
): AveragingChart {
  let from = Math.floor(power.length / 2);
  while (from < power.length - 60 && Number.isNaN(used[at[from]!]!)) from++;
  return {
    kind: 'averaging',
    id,
    correlation: Array.from(correlation.subarray(1), (r) => Math.round(r * 1000) / 1000),
    seconds,
    from: at[from] ?? 0,
    power: readings(power, from, from + 60),
  };
}
