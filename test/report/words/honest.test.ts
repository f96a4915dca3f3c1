import { expect, it } from 'vitest';
import { outline } from '../../../src/report/outline.ts';
import { honestEnds, honestSaid } from '../../../src/report/words/honest.ts';
import type { Finding } from '../../../src/types.ts';
import { makeReport } from '../make-report.ts';

const [first] = makeReport({}, 600).findings as [Finding, ...Finding[]];

it('says where honest pairs lie, within their claims and as found', () => {
  const expected = { declared: { centre: -2, spread: 1.5 }, field: { centre: -2, spread: 4.5 } };
  expect(honestSaid({ ...first, subject: 'pair:0', unit: '%', expected })).toBe(
    'About 95 of 100 honest pairs lie between −5 and 1 % where meters keep what is claimed for them, and between −11 and 7 % with meters as found in the field.'.replaceAll(
      ' %',
      '\u00a0%',
    ),
  );
  expect(honestEnds(expected.field)).toEqual([-11, 7]);
});

it('says it once where claims make no difference, and not at all where nothing is known', () => {
  const range = { centre: 0, spread: 2 };
  const said = honestSaid({
    ...first,
    subject: 'rider',
    unit: 'W',
    expected: { declared: range, field: range },
  });
  expect(said).toBe('About 95 of 100 honest submissions lie between −4 and 4\u00a0W.');
  expect(honestSaid({ ...first, expected: null })).toBeNull();
});

it('stands beside every finding whose measure states it, raised or fine', () => {
  const { raised, fine } = outline(makeReport({}, 600));
  for (const { finding, honest } of [...raised.flatMap(({ findings }) => findings), ...fine])
    expect(honest === null).toBe(finding.expected === null);
});
