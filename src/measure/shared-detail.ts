import { fastDetail } from '../math/fast-detail.ts';
import { laggedSums } from '../math/lagged.ts';
import { mean } from '../math/mean.ts';
import { normalReach } from '../math/normal.ts';
import type { AlignedSecond, Channel, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { detailRatio } from './pair/detail.ts';

/**
 * How much of the detail of one ride a second recording shares: the correlation of what is faster than some
 * seconds in power and faster than some more in cadence, the mean of the two, each at the lag that suits it best;
 * heart rate where cadence cannot be compared. Riders of one race share surges and climbs, never how their
 * legs wander; two meters on one bicycle do, even where a trainer holds power so even that little of it is
 * left to compare. What one channel may share by chance of a workout (steps of power, the gears of a course), the
 * other does not. This is the one comparison that needs no secure clock.
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
    const power = compare(all, pair, 'power', options.powerSeconds, options.leastWatts, options);
    const body =
      compare(all, pair, 'cadence', options.legSeconds, options.leastRpm, options) ??
      compare(all, pair, 'heartRate', options.legSeconds, options.leastBeats, options);
    const unequal =
      detailRatio(all.primary.channels.power!, pair.series.channels.power!, all.window) >
      options.mostDetailRatio;
    const found = telling(power, body, unequal);
    if (found.length === 0) return notApplicable('no-detail');
    // Fisher's z transformation (Fisher 1915): normal with standard deviation 1/√(n-3).
    const samples = found.map(({ seconds, faster }) =>
      Math.max(4, (seconds * options.samplesPerDetail) / faster),
    );
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

interface Shared {
  readonly channel: string;
  /** s */
  readonly faster: number;
  readonly correlation: number;
  readonly seconds: number;
}

/** The channels that count: averaging hides the detail of power, and heart rate may bear out but not deny: straps fail. */
function telling(power: Shared | null, body: Shared | null, unequal: boolean): Shared[] {
  if (power === null || body === null) return [power, body].filter((one) => one !== null);
  if (unequal) return [body];
  return body.channel === 'heartRate' && body.correlation < power.correlation ? [power] : [power, body];
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
  const own = fastDetail(ownColumn, faster);
  const other = fastDetail(otherColumn, faster);
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
