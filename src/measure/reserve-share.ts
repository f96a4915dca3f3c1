import { type CriticalPower, mostDrawn, threeParameterFit, workTimeFit } from '../math/critical-power.ts';
import type { History, PastRide, Subjects, Values } from '../types.ts';
import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { meanWithin } from './rider/windows.ts';

/**
 * The most that the race drew at once from the reserve above critical power (W′), in percent of the reserve
 * that the history leaves possible. Only the generous case is judged: a reserve that fills as fast as it
 * empties, and of all pairs of critical power and W′ that the history allows the one that lets most pass.
 *
 * What all-out efforts pin down is the power over the times that were ridden. That power is granted its upper
 * end; around it critical power and W′ give way to one another, for a fit hardly tells them apart. Anything
 * finer hangs on a critical power that nobody knows to 3 %. An effort that no other ride comes near may have
 * been far from all-out: it is left out.
 */
export const reserveShare = defineMeasure({
  id: 'reserve-share',
  of: 'rider',
  unit: '%',
  options: {
    durations: numbers('durations of the efforts that critical power is fitted to, s'),
    fewest: number('fewest of them that must be all-out'),
    widest: number('ratio of the longest to the shortest that must be reached'),
    near: number('an effort within this of the best counts as near-maximal, %'),
    rides: number('rides with a near-maximal effort of that length without which the best is left out'),
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
    const shares = granted(two, three, Math.sqrt(seconds[0]! * longest), options).map((pair) => ({
      ...pair,
      drawn: mostDrawn(power, pair.cp, ...all.window),
    }));
    // The model that grants more.
    const fit = three === null || three.cp < two.cp ? two : three;
    const least = shares.reduce((a, b) => (b.drawn / b.reserve < a.drawn / a.reserve ? b : a));
    return exact((100 * least.drawn) / least.reserve, efforts.length, {
      stretches: [all.window],
      details: {
        drawn: { value: least.drawn / 1000, unit: 'kJ' },
        granted: { value: least.reserve / 1000, unit: 'kJ' },
        critical: { value: least.cp, unit: 'W' },
        fitted: { value: fit.cp, unit: 'W' },
        fittedReserve: { value: fit.reserve / 1000, unit: 'kJ' },
        ...reaches(fit),
        model: fit === two ? '2 parameters' : '3 parameters',
        efforts: efforts.length,
      },
    });
  },
});

/** Half the 95 % intervals of a fit, where it has points to spare. */
function reaches({ cpReach, reserveReach }: CriticalPower): Values {
  if (cpReach === null || reserveReach === null) return {};
  return {
    fittedReach: { value: cpReach, unit: 'W' },
    reserveReach: { value: reserveReach / 1000, unit: 'kJ' },
  };
}

interface Granting {
  readonly cpSpread: number;
  readonly reserveSpread: number;
  readonly generous: number;
  readonly leastReserve: number;
}

/** Steps in which W′ is tried from the lower to the upper end of what it may be. */
const steps = 16;

/**
 * Pairs of critical power (W) and W′ (J) that the history allows at most: the higher of both models, its power
 * over `pivot` seconds raised by what a critical power may be off, W′ anywhere in what it may be.
 */
function granted(
  two: CriticalPower,
  three: { cp: number; reserve: number } | null,
  pivot: number,
  { generous, cpSpread, reserveSpread, leastReserve }: Granting,
) {
  const cp = Math.max(two.cp, three?.cp ?? 0);
  const reserve = Math.max(
    two.reserve,
    three === null || three.cp < 0.8 * two.cp ? 0 : three.reserve,
    1000 * leastReserve,
  );
  const held = (cp + reserve / pivot) * (1 + (generous * cpSpread) / 100);
  const reach = (generous * reserveSpread) / 100;
  return Array.from({ length: steps + 1 }, (_, k) => {
    const tried = reserve * (1 + reach * ((2 * k) / steps - 1));
    return { cp: held - tried / pivot, reserve: tried };
  });
}

interface Choice {
  readonly durations: readonly number[];
  readonly near: number;
  readonly rides: number;
  readonly heartRateSlack: number;
}

/**
 * The best past effort of each duration among those that were as hard for the heart as the race was, where
 * other rides come near it.
 */
function allOut(all: Subjects, { profile, rides }: History, options: Choice) {
  const { power, heartRate } = all.primary.channels;
  const hard = meanWithin(power!, heartRate!, options.durations, all.window);
  return options.durations.flatMap((seconds, k) => {
    const at = profile.durations.indexOf(seconds);
    const floor = hard[k]! * (1 - options.heartRateSlack / 100);
    const efforts = rides.map((ride) => bestOf(ride, at, floor));
    const watts = efforts.reduce((a, b) => Math.max(a, b), 0);
    const near = efforts.filter((effort) => effort >= watts * (1 - options.near / 100)).length;
    return watts > 0 && near >= options.rides ? [{ seconds, watts }] : [];
  });
}

function bestOf(ride: PastRide, at: number, floor: number): number {
  const bpm = ride.heartRates?.[at] ?? 0;
  return bpm >= floor && bpm > 0 ? (ride.bests[at] ?? 0) : 0;
}
