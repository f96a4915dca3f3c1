import { meanMaximal } from '../math/mean-maximal.ts';
import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { highest } from './rider/past-windows.ts';

/**
 * How far the race's sprint stands above the rider's best past sprint, beyond what the race's longer bests
 * stand above theirs, in percent: the longer duration that explains it best counts. A stronger rider and a
 * meter that reads high throughout raise both; a meter that reads sprints high raises the sprint alone.
 */
export const sprintDisproportion = defineMeasure({
  id: 'sprint-disproportion',
  of: 'rider',
  unit: '%',
  options: {
    sprint: number('duration of the sprint, s'),
    longer: numbers('durations that it is held against, s'),
    near: number('share of the best past sprint from which a past ride holds one as hard'),
    fewest: number('fewest past rides with such a sprint'),
    sprintRatio: number('best past sprint over the best of the longest duration below which nobody sprinted'),
    spread: number('SD between the best sprint of a history and that of an honest race, %'),
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
    const hard = rides.filter(({ bests }) => (bests[at] ?? 0) >= options.near * pastSprint).length;
    const longest = best(options.longer.at(-1)!);
    if (!(longest > 0) || hard < options.fewest || pastSprint < options.sprintRatio * longest) {
      return notApplicable('history-too-thin', { windows: longest > 0 ? hard : 0, needed: options.fewest });
    }
    const race = meanMaximal(primary.channels.power, [options.sprint, ...options.longer], ...all.window);
    const peak = race.watts[0]!;
    if (!(peak > 0)) return notApplicable('no-power-flow');
    // Longer bests below the history's explain nothing; above it they are the rider's level or the meter's.
    const rises = options.longer.map((seconds, k) => Math.max(1, (race.watts[k + 1]! || 0) / best(seconds)));
    const level = rises.reduce((a, b) => Math.max(a, b));
    const honest = { centre: 0, spread: options.spread };
    return exact(100 * (peak / pastSprint / level - 1), hard, {
      stretches: [[race.from[0]!, race.from[0]! + options.sprint]],
      expected: { declared: honest, field: honest },
      details: {
        sprint: { value: options.sprint, unit: 's' },
        peak: { value: peak, unit: 'W' },
        past: { value: pastSprint, unit: 'W' },
        level: { value: 100 * (level - 1), unit: '%' },
        rides: hard,
      },
    });
  },
});
