import type { Columns } from '../../../src/types.ts';
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
    const { from, to } = twoPlaces(submission.primary.time.length, strength, random);
    const copied = (column: Float64Array) => {
      const out = column.slice();
      out.copyWithin(to, from, from + strength);
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
    const { from, to } = twoPlaces(power.length, strength, random);
    const lift = random.integer(2, 12);
    for (let k = 0; k < strength; k++) power[to + k] = power[from + k]! > 0 ? power[from + k]! + lift : 0;
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
    const length = Math.min(Math.round(strength), Math.floor((last - first) / 3));
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

function twoPlaces(
  count: number,
  length: number,
  random: { integer(low: number, high: number): number },
): { from: number; to: number } {
  const from = random.integer(30, Math.floor(count / 2) - length - 10);
  return { from, to: random.integer(Math.floor(count / 2), count - length - 10) };
}
