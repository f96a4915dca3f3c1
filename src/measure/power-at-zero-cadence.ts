import { longestLength, stretchesWhere, totalLength } from '../math/stretches.ts';
import { SecondState, type Series } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Seconds in which power goes on though the cranks stand still, beyond the tail that a flywheel and a slow
 * cadence sensor make after every stop: an exact count over the stretches longer than that tail.
 */
export const powerAtZeroCadence = defineMeasure({
  id: 'power-at-zero-cadence',
  of: 'recording',
  options: {
    minimumWatts: number('power from which a second counts, W'),
    tailSeconds: number('how long power may go on after the cranks stop, s'),
    deadShare: number('share of seconds with power at zero cadence from which the sensor counts as dead'),
  },
  compute(all, recording, options) {
    const { power, cadence } = recording.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (cadence === undefined) return notApplicable('no-channel', { channel: 'cadence' });
    const { flowing, still } = seconds(recording, power, cadence, options.minimumWatts);
    if (flowing === 0) return notApplicable('no-power-flow');
    if (still >= options.deadShare * flowing) return notApplicable('dead-channel', { channel: 'cadence' });
    const held = stretchesWhere(
      0,
      recording.length,
      (i) =>
        cadence[i] === 0 && power[i]! >= options.minimumWatts && recording.state[i] === SecondState.recorded,
      options.tailSeconds + 1,
    );
    const beyond = totalLength(held) - held.length * options.tailSeconds;
    return exact(beyond, 's', held.length, {
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

function seconds(
  { state, length }: Series,
  power: Float64Array,
  cadence: Float64Array,
  watts: number,
): { flowing: number; still: number } {
  let flowing = 0;
  let still = 0;
  for (let i = 0; i < length; i++) {
    if (state[i] !== SecondState.recorded || !(power[i]! >= watts) || Number.isNaN(cadence[i]!)) continue;
    flowing++;
    if (cadence[i] === 0) still++;
  }
  return { flowing, still };
}
