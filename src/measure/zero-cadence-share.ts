import { stretchesWhere } from '../math/stretches.ts';
import { SecondState } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Share of the seconds in which power flows that show a cadence of zero: an exact count. Its stretches leave
 * out the short ones, for a flywheel runs on for a moment whenever the cranks stop.
 */
export const zeroCadenceShare = defineMeasure({
  id: 'zero-cadence-share',
  of: 'recording',
  unit: 'share',
  options: {
    minimumWatts: number('power from which a second counts as pedalling, W'),
    minimumSeconds: number('seconds of pedalling with a cadence below which nothing is said'),
    shownSeconds: number('how long cadence is zero at a stretch, at least, where it is shown, s'),
  },
  compute(all, recording, options) {
    const { state, length } = recording;
    const { power, cadence } = recording.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (cadence === undefined) return notApplicable('no-channel', { channel: 'cadence' });
    const flows = (i: number) => power[i]! >= options.minimumWatts && !Number.isNaN(cadence[i]!);
    let pedalling = 0;
    let zero = 0;
    for (let i = 0; i < length; i++) {
      if (state[i] !== SecondState.recorded || !flows(i)) continue;
      pedalling++;
      if (cadence[i] === 0) zero++;
    }
    if (pedalling < options.minimumSeconds) return notApplicable('no-power-flow');
    const still = stretchesWhere(0, length, (i) => flows(i) && cadence[i] === 0, options.shownSeconds);
    return exact(zero / pedalling, pedalling, {
      stretches: still,
      details: { seconds: pedalling, zero },
      charts:
        still.length === 0 ? [] : [closeUps(`dead-cadence:${subjectOf(all, recording)}`, recording, still)],
    });
  },
});
