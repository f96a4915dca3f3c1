import type { ReadSubmission } from '../../src/audit.ts';
import { collect, emptyProfile, flaw, pastRide, placeOf, tooShort, unfit } from '../../src/history/index.ts';
import { normalise } from '../../src/normalise/index.ts';
import type { Profile, Recording } from '../../src/types.ts';
import type { Submission } from '../make/submission.ts';

/** A drawn submission as the audit takes it: files read, past rides compiled. */
export function handedIn(submission: Submission): ReadSubmission {
  const { primary, seconds, rider, race, history } = submission;
  return {
    primary,
    seconds,
    unreadable: [],
    rider,
    race,
    profile: history.length === 0 ? null : profileOf(history, submission),
    otherInputs: [],
  };
}

const profiles = new WeakMap<readonly Recording[], Profile>();

/** What compiling the files of a history would give. */
function profileOf(history: readonly Recording[], { rider }: Submission): Profile {
  const known = profiles.get(history);
  if (known !== undefined) return known;
  const profile = collect(
    emptyProfile,
    history.flatMap((recording) => {
      const { name, sha256 } = recording;
      if (unfit(recording) !== null) return [];
      const { series, steps } = normalise(recording, name);
      if (tooShort(series) || flaw(series, steps) !== null) return [];
      const ride = pastRide(series, placeOf(name, recording.meter ?? recording.device, rider.devices ?? []));
      return [{ name, sha256, outcome: { ride } }];
    }),
  );
  profiles.set(history, profile);
  return profile;
}
