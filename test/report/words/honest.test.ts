import { expect, it } from 'vitest';
import { outline } from '../../../src/report/outline.ts';
import { honestEnds, honestSaid, shadingSaid } from '../../../src/report/words/honest.ts';
import type { Finding } from '../../../src/types.ts';
import { makeReport } from '../make-report.ts';

const [first] = makeReport({}, 600).findings as [Finding, ...Finding[]];

const both = { query: { atLeast: 5, atMost: -9, end: 'estimate' } } as const;

it('says where honest pairs lie, within their claims and as found', () => {
  const expected = { declared: { centre: -2, spread: 1.5 }, field: { centre: -2, spread: 4.5 } };
  expect(honestSaid({ ...first, subject: 'pair:0', unit: '%', expected, limits: both })).toBe(
    'About 95 of 100 honest pairs lie between −5 and 1 % where meters keep what is claimed for them, and between −11 and 7 % with meters as found in the field.'.replaceAll(
      ' %',
      '\u00a0%',
    ),
  );
  expect(honestEnds({ limits: both }, expected.field)).toEqual({ low: -11, high: 7 });
});

it('says it once where claims make no difference, and not at all where nothing is known', () => {
  const range = { centre: 0, spread: 2 };
  const said = honestSaid({
    ...first,
    subject: 'rider',
    unit: 'W',
    expected: { declared: range, field: range },
    limits: both,
  });
  expect(said).toBe('About 95 of 100 honest submissions lie between −4 and 4\u00a0W.');
  expect(honestSaid({ ...first, expected: null })).toBeNull();
});

it('says of a limit on one side where honest submissions end on that side, and of the other nothing', () => {
  const expected = { declared: { centre: 0, spread: 1 }, field: { centre: 0, spread: 3 } };
  const onlyAbove = { query: { atLeast: 8, atMost: null, end: 'estimate' } } as const;
  const finding = {
    ...first,
    subject: 'primary',
    unit: '%' as const,
    value: -28,
    expected,
    limits: onlyAbove,
  };
  expect(honestSaid(finding)).toBe(
    'At least 97 of 100 honest submissions lie below 2\u00a0% where meters keep what is claimed for them, and below 6\u00a0% with meters as found in the field.',
  );
  expect(shadingSaid(finding)).toContain('where at least 97 of 100 honest submissions lie');
  const onlyBelow = { query: { atLeast: null, atMost: -8, end: 'estimate' } } as const;
  expect(honestEnds({ limits: onlyBelow }, expected.field)).toEqual({ low: -6, high: null });
});

it('stands beside every finding whose measure states it, raised or fine', () => {
  const { raised, fine } = outline(makeReport({}, 600));
  for (const { finding, honest } of [...raised.flatMap(({ findings }) => findings), ...fine])
    expect(honest === null).toBe(finding.expected === null);
});
