import { defineMeasure, measured, notApplicable } from './measure.ts';

/**
 * How much of the second's second-to-second detail the primary does not explain by a gain, an offset and
 * a filter of three seconds: much for two meters, little for one sensor on two recorders, next to nothing
 * for a recording computed from the first. Align finds the numbers; here they become a measurement.
 */
export const unexplainedDetail = defineMeasure({
  id: 'unexplained-detail',
  of: 'pair',
  unit: 'share',
  options: {},
  circumstances: {
    independent: 'what is left over behaves as between two meters',
    'same sensor': 'gain and detail are those of one sensor on two recorders',
  },
  compute(all, { alignment }) {
    if (!alignment.secure) return notApplicable('not-secure');
    const evidence = alignment.originEvidence;
    if (evidence === null) return notApplicable('too-short', { seconds: 0, needed: 0 });
    const { left, noise, gain, dynamics } = evidence;
    const seconds = all.window[1] - all.window[0];
    return measured(left, [left, left], seconds, {
      stretches: [all.window],
      circumstances: alignment.origin === 'derived' ? [] : [alignment.origin],
      details: {
        noise: { value: noise, unit: 'share' },
        gain: { value: gain, unit: 'ratio' },
        dynamics: { value: Number.isFinite(dynamics) ? dynamics : 0, unit: 'ratio' },
      },
    });
  },
});
