import { describe, expect, it } from 'vitest';
import { ruleLimitSaid, ruleNumber } from '../../../src/report/words/limit.ts';

describe('a limit as its rule sets it', () => {
  it('bears the unit of the value', () => {
    expect(ruleLimitSaid({ 'at least': 20, of: 'value', end: 'cautious' }, 's')).toBe(
      'at least 20\u00a0s, by the cautious end of the interval',
    );
  });

  it('is said of a share as the file has it and as a reader does', () => {
    expect(ruleNumber(0.9, 'share')).toBe('0.9 (90\u00a0%)');
  });

  it('names the spread that it is a multiple of', () => {
    expect(
      ruleLimitSaid({ 'at least': 2.4, 'at most': -2.9, of: 'declared spread', end: 'estimate' }, '%'),
    ).toBe(
      'at least 2.4 honest spreads of meters as declared or at most −2.9 honest spreads of meters as declared, by the estimate itself',
    );
  });

  it('is a bare number where the unit is not known', () => {
    expect(ruleLimitSaid({ 'at most': 0.33, of: 'value', end: 'cautious' }, null)).toBe(
      'at most 0.33, by the cautious end of the interval',
    );
  });
});
