import { picked, raceRecords, samplesEdited, withParts } from './edit.ts';
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

/** An easy stretch was cut out and the rest pushed together. */
export const stretchCutOut: Fault = {
  ...shared,
  name: 'easy stretch cut out, totals left',
  after(submission, strength) {
    const { primary } = submission;
    const power = primary.channels.power!;
    const [first, last] = raceRecords(submission);
    const length = Math.min(Math.round(power.length * strength), last - first - 60);
    let from = first;
    let least = Number.POSITIVE_INFINITY;
    for (let at = first; at + length < last; at += 5) {
      const work = power.subarray(at, at + length).reduce((sum, watts) => sum + (watts || 0), 0);
      if (work < least) [from, least] = [at, work];
    }
    const kept = [...power.keys()].filter((k) => k < from || k >= from + length);
    const gone = primary.time[from + length]! - primary.time[from]!;
    const time = Float64Array.from(kept, (k) => primary.time[k]! - (k < from ? 0 : gone));
    return withParts(submission, { primary: picked(primary, kept, time) });
  },
};
