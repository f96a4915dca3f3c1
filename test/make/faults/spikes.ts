import { type Fault, withPrimaryChannels } from './fault.ts';

/** Single samples far above anything near them. */
export const spikes: Fault = {
  name: 'spikes',
  rules: ['power-spike'],
  measure: 'count',
  strengths: { borderline: 2, moderate: 18, clear: 60 },
  needs: [],
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    if (power === undefined) return submission;
    const { pMax } = submission.truth.draft.rider.ability;
    for (let k = 0; k < strength; k++) {
      const at = random.integer(5, power.length - 6);
      power[at] = Math.round(random.between(1, 2.2) * Math.max(1000, pMax));
    }
    return withPrimaryChannels(submission, { power });
  },
};
