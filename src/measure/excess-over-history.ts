import { type Belief, beliefQuantile, chanceAbove, valueExceeded } from '../math/belief.ts';
import { chanceOfMaximum, heightOfMaximum } from '../math/correlated-maximum.ts';
import { meanMaximal } from '../math/mean-maximal.ts';
import { beyondEnd, normalProbability, normalQuantile } from '../math/normal.ts';
import { typicalFall } from '../math/power-duration.ts';
import type { Chart, History, PastRide, Quantity, Subjects } from '../types.ts';
import { day } from '../units.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { abilityBelief } from './rider/ability-belief.ts';
import type { Kinship } from './rider/meters.ts';
import { highest, type Kin, type WindowGroup, windowGroups } from './rider/past-windows.ts';
import { meanWithin } from './rider/windows.ts';

const spec = {
  durations: numbers('durations compared, s, rising'),
  withinRider: numbers('SD of all-out efforts of one rider around their ability, %, for each duration'),
  betweenMeters: number('SD between honest meters in the field, %'),
  betweenSettings: number('SD between a rider’s power indoors and outdoors, %'),
  shortfall: number(
    'mean by which the highest past window falls short of ability before the others are seen, %',
  ),
  heldBackUnseen: number('mean by which all of them may have been held back where no heart rate tells, %'),
  swapped: number('share of races in which meter or calibration had changed under the same name'),
  unlisted: number('share of races with another meter where only the recorder, or the model, is the same'),
  drift: number('SD by which ability wanders in 30 days, %'),
  oldest: number('age beyond which a ride no longer counts, days'),
  reach: number('windows further below the highest one than this are not looked at, %'),
  near: number('a window within this of the highest one counts as near-maximal, %'),
  fewest: number('near-maximal windows at a duration without which nothing is said of it'),
  allOutShares: numbers('shares of all-out efforts among the windows in reach that are held possible'),
  allOutRatios: numbers(
    'watts over the best at the anchor below which a window was not all-out, for each duration; 0: not judged',
  ),
  anchor: number('duration of that best, s'),
  easyHeartRate: number('share of the highest heart rate below which a window was not all-out'),
  heartRateSlack: number('the same where it was this much below the heart rate of the race, %'),
  easyFrom: number('duration from which heart rate tells that, s'),
  controlled: number(
    'share of controlled pedalling from which a ride shows what was asked, not what was possible',
  ),
  kinReach: number('ratio of durations (natural logarithm) up to which windows speak for one another'),
  kinFrom: number('duration from which they do, s'),
  kinError: number('SD of the typical ratio of their powers for each natural logarithm of the ratio, %'),
  reserve: number('typical W′/CP, s'),
  tiring: number('typical loss of critical power for each natural logarithm of time, %'),
  kinship: number('ratio of durations (natural logarithm) at which honest bests correlate by 1/e'),
  rareness: number('chance at which the honest spread is taken'),
};
type Options = {
  readonly [N in keyof typeof spec]: (typeof spec)[N]['list'] extends true ? readonly number[] : number;
};

/** One duration of the race against the history. */
interface Comparison {
  readonly duration: number;
  readonly watts: number;
  readonly from: number;
  readonly best: number;
  readonly near: number;
  readonly meters: Meters;
  /** About ln(ability). */
  readonly belief: Belief;
  readonly spread: number;
  /** Standard normal value of the race's best under what the history allows. */
  readonly height: number;
}

/**
 * How far the race's best mean powers stand above what the rider's past rides show that they can do: the
 * percentage at the duration where honest riders would be this far above most rarely. Past bests are
 * lower bounds of ability; see `abilityFrom`. The honest spread counts day-to-day variation, what is not
 * known of ability, meters, and that the highest of several correlated durations is picked (Hunter 1976).
 */
