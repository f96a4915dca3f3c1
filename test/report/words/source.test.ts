import { describe, expect, it } from 'vitest';
import { falseAlarmSaid } from '../../../src/report/words/source.ts';
import { makeRule } from '../make-report.ts';

const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ');
const limit = { 'at least': 1, of: 'value', end: 'cautious' } as const;

describe('how often a rule asks honest riders', () => {
  it('is said for each level that it has, with the bound', () => {
    const rule = makeRule({ id: 'wobble', limits: { query: limit, refer: limit } });
    expect(plain(falseAlarmSaid(rule))).toBe(
      'Of 8520 simulated honest submissions with meters within their makers’ claims, 4 reach query (at most 1 in 1000); none reaches refer (at most 1 in 2500). Of 8520 with meters as found in the field, 102 reach query, about 12 in 1000 (at most 14 in 1000); 1 reaches refer (at most 1 in 1600).',
    );
  });

  it('is not said of a remark, nor where nobody measured it', () => {
    expect(falseAlarmSaid(makeRule({ id: 'wobble', limits: { note: limit } }))).toBeNull();
    const source = { kind: 'common practice', note: 'Everyday.' } as const;
    expect(falseAlarmSaid(makeRule({ id: 'wobble', limits: { query: limit }, source }))).toBeNull();
  });
});
