import { samplesEdited, toldOtherwise } from './edit.ts';
import { type Fault, practice } from './fault.ts';

/**
 * Seen by counts alone: a recorder must write enough of them, and a meter of coarse steps makes the same comb by
 * itself, so that no factor can be told in it.
 */
const shared = {
  rules: ['rescaled-series'],
  needs: ['every second', 'single watts'],
  source: practice,
} as const;

/** Seconds of the shortest part: a factor of 1.06 leaves out one watt in eighteen, some fifty counts. */
const shortestPart = 900;

/** Every watt times a factor, totals made anew. */
export const rescaledWhole: Fault = {
  ...shared,
  name: 'whole ride multiplied',
  most: 'query',
  measure: 'factor above 1',
  strengths: { borderline: 0.02, moderate: 0.05, clear: 0.08 },
  after(submission, strength) {
    const power = submission.primary.channels.power!.map((watts) => Math.round(watts * (1 + strength)));
    return toldOtherwise(submission, { power });
  },
};

/** The same, cut off instead of rounded, totals left as they were. */
export const rescaledCutOff: Fault = {
  ...shared,
  name: 'whole ride multiplied and cut off',
  most: 'query',
  rules: ['rescaled-series', 'summary-mismatch'],
  measure: 'factor above 1',
  strengths: { borderline: 0.02, moderate: 0.05, clear: 0.08 },
  after(submission, strength) {
    const power = submission.primary.channels.power!.map((watts) => Math.floor(watts * (1 + strength)));
    return samplesEdited(submission, { power });
  },
};

/** From some moment on, to the end or for a third of the ride and more. */
export const rescaledPart: Fault = {
  ...shared,
  name: 'part of the ride multiplied',
  measure: 'factor above 1, in a third to three fifths of the ride, 15 min or more',
  strengths: { borderline: 0.03, moderate: 0.06, clear: 0.12 },
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const share = Math.max(random.between(0.3, 0.6), Math.min(0.8, shortestPart / power.length));
    const from = Math.round(power.length * (random.chance(0.5) ? 1 - share : random.between(0, 1 - share)));
    const to = Math.min(power.length, from + Math.round(power.length * share));
    for (let k = from; k < to; k++) power[k] = Math.round(power[k]! * (1 + strength));
    return toldOtherwise(submission, { power });
  },
};
