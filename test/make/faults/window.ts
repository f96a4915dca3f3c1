import { picked, raceRecords, retotalled, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = { rules: ['outside-race-window'], needs: [], source: practice } as const;
const there = { borderline: 1, moderate: 1, clear: 1 } as const;

/** Started late or stopped early. */
export const partRecorded: Fault = {
  ...shared,
  name: 'only a part of the race recorded',
  measure: 'share of the race not recorded',
  strengths: { borderline: 0.05, moderate: 0.2, clear: 0.5 },
  after(submission, strength, random) {
    const { primary } = submission;
    const [from, to] = raceRecords(submission);
    const cut = Math.round((to - from) * strength);
    const late = random.chance(0.5);
    const kept = [...primary.time.keys()].slice(late ? from + cut : 0, late ? undefined : to - cut);
    const time = Float64Array.from(kept, (k) => primary.time[k]!);
    return withParts(submission, { primary: retotalled(picked(primary, kept, time)) });
  },
};

/** A clock in another time zone. */
export const zoneSlip: Fault = {
  ...shared,
  name: 'clock in another time zone',
  measure: 'always hours',
  strengths: there,
  after(submission, _, random) {
    const slip = 900 * random.pick([-44, -39, -22, -20, -8, 8, 22, 36]);
    const time = submission.primary.time.map((clock) => clock + slip);
    return withParts(submission, { primary: { ...submission.primary, time } });
  },
};

/** A ride of another day. */
export const otherDay: Fault = {
  ...shared,
  name: 'recorded on another day',
  measure: 'always days',
  strengths: there,
  after(submission, _, random) {
    const slip = -86_400 * random.integer(1, 40) + random.integer(-7200, 7200);
    const time = submission.primary.time.map((clock) => clock + slip);
    return withParts(submission, { primary: { ...submission.primary, time } });
  },
};
