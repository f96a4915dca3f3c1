import { SecondState } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';

/** Share of the seconds in which power flows that show a cadence of zero: an exact count. */
export const zeroCadenceShare = defineMeasure({
  id: 'zero-cadence-share',
  of: 'recording',
  unit: 'share',
  options: {
    minimumWatts: number('power from which a second counts as pedalling, W'),
    minimumSeconds: number('seconds of pedalling with a cadence below which nothing is said'),
  },
  compute(_all, { channels: { power, cadence }, state, length }, options) {
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (cadence === undefined) return notApplicable('no-channel', { channel: 'cadence' });
    let pedalling = 0;
    let zero = 0;
    for (let i = 0; i < length; i++) {
      if (state[i] !== SecondState.recorded || !(power[i]! >= options.minimumWatts)) continue;
      if (Number.isNaN(cadence[i]!)) continue;
      pedalling++;
      if (cadence[i] === 0) zero++;
    }
    if (pedalling < options.minimumSeconds) return notApplicable('no-power-flow');
    return exact(zero / pedalling, pedalling, { details: { seconds: pedalling, zero } });
  },
});
