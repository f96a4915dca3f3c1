import type { Recording } from '../../../src/types.ts';
import { fakeDigest } from '../random.ts';
import type { Submission } from '../submission.ts';
import { drawDraft, realise } from '../submission.ts';
import { retotalled, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';
import { racing } from './pair.ts';

const derived = {
  rules: ['shared-origin'],
  measure: 'watts for each watt of noise put on top: 33 is 3 %',
  strengths: { borderline: 33, moderate: 50, clear: 400 },
  needs: ['second recording'],
  source: practice,
  wish: racing,
} as const;

/** Far enough from 1 that no recorder of the same sensor would have made it. */
const factors = [0.96, 0.97, 0.98, 1.02, 1.03];

/** The second is the primary times a factor, with noise on top. */
export const secondScaled: Fault = {
  ...derived,
  name: 'second made from the primary: factor and noise',
  after(submission, strength, random) {
    const factor = random.pick(factors);
    const power = submission.primary.channels.power!.map((watts) =>
      watts === 0 ? 0 : Math.max(0, Math.round(watts * factor * (1 + random.normal() / strength))),
    );
    return madeFrom(submission, power, random.key);
  },
};

/** The same, averaged a little and moved by some seconds, as another head unit would have it. */
export const secondSmoothed: Fault = {
  ...derived,
  name: 'second made from the primary: averaged, moved, noise',
  after(submission, strength, random) {
    const factor = random.pick(factors);
    const told = earlier(submission.primary);
    const power = submission.primary.channels.power!.map((_, k) => {
      const watts = ((told(k, 2) + told(k, 3)) / 2) * factor;
      return watts < 1 ? 0 : Math.max(0, Math.round(watts * (1 + random.normal() / strength)));
    });
    return madeFrom(submission, power, random.key);
  },
};

/** What a recording told so many seconds before a record: its last record by then, the first at the latest. */
function earlier({ time, channels }: Recording): (record: number, seconds: number) => number {
  return (record, seconds) => {
    let k = record;
    while (k > 0 && time[k]! > time[record]! - seconds) k--;
    return channels.power![k]!;
  };
}

function madeFrom(submission: Submission, power: Float64Array, key: string): Submission {
  const { primary, seconds } = submission;
  const made = {
    ...primary,
    name: seconds[0]?.name ?? 'second.fit',
    device: seconds[0]?.device ?? primary.device,
    sha256: fakeDigest(key),
    channels: { ...primary.channels, power },
  };
  return withParts(submission, { seconds: [retotalled(made)] });
}

const another = {
  rules: ['different-ride'],
  measure: 'always',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['second recording'],
  source: practice,
} as const;

/** The second is of some other ride of the rider. */
export const otherRide: Fault = {
  ...another,
  name: 'second of a different ride',
  after(submission, _, random) {
    const { draft } = submission.truth;
    const kind = random.pick(['bunch race', 'time trial', 'outdoor ride', 'long climb'] as const);
    const minutes = Math.round((draft.demand.window[1] - draft.demand.window[0]) / 60);
    const other = drawDraft(`${random.key} other`, { kind, minutes, recorders: 'varied' });
    const ridden = realise({ ...other, start: draft.start });
    return secondIs(submission, ridden);
  },
};

/** The second is of the same workout or course, ridden by the same rider on another day, its clock set to the race. */
export const sameWorkout: Fault = {
  ...another,
  name: 'second of the same workout on another day',
  only: 'moderate',
  wish: (random) => ({
    kind: random.pick(['time trial', 'long climb', 'set-point session'] as const),
    minutes: random.integer(30, 50),
  }),
  after(submission, _, random) {
    const { draft } = submission.truth;
    return secondIs(submission, realise({ ...draft, random: random.fork('other day') }));
  },
};

/** The second is of another rider in the same race. */
export const otherRider: Fault = {
  ...another,
  name: 'second of another rider in the same race',
  only: 'moderate',
  wish: (random) => ({ kind: 'bunch race', minutes: random.integer(30, 55) }),
  after(submission, _, random) {
    const { draft } = submission.truth;
    const minutes = (draft.demand.window[1] - draft.demand.window[0]) / 60;
    const other = drawDraft(`${random.key} rider`, {
      kind: 'bunch race',
      minutes: Math.round(minutes),
      // The race that a seed draws bears its name.
      race: `${draft.random.key} race`,
      recorders: 'varied',
    });
    return secondIs(submission, realise(other));
  },
};

function secondIs(submission: Submission, other: Submission): Submission {
  const ridden = other.seconds[0] ?? other.primary;
  const name = submission.seconds[0]?.name ?? 'second.fit';
  return withParts(submission, { seconds: [{ ...ridden, name }] });
}
