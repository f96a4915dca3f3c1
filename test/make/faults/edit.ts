import type { Columns, Recording } from '../../../src/types.ts';
import { totalsOf } from '../recorder.ts';
import type { Submission } from '../submission.ts';

/** The submission with other recordings or facts; history and other riders are still made only when looked at. */
export function withParts(
  submission: Submission,
  parts: Partial<Pick<Submission, 'primary' | 'seconds' | 'rider' | 'race'>>,
): Submission {
  const { primary, seconds, rider, race, truth } = submission;
  return {
    primary,
    seconds,
    rider,
    race,
    truth,
    ...parts,
    get history() {
      return submission.history;
    },
    get others() {
      return submission.others;
    },
  };
}

/** The primary with other channels, its own totals made anew: what a head unit writes that was told so. */
export function toldOtherwise(submission: Submission, channels: Columns): Submission {
  const { primary, truth } = submission;
  const { meanCountsZeros } = truth.draft.recordings[0]!.recorder;
  const changed = { ...primary, channels: { ...primary.channels, ...channels } };
  return withParts(submission, { primary: retotalled(changed, meanCountsZeros) });
}

/** The primary with other channels and the totals that it had: somebody changed the samples afterwards. */
export function samplesEdited(submission: Submission, channels: Columns): Submission {
  const { primary } = submission;
  return withParts(submission, { primary: { ...primary, channels: { ...primary.channels, ...channels } } });
}

/** Totals as an honest head unit states them of these records. */
export function retotalled(recording: Recording, countsZeros = true): Recording {
  const { time, channels, pauses } = recording;
  const before = new Set(pauses.map(([from]) => from - 1));
  const pauseAfter = [...time.keys()].filter((k) => before.has(time[k]!));
  return { ...recording, totals: totalsOf(time, channels, pauseAfter, countsZeros) };
}

/** Records of the primary that lie in the race. */
export function raceRecords({ primary, race }: Submission): [from: number, to: number] {
  const [start, finish] = [Date.parse(race.start!) / 1000, Date.parse(race.finish!) / 1000];
  const { time } = primary;
  const from = time.findIndex((clock) => clock >= start);
  const to = time.findLastIndex((clock) => clock < finish) + 1;
  return to - Math.max(0, from) < 60 ? [0, time.length] : [Math.max(0, from), to];
}

/** Every column cut or put together by record. */
export function picked(recording: Recording, records: readonly number[], time: Float64Array): Recording {
  const pick = (column: Float64Array) => Float64Array.from(records, (k) => column[k]!);
  const channels = Object.fromEntries(
    Object.entries(recording.channels).map(([channel, column]) => [channel, pick(column)]),
  );
  return { ...recording, time, channels };
}
