import { autocovariance } from '../math/autoregression.ts';
import { fitAveraging, type ScatterRatio } from '../math/averaging.ts';
import { jackknifeError } from '../math/jackknife.ts';
import { robustSpread } from '../math/robust-spread.ts';
import { inSteadyWindow } from '../math/steady-windows.ts';
import type { AveragingChart, Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { type Records, recordsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';
import { deviation } from './recording/wander.ts';

/**
 * Seconds over which power was averaged. Without averaging, means of power over a few seconds scatter as
 * widely as means over twice as long; averaging takes the short scatter away, and the shortfall tells its
 * length. Steps of the ride are left out. A plain mean over k seconds shows itself besides: it undoes each change k seconds
 * later, so that second differences correlate by about -0.5 at that lag. The interval leaves out tenths of
 * the ride one at a time.
 */
export const averagingSeconds = defineMeasure({
  id: 'averaging-seconds',
  of: 'recording',
  unit: 's',
  options: {
    spans: numbers('spans of the shorter means, each twice the one before, s'),
    stepFactor: number(
      'a difference this many times as wide as the scatter over half its span is a step of the ride',
    ),
    exponent: number('how the spectrum of power falls before any averaging, 1/f to this power'),
    exponentSpread: number('standard deviation of that exponent among rides'),
    modelError: number(
      'scatter of the ratio of two spans among crisp recordings, beside sampling and exponent',
    ),
    halvesFrom: number('averaging that the whole must allow for its halves to be looked at, s'),
    halfFactor: number('how many times as much averaging one half must show to stand for the ride'),
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
    const whole = estimate(power, options);
    if (whole === null) {
      const pedalled = records.power.filter((watts) => watts >= options.minimumWatts).length;
      const next = (watts: number, i: number) => !Number.isNaN(watts + (power[i - 1] ?? Number.NaN));
      const following = power.reduce((sum, watts, i) => (next(watts, i) ? sum + 1 : sum), 0);
      return pedalled >= 2 * options.minimumSeconds
        ? notApplicable('irregular-recorder', { share: following / pedalled })
        : notApplicable('too-short', { seconds: following, needed: options.minimumSeconds });
    }
    const { stretch, found } = mostAveraged(power, whole, options);
    return measured(found.seconds, [found.low, found.high], found.count, {
      stretches: found.correlation === null ? [] : [stretch],
      details: {
        averaging: found.averaging,
        part: stretch[1] - stretch[0] === power.length ? 'throughout' : 'in one half of the ride',
      },
      charts:
        found.correlation === null
          ? []
          : [chart(`averaging:${subjectOf(all, recording)}`, power, stretch, found, found.correlation)],
    });
  },
});

const plainMean = 'plain mean';
const weightedMean = 'weighted mean';

interface Estimate {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
  /** The most averaging that the scatter of the whole allows, whatever its dip says, s. */
  readonly room: number;
  readonly averaging: typeof plainMean | typeof weightedMean;
  readonly scatter: AveragingChart['scatter'];
  /** Of second differences; null where there is hardly any averaging. */
  readonly correlation: Float64Array | null;
}

/**
 * Smoothing may be switched on or off in mid-ride: where the whole leaves room for more averaging, the half
 * that shows clearly more of it is believed.
 */
function mostAveraged(power: Float64Array, whole: Estimate, options: Options): Part {
  const middle = power.length >> 1;
  const all: Part = { stretch: [0, power.length], found: whole };
  if (Math.max(whole.high, whole.room) < options.halvesFrom) return all;
  return (
    [
      [0, middle],
      [middle, power.length],
    ] as const
  ).reduce<Part>((best, stretch) => {
    const found = estimate(power.subarray(...stretch), options);
    return found !== null && found.low > options.halfFactor * best.found.low ? { stretch, found } : best;
  }, all);
}

interface Part {
  readonly stretch: Stretch;
  readonly found: Estimate;
}

/** Null where too few seconds follow one another. */
function estimate(power: Float64Array, options: Options): Estimate | null {
  const scatter = scatterOf(power, options);
  if (scatter.pairs < options.minimumSeconds) return null;
  const pedalling = { exponent: options.exponent, spread: options.exponentSpread };
  const plain = fitAveraging(scatter.ratios, 'plain', pedalling);
  const told = {
    count: scatter.pairs,
    room: plain.high,
    averaging: weightedMean,
    scatter: scatter.means,
  } as const;
  if (plain.seconds < options.plainFrom) return { ...plain, ...told, correlation: null };
  const correlation = bendCorrelation(power, options);
  const dip = lagOfDip(correlation, options.dip);
  if (dip === null) return { ...fitAveraging(scatter.ratios, 'weighted', pedalling), ...told, correlation };
  // One plain mean dips at its own length; several in a row dip earlier, and the scatter tells their sum.
  const least = Math.min(plain.low, options.scatterTells);
  const agrees = least <= dip * options.dipAgreement && plain.high >= dip / options.dipAgreement;
  if (!agrees) return { ...plain, ...told, correlation };
  return { seconds: dip, low: dip - 0.5, high: dip + 0.5, ...told, averaging: plainMean, correlation };
}

interface Options {
  readonly exponent: number;
  readonly exponentSpread: number;
  readonly modelError: number;
  readonly halvesFrom: number;
  readonly halfFactor: number;
  readonly minimumSeconds: number;
  readonly plainFrom: number;
  readonly dip: number;
  readonly dipAgreement: number;
  readonly scatterTells: number;
  readonly spans: readonly number[];
  readonly stepFactor: number;
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

/** Scatter of means over each span in terms of twice the span; errors leave out one block at a time. */
function scatterOf(power: Float64Array, { spans, stepFactor, modelError }: Options) {
  let short = deviation(power, spans[0]!);
  const { pairs } = short;
  const means = [{ span: spans[0]!, watts: short.whole }];
  const ratios = spans.map((span): ScatterRatio => {
    const long = deviation(power, 2 * span, stepFactor * short.whole);
    const ratioOf = (a: number, b: number) => (b === 0 ? 1 : a / b);
    const without = short.without.map((one, block) => ratioOf(one, long.without[block]!));
    const ratio = ratioOf(short.whole, long.whole);
    means.push({ span: 2 * span, watts: long.whole });
    short = long;
    return { span, ratio, error: Math.hypot(jackknifeError(without), modelError) };
  });
  return { pairs, ratios, means };
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
  const most = clip * Math.max(1, robustSpread(changes));
  const clipped = changes.map((change) => Math.max(-most, Math.min(most, change)));
  const bends = clipped.map((change, i) => change - (clipped[i - 1] ?? Number.NaN));
  const covariance = autocovariance(bends, longestSeconds);
  // Rounding to whole watts adds 1/2 to the variance of second differences, and nothing three seconds on.
  const variance = Math.max(covariance[0]! / 3, covariance[0]! - 0.5);
  return covariance.map((value) => (variance > 0 ? value / variance : 0));
}

/**
 * A minute from the middle of the stretch, from where power flows, and what the averaging shows itself by:
 * the correlations of a plain mean, the scatter of any.
 */
function chart(
  id: string,
  power: Float64Array,
  [start, end]: Stretch,
  { seconds, averaging, scatter }: Estimate,
  correlation: Float64Array,
): AveragingChart {
  let from = (start + end) >> 1;
  while (from < end - 60 && Number.isNaN(power[from]!)) from++;
  const shown = averaging === plainMean ? correlation.subarray(1) : [];
  return {
    kind: 'averaging',
    id,
    correlation: Array.from(shown, (r) => Math.round(r * 1000) / 1000),
    scatter: scatter.map(({ span, watts }) => ({ span, watts: Math.round(watts * 10) / 10 })),
    seconds,
    from,
    power: readings(power, from, from + 60),
  };
}
