import { fakeDigest, type Random } from '../random.ts';
import type { Submission } from '../submission.ts';
import { picked, retotalled, toldOtherwise, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const whole = {
  rules: ['duplicate-submission'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['event'],
  source: practice,
} as const;

const part = {
  rules: ['duplicate-submission'],
  measure: 'seconds that are another rider’s',
  strengths: { borderline: 60, moderate: 150, clear: 300 },
  needs: ['event'],
  source: practice,
} as const;

/** One file handed in by two riders, under another name, at another time and with other bytes. */
export const sameFile: Fault = {
  ...whole,
  name: 'another rider’s recording, saved anew',
  after(submission, _, random) {
    const primary = submission.others[0]!;
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

/** Power that is multiplied leaves no mark: what is left to compare is cadence. */
const byCadence = { needs: ['event', 'cadence'] } as const;

/** The same with a stretch cut off and power multiplied: cadence stays. */
export const sameFileRescaled: Fault = {
  ...whole,
  ...byCadence,
  name: 'another rider’s recording, cut and multiplied',
  after(submission, _, random) {
    const primary = submission.others[0]!;
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

/** A stretch of another rider's stands in place of one's own, all channels alike. */
export const partOfAnother: Fault = {
  ...part,
  name: 'stretch of another rider’s recording put in',
  after: (submission, strength, random) => withStretch(submission, strength, random, 1),
};

/** The same multiplied: cadence stays. */
export const partOfAnotherRescaled: Fault = {
  ...part,
  ...byCadence,
  name: 'stretch of another rider’s recording put in and multiplied',
  after: (submission, strength, random) =>
    withStretch(submission, strength, random, random.between(1.03, 1.12)),
};

function withStretch(submission: Submission, seconds: number, random: Random, factor: number): Submission {
  const own = submission.primary.channels;
  const theirs = submission.others[0]!.channels;
  const place = (length: number) => random.integer(60, length - seconds - 60);
  const [from, to] = [place(theirs.power!.length), place(own.power!.length)];
  const put = (channel: 'power' | 'cadence' | 'heartRate', by: number) => {
    const [column, source] = [own[channel], theirs[channel]];
    if (column === undefined || source === undefined) return {};
    const out = column.slice();
    for (let k = 0; k < seconds; k++)
      out[to + k] = by === 1 ? source[from + k]! : Math.round(by * source[from + k]!);
    return { [channel]: out };
  };
  return toldOtherwise(submission, { ...put('power', factor), ...put('cadence', 1), ...put('heartRate', 1) });
}
