import { meanMaximal } from '../math/mean-maximal.ts';
import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { kinshipOf } from './rider/meters.ts';
import { highest } from './rider/past-windows.ts';

/**
 * How far the race's sprint stands above the rider's best past sprint, beyond what the race's longer bests
 * stand above theirs, in percent: the longer duration that explains it best counts. A stronger rider and a
 * meter that reads high throughout raise both; a meter that reads sprints high raises the sprint alone.
 *
 * A best that stands alone may have been far from all there is, and so may several that hardly stand above
 * the rider's 5 min: the lower they are, the more of them are asked for, and the fewer they are, the wider is
 * what an honest race may add.
 */
export const sprintDisproportion = defineMeasure({
  id: 'sprint-disproportion',
  of: 'rider',
  unit: '%',
  options: {
    sprint: number('duration of the sprint, s'),
    longer: numbers('durations that it is held against, s'),
    near: number('share of the best past sprint from which a past ride holds one as hard'),
    sprintRatios: numbers('best past sprint over the best of the longest duration, falling'),
    fewest: numbers('past rides with such a sprint that are needed from each of these ratios on'),
    spread: number('SD between the best sprint of a long history and that of an honest race, %'),
    thin: number('by how much it is wider for few such rides: this over the square of their number'),
    betweenMeters: number('SD between two honest meters in sprints, %'),
  },
  compute(all, _target, options) {
    const { history, primary } = all;
    if (history === null) return notApplicable('no-history');
    if (primary.channels.power === undefined) return notApplicable('no-channel', { channel: 'power' });
    const { rides, profile } = history;
    const best = (seconds: number) =>
      highest(rides, profile.durations.indexOf(seconds), ({ bests }) => bests);
    const pastSprint = best(options.sprint);
    const at = profile.durations.indexOf(options.sprint);
    const needed = sprintsNeeded(pastSprint, best(options.longer.at(-1)!), options);
    const hard =
      needed === null ? [] : rides.filter(({ bests }) => (bests[at] ?? 0) >= options.near * pastSprint);
    if (needed === null || hard.length < needed) {
      return notApplicable('history-too-thin', {
        windows: hard.length,
        needed: needed ?? options.fewest.at(-1)!,
      });
    }
    const race = meanMaximal(primary.channels.power, [options.sprint, ...options.longer], ...all.window);
    const peak = race.watts[0]!;
    if (!(peak > 0)) return notApplicable('no-power-flow');
    // Longer bests below the history's explain nothing; above it they are the rider's level or the meter's.
    const rises = options.longer.map((seconds, k) => Math.max(1, (race.watts[k + 1]! || 0) / best(seconds)));
    const level = rises.reduce((a, b) => Math.max(a, b));
    const own = hard.every((ride) => kinshipOf(ride, primary) === 'own');
    const few = options.spread * (1 + options.thin / hard.length ** 2);
    const honest = { centre: 0, spread: own ? few : Math.hypot(few, options.betweenMeters) };
    return exact(100 * (peak / pastSprint / level - 1), hard.length, {
      stretches: [[race.from[0]!, race.from[0]! + options.sprint]],
      expected: { declared: honest, field: honest },
      details: {
        sprint: { value: options.sprint, unit: 's' },
        peak: { value: peak, unit: 'W' },
        past: { value: pastSprint, unit: 'W' },
        level: { value: 100 * (level - 1), unit: '%' },
        rides: hard.length,
      },
    });
  },
});

interface Needs {
  readonly sprintRatios: readonly number[];
  readonly fewest: readonly number[];
}

/** Past rides with such a sprint that make it count as the rider's best; null where none would. */
function sprintsNeeded(sprint: number, longest: number, { sprintRatios, fewest }: Needs): number | null {
  const reached = sprintRatios.findIndex((least) => sprint >= least * longest);
  return reached < 0 || longest === 0 ? null : fewest[reached]!;
}
