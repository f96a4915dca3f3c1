import { firstOrder } from '../math/first-order.ts';
import { totalLength } from '../math/stretches.ts';
import { wilson } from '../math/wilson.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { cleanHeartRate, type HeartRateFaults, heartRateFaults } from './rider/heart-rate.ts';
import { answer, heartWindows } from './rider/heart-windows.ts';

/**
 * Share of the windows with changing power in which heart rate does not answer to it, as a first-order
 * system with lag and slow drift would. Seconds in which the strap dropped out, hung, or a sensor counted
 * the cadence are taken out first and said: they are faults of sensors. The interval is Wilson's (1927).
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
    timeConstants: numbers('time constants tried, s'),
    lags: numbers('lags tried, s'),
    leastCorrelation: number('correlation below which heart rate does not answer'),
    faultShare: number('share of the race from which a sensor fault is worth saying'),
    stuckSeconds: number('one heart rate for this long counts as stuck, s'),
    cadenceBeats: number('heart rate this close to the cadence … (bpm)'),
    cadenceSeconds: number('… for this long counts as the cadence, s'),
  },
  circumstances: {
    'strap dropped out': 'the strap dropped out for part of the race',
    'heart rate stuck': 'heart rate hung at one value for part of the race',
    'cadence counted': 'the sensor counted the cadence for part of the race',
  },
  compute(all, series, options) {
    const { power, heartRate } = series.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (heartRate === undefined) return notApplicable('no-channel', { channel: 'heartRate' });
    const faults = heartRateFaults(series, options);
    const clean = cleanHeartRate(series, faults);
    const felt = options.timeConstants.map((tau) => firstOrder(power, tau));
    const windows = heartWindows(felt[0]!, clean, all.window, options);
    const [blocks, needed] = [windows.length, options.leastWindows];
    if (blocks < needed) return notApplicable('too-few-blocks', { blocks, needed });
    const tried = felt.flatMap((followed) =>
      options.lags.map((lag) => windows.map((window) => answer(window, followed, lag))),
    );
    const best = tried.reduce((a, b) => (total(b) > total(a) ? b : a));
    const silent = windows.filter((_, k) => best[k]! < options.leastCorrelation);
    const share = silent.length / blocks;
    return measured(share, wilson(silent.length, blocks), blocks, {
      stretches: silent.map(({ stretch }) => stretch),
      circumstances: circumstancesOf(faults, options.faultShare * (all.window[1] - all.window[0])),
      details: {
        windows: blocks,
        silent: silent.length,
        correlation: { value: total(best) / blocks, unit: 'r' },
        missing: { value: totalLength(faults.missing), unit: 's' },
        stuck: { value: totalLength(faults.stuck), unit: 's' },
        cadence: { value: totalLength(faults.cadence), unit: 's' },
      },
    });
  },
});

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

function circumstancesOf({ missing, stuck, cadence }: HeartRateFaults, least: number): string[] {
  const named = [
    ['strap dropped out', missing],
    ['heart rate stuck', stuck],
    ['cadence counted', cadence],
  ] as const;
  return named.filter(([, stretches]) => totalLength(stretches) >= least).map(([name]) => name);
}
