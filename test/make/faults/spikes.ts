import { toldOtherwise } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['power-spike'],
  measure: 'count',
  strengths: { borderline: 2, moderate: 18, clear: 60 },
  needs: [],
  source: practice,
} as const;

/** Single samples far above anything near them. */
export const spikes: Fault = {
  ...shared,
  name: 'spikes',
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    if (power === undefined) return submission;
    const { pMax } = submission.truth.draft.rider.ability;
    for (let k = 0; k < strength; k++) {
      const at = random.integer(5, power.length - 6);
      power[at] = Math.round(random.between(1, 2.2) * Math.max(1000, pMax));
    }
    return toldOtherwise(submission, { power });
  },
};

/** A meter that wakes up wrong: one false sample between zeros, whenever the cranks start again. */
export const wakingSpikes: Fault = {
  ...shared,
  name: 'spikes between zeros',
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    if (power === undefined) return submission;
    for (let k = 0; k < strength; k++) {
      const at = random.integer(8, power.length - 9);
      power.fill(0, at - random.integer(1, 3), at);
      power.fill(0, at + 1, at + 1 + random.integer(1, 2));
      // One real file holds 1336 W for one second between zeros.
      power[at] = random.integer(900, 1900);
    }
    return toldOtherwise(submission, { power });
  },
};