export const excessOverHistory = defineMeasure({
  id: 'excess-over-history',
  of: 'rider',
  unit: '%',
  options: spec,
  circumstances: {
    'meter unlisted':
      'files do not tell for certain which power sensor they heard: the same recorder, or the same model, counts as most likely the same meter',
    'meter unknown': 'not every file lists its power sensor: past rides count as measured by another meter',
    'other meter': 'another meter measured the past rides',
  },
  compute(all, _target, options) {
    const { history } = all;
    if (history === null) return notApplicable('no-history');
    if (all.primary.channels.power === undefined) return notApplicable('no-channel', { channel: 'power' });
    const rides = recent(history, all, options);
    const comparisons = compare(all, history, rides, options);
    if (comparisons.length === 0)
      return notApplicable('history-too-thin', {
        windows: Math.min(rides.length, options.fewest - 1),
        needed: options.fewest,
      });
    const correlations = comparisons.slice(1).map(({ duration }, k) => {
      return Math.exp(-Math.log(duration / comparisons[k]!.duration) / options.kinship);
    });
    const most = comparisons.reduce((a, b) => (b.height > a.height ? b : a));
    const rare = normalProbability(-heightOfMaximum(options.rareness, correlations));
    const allowed = (c: Comparison) => Math.exp(valueExceeded(c.belief, rare, c.spread));
    const middle = Math.exp(beliefQuantile(most.belief, 0.5));
    const percent = (over: number) => 100 * (most.watts / over - 1);
    return measured(
      percent(middle),
      [
        percent(Math.exp(beliefQuantile(most.belief, 1 - beyondEnd))),
        percent(Math.exp(beliefQuantile(most.belief, beyondEnd))),
      ],
      most.near,
      {
        stretches: [[most.from, most.from + most.duration]],
        expected: sameFor({
          centre: 0,
          spread: (100 * (allowed(most) / middle - 1)) / -normalQuantile(options.rareness),
        }),
        chance: chanceOfMaximum(most.height, correlations),
        circumstances: most.meters === 'own' ? [] : [most.meters],
        details: {
          duration: lengthOf(most.duration),
          watts: watts(most.watts),
          best: watts(most.best),
          ability: watts(middle),
          allowed: watts(allowed(most)),
          rides: rides.length,
          days: daysOf(rides),
          windows: most.near,
          oneIn: oneIn(chanceOfMaximum(most.height, correlations)),
        },
        charts: [curve(all, history, rides, new Map(comparisons.map((c) => [c.duration, allowed(c)])))],
      },
    );
  },
});

/** Days from the first to the last of the rides, both counted. */
function daysOf(rides: readonly PastRide[]): number {
  const [first, last] = [rides.map(({ from }) => from), rides.map(({ to }) => to)];
  return (
    1 + Math.floor((last.reduce((a, b) => Math.max(a, b)) - first.reduce((a, b) => Math.min(a, b))) / day)
  );
}

/** A chance as "1 in": two digits are more than it is known to. */
function oneIn(chance: number): number {
  return Math.min(100_000, Number((1 / chance).toPrecision(2)));
}

const watts = (value: number): Quantity => ({ value, unit: 'W' });
const lengthOf = (seconds: number): Quantity =>
  seconds < 120 ? { value: seconds, unit: 's' } : { value: seconds / 60, unit: 'min' };
const sameFor = <T>(range: T) => ({ declared: range, field: range });

function recent({ rides }: History, { primary }: Subjects, { oldest }: Options): PastRide[] {
  return rides.filter((ride) => primary.start - ride.to <= oldest * day);
}

function compare(
  all: Subjects,
  history: History,
  rides: readonly PastRide[],
  options: Options,
): Comparison[] {
  const race = meanMaximal(all.primary.channels.power!, options.durations, ...all.window);
  const durations = history.profile.durations;
  const floors = floorsOf(all, durations, rides, options);
  return options.durations.flatMap((duration, k) => {
    const watts = race.watts[k]!;
    if (!(watts > 0)) return [];
    const kin = kinOf(k, durations, floors, options);
    const groups = windowGroups(rides, all.primary, kin, options.controlled);
    const { top, near, distance } = nearMaximal(groups, options);
    if (near < options.fewest) return [];
    const spread = options.withinRider[k]! / 100;
    const model = {
      spread,
      drift: options.drift / 100,
      reach: options.reach / 100,
      shares: options.allOutShares,
    };
    const seen = floors.heartRates !== null && duration >= options.kinFrom;
    const belief = abilityBelief(groups, top, model, {
      betweenMeters: options.betweenMeters / 100,
      betweenSettings: options.betweenSettings / 100,
      betweenDurations: (distance * options.kinError) / 100,
      shortfall: options.shortfall / 100,
      heldBackUnseen: seen ? 0 : options.heldBackUnseen / 100,
      swapped: options.swapped,
      unlisted: options.unlisted,
    });
    const chance = chanceAbove(belief, Math.log(watts), spread);
    const height = -normalQuantile(Math.min(1 - leastChance, Math.max(leastChance, chance)));
    const best = highest(rides, durations.indexOf(duration), (ride) => ride.bests);
    return [
      {
        duration,
        watts,
        from: race.from[k]!,
        best,
        near,
        meters: metersOf(groups),
        belief,
        spread,
        height,
      },
    ];
  });
}

