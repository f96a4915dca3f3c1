import { describe, expect, it } from 'vitest';
import { falseAlarmSaid } from '../../../src/report/words/source.ts';
import { makeRule } from '../make-report.ts';

const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ');
const limit = { 'at least': 1, of: 'value', end: 'cautious' } as const;

describe('how often a rule asks honest riders', () => {
  it('is said for each level that it has, with the bound', () => {
    const rule = makeRule({ id: 'wobble', limits: { query: limit, refer: limit } });
    expect(plain(falseAlarmSaid(rule))).toBe(
      'Simulated honest submissions: of 8520 with meters within their makers’ claims 0.05 % reach query (at most 0.1 %), 0 % reach refer (at most 0.04 %); of 8520 with meters as found in the field 1.2 % reach query (at most 1.4 %), 0.01 % reach refer (at most 0.06 %).',
    );
  });

  it('is not said of a remark, nor where nobody measured it', () => {
    expect(falseAlarmSaid(makeRule({ id: 'wobble', limits: { note: limit } }))).toBeNull();
    const source = { kind: 'common practice', note: 'Everyday.' } as const;
    expect(falseAlarmSaid(makeRule({ id: 'wobble', limits: { query: limit }, source }))).toBeNull();
  });
});
