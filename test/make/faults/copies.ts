import type { Columns, Recording } from '../../../src/types.ts';
import { picked, raceRecords, retotalled, toldOtherwise, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['repeated-block'],
  measure: 'seconds copied',
  strengths: { borderline: 60, moderate: 150, clear: 300 },
  needs: [],
  source: practice,
} as const;

/** A good stretch stands once more in place of a bad one, all channels alike. */
export const blockCopied: Fault = {
  ...shared,
  name: 'good stretch copied over a bad one',
  after(submission, strength, random) {
    const count = recordsIn(submission.primary, strength);
    const { from, to } = twoPlaces(submission.primary.time.length, count, random);
    const copied = (column: Float64Array) => {
      const out = column.slice();
      out.copyWithin(to, from, from + count);
      return out;
    };
    return toldOtherwise(
      submission,
      Object.fromEntries(
        Object.entries(submission.primary.channels).map(([channel, column]) => [channel, copied(column)]),
      ) as Columns,
    );
  },
};

/** Power alone is copied, a little higher: cadence and heart rate stay. */
export const powerCopied: Fault = {
  ...shared,
  name: 'power copied and lifted by some watts',
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const count = recordsIn(submission.primary, strength);
    const { from, to } = twoPlaces(power.length, count, random);
    const lift = random.integer(2, 12);
    for (let k = 0; k < count; k++) power[to + k] = power[from + k]! > 0 ? power[from + k]! + lift : 0;
    return toldOtherwise(submission, { power });
  },
};

/** A recording is made longer by going round once more. */
export const lapInserted: Fault = {
  ...shared,
  name: 'stretch inserted once more',
  after(submission, strength, random) {
    const { primary } = submission;
    const [first, last] = raceRecords(submission);
    const length = Math.min(recordsIn(primary, strength), Math.floor((last - first) / 3));
    const from = random.integer(first, last - length - 1);
    const all = [...primary.time.keys()];
    const records = [
      ...all.slice(0, from + length),
      ...all.slice(from, from + length),
      ...all.slice(from + length),
    ];
    const gained = primary.time[from + length]! - primary.time[from]!;
    const time = Float64Array.from(records, (k, at) => primary.time[k]! + (at < from + length ? 0 : gained));
    return withParts(submission, { primary: retotalled(picked(primary, records, time)) });
  },
};

/** Records that stand for so many seconds: fewer where the recorder leaves seconds out. */
function recordsIn({ time }: Recording, seconds: number): number {
  const apart = (time.at(-1)! - time[0]!) / (time.length - 1);
  return Math.round(seconds / Math.max(1, Math.round(apart)));
}

function twoPlaces(
  count: number,
  length: number,
  random: { integer(low: number, high: number): number },
): { from: number; to: number } {
  const from = random.integer(30, Math.floor(count / 2) - length - 10);
  return { from, to: random.integer(Math.floor(count / 2), count - length - 10) };
}