/** Who measured the past windows: the race's own meter some of them, most likely so, another, or nobody knows. */
type Meters = 'own' | 'meter unlisted' | 'other meter' | 'meter unknown';

function metersOf(groups: readonly WindowGroup[]): Meters {
  const some = (kinship: Kinship) => groups.some(({ meter }) => meter === kinship);
  if (some('own')) return 'own';
  if (some('likely own')) return 'meter unlisted';
  return some('unknown') ? 'meter unknown' : 'other meter';
}

/** What a window must show, at least, to count as one in which the rider may have gone all out. */
interface Floors {
  /** The best that the history holds at the anchor duration, W. */
  readonly anchorWatts: number;
  /** bpm, for each duration of the profile; null where no heart rate is known. */
  readonly heartRates: readonly number[] | null;
}

/**
 * Heart rate tells held-back windows: far below the highest that was ever held, or below that of the race
 * over the same duration.
 */
function floorsOf(
  all: Subjects,
  durations: readonly number[],
  rides: readonly PastRide[],
  options: Options,
): Floors {
  const anchorAt = durations.indexOf(options.anchor);
  const { power, heartRate } = all.primary.channels;
  const race =
    heartRate === undefined ? durations.map(() => 0) : meanWithin(power!, heartRate, durations, all.window);
  const highestHeld = Math.max(
    highest(rides, anchorAt, (ride) => ride.heartRates),
    race[anchorAt] ?? 0,
  );
  return {
    anchorWatts: highest(rides, anchorAt, (ride) => ride.bests),
    heartRates:
      highestHeld === 0
        ? null
        : race.map((bpm) =>
            Math.max(options.easyHeartRate * highestHeld, (1 - options.heartRateSlack / 100) * bpm),
          ),
  };
}

/** The durations of the profile whose windows speak for the k-th duration asked about. */
function kinOf(k: number, durations: readonly number[], floors: Floors, options: Options): Kin[] {
  const { reserve, tiring, kinFrom, kinReach, easyFrom, allOutRatios } = options;
  const duration = options.durations[k]!;
  const fall = (seconds: number) => typicalFall(seconds, reserve, tiring / 100);
  return durations.flatMap((other, at) => {
    const distance = Math.abs(Math.log(other / duration));
    const close = other >= kinFrom && duration >= kinFrom && distance <= kinReach;
    if (other !== duration && !close) return [];
    return [
      {
        at,
        shift: fall(duration) - fall(other),
        distance,
        heartRateFloor: other >= easyFrom ? (floors.heartRates?.[at] ?? 0) : 0,
        wattsFloor: allOutRatios[k]! * floors.anchorWatts,
      },
    ];
  });
}

/** Chances beyond what the belief's grid can tell are not told apart. */
const leastChance = 1e-9;

/**
 * The highest window of the race's setting in which the rider may have gone all out, how many lie near it,
 * and from how far durations they come.
 */
function nearMaximal(groups: readonly WindowGroup[], { near }: Options) {
  const windows = groups.flatMap((group) =>
    group.setting === 'other' ? [] : group.windows.filter((w) => !w.heldBack),
  );
  const top = windows.reduce((most, { value }) => Math.max(most, value), -Infinity);
  const close = windows.filter(({ value }) => value >= top - near / 100);
  const distance = close.reduce((sum, window) => sum + window.distance, 0) / close.length;
  return { top, near: close.length, distance };
}

/** The race and the history at every duration of the profile, with what the history allows where it says. */
function curve(
  { primary, window }: Subjects,
  { profile }: History,
  rides: readonly PastRide[],
  allowed: ReadonlyMap<number, number>,
): Chart {
  const race = meanMaximal(primary.channels.power!, profile.durations, ...window);
  const points = profile.durations.map((duration, k) => ({
    duration,
    race: Number.isNaN(race.watts[k]!) ? null : race.watts[k]!,
    best: rides.reduce<number | null>(
      (most, { bests }) => (bests[k] == null ? most : Math.max(most ?? 0, bests[k])),
      null,
    ),
    allowed: allowed.get(duration) ?? null,
  }));
  return { kind: 'curve', id: 'curve:rider', points: points.filter(({ race }) => race !== null) };
}
