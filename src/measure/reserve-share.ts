import { type CriticalPower, mostDrawn, threeParameterFit, workTimeFit } from '../math/critical-power.ts';
import type { History, PastRide, Subjects } from '../types.ts';
import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { meanWithin } from './rider/windows.ts';

/**
 * The most that the race drew at once from the reserve above critical power (W′), in percent of the highest
 * reserve that the history leaves possible. Only the generous case is judged: critical power and W′ at the
 * upper ends of what all-out efforts show, both at once, and a reserve that fills as fast as it empties.
 * Anything finer hangs on a critical power that nobody knows to 3 %.
 */
export const reserveShare = defineMeasure({
  id: 'reserve-share',
  of: 'rider',
  unit: '%',
  options: {
    durations: numbers('durations of the efforts that critical power is fitted to, s'),
    fewest: number('fewest of them that must be all-out'),
    widest: number('ratio of the longest to the shortest that must be reached'),
    heartRateSlack: number('heart rate this much below the race’s over the same duration: not all-out, %'),
    cpSpread: number('SD of a critical power from field efforts, %'),
    reserveSpread: number('SD of such a W′, %'),
    generous: number('standard deviations granted'),
    leastReserve: number('W′ granted at least, kJ'),
  },
  compute(all, _target, options) {
    const { history } = all;
    const { power, heartRate } = all.primary.channels;
    if (history === null) return notApplicable('no-history');
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (heartRate === undefined) return notApplicable('no-channel', { channel: 'heartRate' });
    const efforts = allOut(all, history, options);
    const longest = efforts.at(-1)?.seconds ?? 0;
    if (efforts.length < options.fewest || longest < options.widest * efforts[0]!.seconds) {
      return notApplicable('history-too-thin', { windows: efforts.length, needed: options.fewest });
    }
    const seconds = Float64Array.from(efforts, (effort) => effort.seconds);
    const watts = Float64Array.from(efforts, (effort) => effort.watts);
    const two = workTimeFit(seconds, watts);
    if (two === null) return notApplicable('cannot-separate');
    const three = threeParameterFit(seconds, watts);
    const { cp, reserve } = granted(two, three, options);
    const drawn = mostDrawn(power, cp, ...all.window);
    return exact((100 * drawn) / reserve, efforts.length, {
      stretches: [all.window],
      details: {
        drawn: { value: drawn / 1000, unit: 'kJ' },
        granted: { value: reserve / 1000, unit: 'kJ' },
        critical: { value: cp, unit: 'W' },
        fitted: { value: two.cp, unit: 'W' },
        fittedReserve: { value: two.reserve / 1000, unit: 'kJ' },
        model: three === null || three.cp < two.cp ? '2 parameters' : '3 parameters',
        efforts: efforts.length,
      },
    });
  },
});

interface Granting {
  readonly cpSpread: number;
  readonly reserveSpread: number;
  readonly generous: number;
  readonly leastReserve: number;
}

/** The upper ends of both numbers: of the fits' own intervals, of both models, and of what is published. */
function granted(two: CriticalPower, three: { cp: number; reserve: number } | null, options: Granting) {
  const { generous, cpSpread, reserveSpread, leastReserve } = options;
  const cp = Math.max(two.cp, three?.cp ?? 0);
  const reserve = Math.max(
    two.reserve,
    three === null || three.cp < 0.8 * two.cp ? 0 : three.reserve,
    1000 * leastReserve,
  );
  return {
    cp: cp * (1 + (generous * cpSpread) / 100),
    reserve: reserve * (1 + (generous * reserveSpread) / 100),
  };
}

interface Choice {
  readonly durations: readonly number[];
  readonly heartRateSlack: number;
}

/** The best past effort of each duration among those that were as hard for the heart as the race was. */
function allOut(all: Subjects, { profile, rides }: History, { durations, heartRateSlack }: Choice) {
  const { power, heartRate } = all.primary.channels;
  const hard = meanWithin(power!, heartRate!, durations, all.window);
  return durations.flatMap((seconds, k) => {
    const at = profile.durations.indexOf(seconds);
    const floor = hard[k]! * (1 - heartRateSlack / 100);
    const watts = rides.reduce((most, ride) => Math.max(most, bestOf(ride, at, floor)), 0);
    return watts > 0 ? [{ seconds, watts }] : [];
  });
}

function bestOf(ride: PastRide, at: number, floor: number): number {
  const bpm = ride.heartRates?.[at] ?? 0;
  return bpm >= floor && bpm > 0 ? (ride.bests[at] ?? 0) : 0;
}
