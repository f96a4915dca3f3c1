import { samplesEdited, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['summary-mismatch'],
  measure: 'totals against samples, share',
  strengths: { borderline: 0.03, moderate: 0.12, clear: 0.25 },
  needs: [],
  source: practice,
} as const;

/** Power was raised afterwards, by an even factor with decimals smoothed away; nobody thought of the totals. */
export const samplesRaised: Fault = {
  ...shared,
  name: 'samples raised, totals left',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.map((watts) =>
      watts === 0 ? 0 : Math.round(watts * (1 + strength) + random.normal(0, 2)),
    );
    return samplesEdited(submission, { power });
  },
};

/** The totals were raised, for those who look no further. */
export const totalsRaised: Fault = {
  ...shared,
  name: 'totals raised, samples left',
  after(submission, strength) {
    const { primary } = submission;
    const { meanPower, workJ } = primary.totals;
    const totals = {
      ...primary.totals,
      ...(meanPower === undefined ? {} : { meanPower: Math.round(meanPower * (1 + strength)) }),
      ...(workJ === undefined ? {} : { workJ: Math.round(workJ * (1 + strength)) }),
    };
    return withParts(submission, { primary: { ...primary, totals } });
  },
};
