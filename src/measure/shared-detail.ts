import { gainOf } from '../math/correlation-gain.ts';
import { fastDetail } from '../math/fast-detail.ts';
import { correlationOf, type LaggedSums, laggedSums } from '../math/lagged.ts';
import { mean } from '../math/mean.ts';
import { normalReach } from '../math/normal.ts';
import type { AlignedSecond, Stretch, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { detailRatio } from './pair/detail.ts';
import { chancesAlong, legsOf, sumsAlong } from './pair/stopped-clock.ts';

/**
 * How much of the detail of one ride a second recording shares: the correlation of what is faster than some
 * seconds in power and faster than some more in cadence, the mean of the two, each at the lag that suits it best;
 * heart rate where cadence cannot be compared. Riders of one race share surges and climbs, never how their
 * legs wander; two meters on one bicycle do, even where a trainer holds power so even that little of it is
 * left to compare. What one channel may share by chance of a workout (steps of power, the gears of a course), the
 * other does not. This is the one comparison that needs no secure clock: where it is not, and somebody stood still, a
 * clock may have stopped. If a lag of their own explains the stretches between stops better, by more than chance would
 * have among as many lags, they count each at its own.
 */
export const sharedDetail = defineMeasure({
  id: 'shared-detail',
  of: 'pair',
  unit: 'r',
  options: {
    powerSeconds: number('what is faster than this is detail of power, s'),
    legSeconds: number('what is faster than this is detail of cadence or heart rate, s'),
    lagSeconds: number('lags searched either side of the alignment, s'),
    leastSeconds: number('fewest seconds compared'),
    standingSeconds: number('shortest standstill at which a clock may have stopped, s'),
    stopSeconds: number('how long a clock may run on after its rider stands, s'),
    stretchSeconds: number('shortest stretch between standstills that may have a lag of its own, s'),
    leastWatts: number('least standard deviation of detail in power, W: less is rounding'),
    leastRpm: number('least standard deviation of detail in cadence, rpm: less is rounding'),
    leastBeats: number('least standard deviation of detail in heart rate, bpm: less is rounding'),
    samplesPerDetail: number('independent samples in the seconds that detail is faster than'),
    mostDetailRatio: number('ratio of second-to-second variation above which one meter averages far longer'),
  },
  circumstances: {
    'unequal averaging':
      'one meter averages over many more seconds than the other, which hides the detail of power, and no cadence can be compared',
    'power only': 'neither cadence nor heart rate could be compared',
  },
  compute(all, pair, options) {
    if (pair.alignment.offset === null)
      return notApplicable(pair.alignment.reason === 'no-power' ? 'no-channel' : 'too-short', {
        channel: 'power',
        seconds: 0,
        needed: options.leastSeconds,
      });
    const unequal =
      detailRatio(all.primary.channels.power!, pair.series.channels.power!, all.window) >
      options.mostDetailRatio;
    const traceOf = tracesOf(all, pair, options);
    const view = (way: Way) => compare(traceOf, way, unequal, options);
    const atOneLag = view(({ own, other }) => around(own, other, options.lagSeconds));
    const { power, body, found } = pair.alignment.secure
      ? atOneLag
      : likeliest(atOneLag, all, pair, view, options);
    if (found.length === 0) return notApplicable('no-detail');
    // Fisher's z transformation (Fisher 1915): normal with standard deviation 1/√(n-3).
    const samples = found.map((one) => samplesOf(one, options));
    const z = mean(found.map(({ correlation }) => Math.atanh(Math.min(correlation, 0.999999))));
    const half = (normalReach * Math.hypot(...samples.map((n) => 1 / Math.sqrt(n - 3)))) / found.length;
    const value = Math.tanh(z);
    const count = Math.round(Math.min(...samples));
    return measured(value, [Math.tanh(z - half), Math.tanh(z + half)], count, {
      stretches: [all.window],
      circumstances: [
        ...(unequal && body?.channel !== 'cadence' ? ['unequal averaging'] : []),
        ...(body === null ? ['power only'] : []),
      ],
      details: {
        ...(power === null ? {} : { power: { value: power.correlation, unit: 'r' as const } }),
        ...(body === null ? {} : { [body.channel]: { value: body.correlation, unit: 'r' as const } }),
        seconds: { value: Math.max(...found.map(({ seconds }) => seconds)), unit: 's' },
      },
    });
  },
});

interface Options {
  readonly powerSeconds: number;
  readonly legSeconds: number;
  readonly lagSeconds: number;
  readonly leastSeconds: number;
  readonly leastWatts: number;
  readonly leastRpm: number;
  readonly leastBeats: number;
  readonly samplesPerDetail: number;
  readonly standingSeconds: number;
  readonly stopSeconds: number;
  readonly stretchSeconds: number;
}

type Compared = 'power' | 'cadence' | 'heartRate';

/** The detail of one channel on both recordings, within the race. */
interface Trace {
  readonly channel: Compared;
  /** s */
  readonly faster: number;
  readonly leastSpread: number;
  readonly own: Float64Array;
  readonly other: Float64Array;
}

/** What two traces make together at each of the lags, or sets of lags, that are tried: the best counts. */
type Way = (trace: Trace) => readonly LaggedSums[];

interface Shared {
  readonly channel: Compared;
  /** s */
  readonly faster: number;
  readonly correlation: number;
  readonly seconds: number;
}

interface Comparison {
  readonly power: Shared | null;
  readonly body: Shared | null;
  /** Those of both that count. */
  readonly found: readonly Shared[];
}

/** The trace of a channel, made when first asked for; null where either recording lacks it. */
type TraceOf = (channel: Compared) => Trace | null;

function tracesOf(all: Subjects, pair: AlignedSecond, options: Options): TraceOf {
  const kinds = {
    power: [options.powerSeconds, options.leastWatts],
    cadence: [options.legSeconds, options.leastRpm],
    heartRate: [options.legSeconds, options.leastBeats],
  } as const;
  const known = new Map<Compared, Trace | null>();
  const make = (channel: Compared): Trace | null => {
    const own = all.primary.channels[channel];
    const other = pair.series.channels[channel];
    if (own === undefined || other === undefined) return null;
    const [faster, leastSpread] = kinds[channel];
    const within = only(fastDetail(own, faster), all.window);
    return { channel, faster, leastSpread, own: within, other: fastDetail(other, faster) };
  };
  return (channel) => {
    const trace = known.get(channel) ?? make(channel);
    known.set(channel, trace);
    return trace;
  };
}

function only(detail: Float64Array, [from, to]: Stretch): Float64Array {
  return detail.fill(Number.NaN, 0, from).fill(Number.NaN, to);
}

/** Correlation of detail in each channel where both show detail to speak of, and what of it counts. */
function compare(traceOf: TraceOf, way: Way, unequal: boolean, options: Options): Comparison {
  const shared = (channel: Compared): Shared | null => {
    const trace = traceOf(channel);
    if (trace === null) return null;
    let best: Shared | null = null;
    for (const sums of way(trace)) {
      const { squares, otherSquares, count: seconds } = sums;
      if (seconds < options.leastSeconds) continue;
      if (Math.sqrt(squares / seconds) < trace.leastSpread) continue;
      if (Math.sqrt(otherSquares / seconds) < trace.leastSpread) continue;
      const correlation = correlationOf(sums);
      if (best === null || correlation > best.correlation)
        best = { channel, faster: trace.faster, correlation, seconds };
    }
    return best;
  };
  const power = shared('power');
  const body = shared('cadence') ?? shared('heartRate');
  return { power, body, found: telling(power, body, unequal) };
}

/** The channels that count: averaging hides the detail of power, and heart rate may bear out but not deny: straps fail. */
function telling(power: Shared | null, body: Shared | null, unequal: boolean): Shared[] {
  if (power === null || body === null) return [power, body].filter((one) => one !== null);
  if (unequal) return [body];
  return body.channel === 'heartRate' && body.correlation < power.correlation ? [power] : [power, body];
}

function samplesOf({ seconds, faster }: Shared, options: Options): number {
  return Math.max(4, (seconds * options.samplesPerDetail) / faster);
}

function around(own: Float64Array, other: Float64Array, reach: number): LaggedSums[] {
  return Array.from({ length: 2 * reach + 1 }, (_, k) => laggedSums(own, other, k - reach));
}

/**
 * The comparison with the clock of either recorder stopped wherever the other recording shows a standstill, if that is
 * likelier than one lag by more than it had chances to be; else that at one lag. The lag of the alignment may be that
 * of any of the stretches.
 */
function likeliest(
  atOneLag: Comparison,
  all: Subjects,
  pair: AlignedSecond,
  view: (way: Way) => Comparison,
  options: Options,
): Comparison {
  const own = legsOf(all.primary, all.window, options);
  const other = legsOf(pair.series, all.window, options);
  const stopped = [
    ...own.map((_, k) => ({
      legs: own,
      way: (trace: Trace) => [sumsAlong(trace.own, trace.other, own, k, options.lagSeconds)],
    })),
    ...other.map((_, k) => ({
      legs: other,
      way: (trace: Trace) => [sumsAlong(trace.other, trace.own, other, k, options.lagSeconds)],
    })),
  ];
  const gain = ({ found }: Comparison) =>
    found.reduce((sum, one) => sum + gainOf(one.correlation, samplesOf(one, options)), 0);
  let best = { comparison: atOneLag, gain: gain(atOneLag) };
  for (const { legs, way } of stopped) {
    const comparison = view(way);
    const chances = Math.log(stopped.length) + comparison.found.length * chancesAlong(legs);
    if (gain(comparison) - chances > best.gain) best = { comparison, gain: gain(comparison) - chances };
  }
  return best.comparison;
}
