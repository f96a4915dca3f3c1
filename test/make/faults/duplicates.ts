import { fakeDigest } from '../random.ts';
import { picked, retotalled, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['duplicate-submission'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['event'],
  source: practice,
} as const;

/** One file handed in by two riders, under another name and with other bytes. */
export const sameFile: Fault = {
  ...shared,
  name: 'another rider’s recording, saved anew',
  after(submission, _, random) {
    const { primary } = submission;
    const shift = random.integer(-40, 40);
    return withParts(submission, {
      primary: {
        ...primary,
        sha256: fakeDigest(random.key),
        time: primary.time.map((clock) => clock + shift),
      },
    });
  },
};

/** The same with a stretch cut off and power multiplied: cadence stays. */
export const sameFileRescaled: Fault = {
  ...shared,
  name: 'another rider’s recording, cut and multiplied',
  after(submission, _, random) {
    const { primary } = submission;
    const factor = random.between(1.03, 1.12);
    const kept = [...primary.time.keys()].slice(random.integer(20, 90));
    const cut = picked(
      primary,
      kept,
      Float64Array.from(kept, (k) => primary.time[k]!),
    );
    const power = cut.channels.power!.map((watts) => Math.round(watts * factor));
    const other = { ...cut, sha256: fakeDigest(random.key), channels: { ...cut.channels, power } };
    return withParts(submission, { primary: retotalled(other) });
  },
};
