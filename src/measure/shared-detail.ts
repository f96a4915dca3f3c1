import { laggedSums } from '../math/lagged.ts';
import { robustSpread } from '../math/robust-spread.ts';
import type { AlignedSecond, Channel, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { detailOf, detailRatio } from './pair/detail.ts';

/**
 * How much of the detail of one ride a second recording shares: the correlation of what is faster than some
 * seconds in power or faster than some more in cadence, the better of the two, at the lag that suits it best;
 * heart rate where cadence cannot be compared. Riders of one race share surges and climbs, never how their
 * legs wander; two meters on one bicycle do, even where a trainer holds power so even that nothing of it is
 * left to compare. This is the one comparison that needs no secure clock.
 */
export const sharedDetail = defineMeasure({
  id: 'shared-detail',
  of: 'pair',
  options: {
    powerSeconds: number('what is faster than this is detail of power, s'),
    legSeconds: number('what is faster than this is detail of cadence or heart rate, s'),
    lagSeconds: number('lags searched either side of the alignment, s'),
    leastSeconds: number('fewest seconds compared'),
    leastWatts: number('least standard deviation of detail in power, W: less is rounding'),
    leastRpm: number('least standard deviation of detail in cadence, rpm: less is rounding'),
    leastBeats: number('least standard deviation of detail in heart rate, bpm: less is rounding'),
    samplesPerDetail: number('independent samples in the seconds that detail is faster than'),
    mostDetailRatio: number('ratio of second-to-second variation above which one meter averages far longer'),
  },
  circumstances: {
    'unequal averaging': 'one meter averages over many more seconds than the other, which hides the detail',
    'power only': 'neither cadence nor heart rate could be compared',
  },
  compute(all, pair, options) {
    if (pair.alignment.offset === null)
      return notApplicable(pair.alignment.reason === 'no-power' ? 'no-channel' : 'too-short', {
        channel: 'power',
        seconds: 0,
        needed: options.leastSeconds,
      });
    const power = compare(all, pair, 'power', options.powerSeconds, options.leastWatts, options);
    const body =
      compare(all, pair, 'cadence', options.legSeconds, options.leastRpm, options) ??
      compare(all, pair, 'heartRate', options.legSeconds, options.leastBeats, options);
    const found = [power, body].filter((one) => one !== null);
    if (found.length === 0) return notApplicable('no-detail');
    const best = found.reduce((a, b) => (b.correlation > a.correlation ? b : a));
    const samples = Math.max(4, (best.seconds * options.samplesPerDetail) / best.faster);
    // Fisher's z transformation (Fisher 1915): normal with standard deviation 1/√(n-3).
    const half = 1.96 / Math.sqrt(samples - 3 || 1);
    const z = Math.atanh(Math.min(best.correlation, 0.999999));
    const unequal =
      detailRatio(all.primary.channels.power!, pair.series.channels.power!, all.window) >
      options.mostDetailRatio;
    return measured(best.correlation, 'r', [Math.tanh(z - half), Math.tanh(z + half)], Math.round(samples), {
      stretches: [all.window],
      circumstances: [...(unequal ? ['unequal averaging'] : []), ...(body === null ? ['power only'] : [])],
      details: {
        channel: best.channel,
        ...(power === null ? {} : { power: { value: power.correlation, unit: 'r' as const } }),
        ...(body === null ? {} : { [body.channel]: { value: body.correlation, unit: 'r' as const } }),
        seconds: { value: best.seconds, unit: 's' },
      },
    });
  },
});

interface Shared {
  readonly channel: string;
  /** s */
  readonly faster: number;
  readonly correlation: number;
  readonly seconds: number;
}

/** Correlation of detail in one channel; null where either side lacks it or shows no detail to speak of. */
function compare(
  all: Subjects,
  pair: AlignedSecond,
  channel: Channel,
  faster: number,
  leastSpread: number,
  options: { lagSeconds: number; leastSeconds: number },
): Shared | null {
  const ownColumn = all.primary.channels[channel];
  const otherColumn = pair.series.channels[channel];
  if (ownColumn === undefined || otherColumn === undefined) return null;
  const own = cut(detailOf(ownColumn, faster));
  const other = cut(detailOf(otherColumn, faster));
  let best: Shared | null = null;
  for (let lag = -options.lagSeconds; lag <= options.lagSeconds; lag++) {
    const { products, squares, otherSquares, count: seconds } = laggedSums(own, other, lag, ...all.window);
    if (seconds < options.leastSeconds) continue;
    if (Math.sqrt(squares / seconds) < leastSpread || Math.sqrt(otherSquares / seconds) < leastSpread)
      continue;
    const correlation = products / Math.sqrt(squares * otherSquares);
    if (best === null || correlation > best.correlation) best = { channel, faster, correlation, seconds };
  }
  return best;
}

/**
 * Cuts, in place, what stands out beyond three spreads (median absolute deviation): the few edges of a workout or an
 * attack, which riders share, must not outweigh the many strokes, which they do not.
 */
function cut(detail: Float64Array): Float64Array {
  const most = 3 * robustSpread(detail);
  for (let t = 0; t < detail.length; t++) detail[t] = Math.max(-most, Math.min(most, detail[t]!));
  return detail;
}
