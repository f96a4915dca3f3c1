import { firstOrder } from '../math/first-order.ts';
import { mean } from '../math/mean.ts';
import { touching } from '../math/stretches.ts';
import { wilson } from '../math/wilson.ts';
import type { Chart, Series, Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { subjectOf } from './recording/subject.ts';
import { heartBlocks } from './rider/heart-blocks.ts';
import {
  circumstancesOf,
  cleanHeartRate,
  type HeartRateFaults,
  heartRateCircumstances,
  heartRateFaults,
  heartRateOptions,
  secondsWithin,
} from './rider/heart-rate.ts';
import { answer, heartWindows, leastAnswer, wholeWindows } from './rider/heart-windows.ts';
import { responseChart } from './rider/response-chart.ts';

/**
 * Share of the windows with changing power in which heart rate does not answer to it, as a first-order
 * system with lag and slow drift would. How much of an answer is asked for follows from how much power changes.
 * Seconds in which the strap dropped out, hung, leapt, or a sensor counted the cadence are taken out first
 * and said: they are faults of sensors. A sensor that counts the cadence for longer than one that fails for a
 * while has shown no heart there: its windows count as silent. The interval is Wilson's (1927).
 */
export const unresponsiveShare = defineMeasure({
  id: 'unresponsive-share',
  of: 'recording',
  unit: 'share',
  options: {
    windowSeconds: number('length of a window, s'),
    leastWindows: number('fewest windows with changing power'),
    leastKnown: number('share of a window in which heart rate and power must be known'),
    leastVariation: number(
      'SD of power as a quick heart follows it, over its mean, from which it must answer',
    ),
    ownVariation: number('SD of it that would move a heart as much as it wavers by itself, over its mean'),
    openZ: number('how far correlation may fall short of what follows from both, in Fisher’s z'),
    leastCorrelation: number('no more correlation than this is asked for, however much power varies'),
    timeConstants: numbers('time constants tried, s'),
    lags: numbers('lags tried, s'),
    failingShare: number('a sensor that fails for a while counts the cadence for less of the race than this'),
    blockSeconds: number('length of a block of the chart, s'),
    usualAnswer: number(
      'usual answer, for the chart: share of its mean by which heart rate grows when power doubles its mean',
    ),
    ...heartRateOptions,
  },
  circumstances: heartRateCircumstances,
  compute(all, series, options) {
    const { power, heartRate } = series.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (heartRate === undefined) return notApplicable('no-channel', { channel: 'heartRate' });
    const faults = heartRateFaults(series, options);
    const felt = options.timeConstants.map((tau) => firstOrder(power, tau));
    const windows = heartWindows(felt[0]!, cleanHeartRate(series, faults), all.window, options);
    const counted = cadenceWindows(faults, all.window, options);
    const [blocks, needed] = [windows.length + counted.length, options.leastWindows];
    if (blocks < needed) return tooFew(faults, all.window, { blocks, needed });
    const hearts = felt.flatMap((followed) =>
      options.lags.map((lag) => ({
        followed,
        lag,
        answers: windows.map((window) => answer(window, followed, lag)),
      })),
    );
    const best = hearts.reduce((a, b) => (total(b.answers) > total(a.answers) ? b : a));
    const silent = [
      ...windows
        .filter(({ variation }, k) => best.answers[k]! < leastAnswer(variation, options))
        .map(({ stretch }) => stretch),
      ...counted,
    ];
    const stretches = touching(silent);
    const seconds = (found: readonly Stretch[]) =>
      ({ value: secondsWithin(found, all.window), unit: 's' }) as const;
    return measured(silent.length / blocks, wilson(silent.length, blocks), blocks, {
      stretches,
      circumstances: circumstancesOf(faults, all.window, options),
      details: {
        windows: blocks,
        silent: silent.length,
        answering: blocks - silent.length,
        correlation: { value: windows.length === 0 ? 0 : total(best.answers) / windows.length, unit: 'r' },
        missing: seconds(faults.missing),
        stuck: seconds(faults.stuck),
        cadence: seconds(faults.cadence),
        leapt: seconds(faults.leapt),
      },
      charts: [
        shown(`heart-rate:${subjectOf(all, series)}`, series, faults, best, stretches, all.window, options),
      ],
    });
  },
});

/** Too few windows because a sensor told nothing of the heart for most of the race, or because power is even. */
function tooFew(faults: HeartRateFaults, race: Stretch, counts: { blocks: number; needed: number }) {
  const told = Object.values(faults).reduce((sum, stretches) => sum + secondsWithin(stretches, race), 0);
  const share = Math.min(1, told / (race[1] - race[0]));
  if (share <= 0.5) return notApplicable('too-few-blocks', counts);
  return notApplicable('mostly-invalid', { channel: 'heartRate', share: { value: share, unit: 'share' } });
}

/** The channel as it is, beside what a usual heart would have shown of this power, as quick and late as this one. */
function shown(
  id: string,
  { channels }: Series,
  { missing }: HeartRateFaults,
  { followed, lag }: { readonly followed: Float64Array; readonly lag: number },
  silent: readonly Stretch[],
  race: Stretch,
  { blockSeconds, usualAnswer }: { blockSeconds: number; usualAnswer: number },
): Chart {
  const heartRate = channels.heartRate!.slice();
  for (const [from, to] of missing) heartRate.fill(Number.NaN, from, to);
  const late = followed.map((_, i) => followed[Math.max(0, i - lag)]!);
  const blocks = heartBlocks(channels.power!, late, heartRate, race, blockSeconds);
  const answering = (_: number, k: number) =>
    silent.every(([from, to]) => blocks.at[k]! < from || blocks.at[k]! >= to);
  const heard = blocks.heartRate.filter(answering);
  // The level is the heart's own, where it answers anywhere.
  const [level, push] =
    heard.length > 0
      ? [mean(heard), mean(blocks.followed.filter(answering))]
      : [mean(blocks.heartRate), mean(blocks.followed)];
  return responseChart(id, blocks, (watts) => level * (1 + usualAnswer * (watts / push - 1)));
}

/** Windows that show the cadence, where they are too many for a sensor that fails for a while. */
function cadenceWindows(
  { cadence }: HeartRateFaults,
  race: Stretch,
  options: { failingSeconds: number; failingShare: number; windowSeconds: number; leastKnown: number },
): Stretch[] {
  const { failingSeconds, failingShare, windowSeconds, leastKnown } = options;
  const lasting = Math.max(failingSeconds, failingShare * (race[1] - race[0]));
  if (secondsWithin(cadence, race) < lasting) return [];
  return wholeWindows(race, windowSeconds).filter(
    (window) => secondsWithin(cadence, window) >= leastKnown * windowSeconds,
  );
}

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
