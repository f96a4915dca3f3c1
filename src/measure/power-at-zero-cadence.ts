import { longestLength, totalLength } from '../math/stretches.ts';
import type { Series, Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { recordsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Seconds in which power goes on though the cranks stand still, beyond the tail that a flywheel and a slow
 * cadence sensor make after every stop: an exact count over the stretches longer than that tail. A stretch
 * runs from record to record, so that a recorder that leaves seconds out is asked as well; what lies after
 * its last record counts for nothing.
 */
export const powerAtZeroCadence = defineMeasure({
  id: 'power-at-zero-cadence',
  of: 'recording',
  unit: 's',
  options: {
    minimumWatts: number('power from which a second counts, W'),
    tailSeconds: number('how long power may go on after the cranks stop, s'),
    deadShare: number('share of seconds with power at zero cadence from which the sensor counts as dead'),
  },
  compute(all, recording, options) {
    const { cadence } = recording.channels;
    if (recordsOf(recording) === null) return notApplicable('no-channel', { channel: 'power' });
    if (cadence === undefined) return notApplicable('no-channel', { channel: 'cadence' });
    const { flowing, still, stretches } = flowAtStill(recording, cadence, options.minimumWatts);
    if (flowing === 0) return notApplicable('no-power-flow');
    if (still >= options.deadShare * flowing) return notApplicable('dead-channel', { channel: 'cadence' });
    const held = stretches.filter(([from, to]) => to - from > options.tailSeconds);
    const beyond = totalLength(held) - held.length * options.tailSeconds;
    return exact(beyond, held.length, {
      stretches: held,
      details: {
        stretches: held.length,
        longest: { value: longestLength(held), unit: 's' },
        tail: { value: options.tailSeconds, unit: 's' },
      },
      charts: held.length === 0 ? [] : [closeUps(`coasting:${subjectOf(all, recording)}`, recording, held)],
    });
  },
});

interface Flow {
  /** Records with power and a cadence, and those of them whose cadence is zero. */
  readonly flowing: number;
  readonly still: number;
  /** From the first to the last record of every unbroken run of the latter, s. */
  readonly stretches: readonly Stretch[];
}

function flowAtStill(series: Series, cadence: Float64Array, watts: number): Flow {
  const { at, power, broken } = recordsOf(series)!;
  const stretches: Stretch[] = [];
  let flowing = 0;
  let still = 0;
  let from = -1;
  for (let i = 0; i < at.length; i++) {
    const flows = power[i]! >= watts && !Number.isNaN(cadence[at[i]!]!);
    const stands = flows && cadence[at[i]!] === 0;
    if (flows) flowing++;
    if (stands) still++;
    if (from >= 0 && (!stands || broken[i] === 1)) {
      stretches.push([at[from]!, at[i - 1]! + 1]);
      from = -1;
    }
    if (stands && from < 0) from = i;
  }
  if (from >= 0) stretches.push([at[from]!, at[at.length - 1]! + 1]);
  return { flowing, still, stretches };
}
