import { expect, it } from 'vitest';
import { cautions } from '../../../src/report/words/cautions.ts';
import { makeReport } from '../make-report.ts';

const report = makeReport({}, 600);
const sharing = (coverage: number, secure = true) =>
  cautions({ ...report, alignment: report.alignment.map((one) => ({ ...one, coverage, secure })) }).filter(
    (one) => one.includes('of the race with the primary'),
  );

it('says of which part of the race two meters speak, where it is not nearly all of it', () => {
  expect(sharing(0.399).map((one) => one.replaceAll('\u00a0', ' '))).toEqual([
    'The second recording shares 39.9 % of the race with the primary: what is said of the two is said of that part, and nothing of the rest.',
  ]);
  expect(sharing(0.9)).toEqual([]);
  // Of meters that could not be put on one clock nothing is said at all.
  expect(sharing(0.2, false)).toEqual([]);
});
