import { describe, expect, it } from 'vitest';
import { shareOf } from './bounds.ts';

describe('bounds of a share', () => {
  // Two-sided 95 % limits of Clopper & Pearson for 10 trials, as printed in tables of exact binomial limits
  // (e.g. Hald 1952, Statistical Tables and Formulas, table XI): each end is a one-sided 97.5 % bound.
  it.each([
    [0, 0, 0.3085],
    [1, 0.0025, 0.445],
    [2, 0.0252, 0.5561],
    [5, 0.1871, 0.8129],
    [8, 0.4439, 0.9748],
    [10, 0.6915, 1],
  ])('are those of the tables: %i of 10', (count, lower, upper) => {
    const share = shareOf(count, 10, 0.975);
    expect(share.lower).toBeCloseTo(lower, 4);
    expect(share.upper).toBeCloseTo(upper, 4);
  });

  it('follow in closed form where nothing, or everything, was found', () => {
    for (const n of [1, 5, 59, 350, 8500]) {
      expect(shareOf(0, n).upper).toBeCloseTo(1 - 0.05 ** (1 / n), 10);
      expect(shareOf(n, n).lower).toBeCloseTo(0.05 ** (1 / n), 10);
    }
    // The rule of three: nothing in n draws leaves room for about 3 / n.
    expect(shareOf(0, 8500).upper * 8500).toBeCloseTo(3, 1);
  });

  it('are exact: just beyond a bound such a sample is as rare as promised', () => {
    const { lower, upper } = shareOf(17, 350);
    const tail = (p: number, from: number, to: number) => {
      let sum = 0;
      let term = (1 - p) ** 350;
      for (let k = 0; k <= to; k++) {
        if (k >= from) sum += term;
        term *= ((350 - k) * p) / ((k + 1) * (1 - p));
      }
      return sum;
    };
    expect(tail(upper, 0, 17)).toBeCloseTo(0.05, 8);
    expect(tail(lower, 17, 350)).toBeCloseTo(0.05, 8);
  });

  it('say nothing of no draws', () => {
    expect(shareOf(0, 0)).toMatchObject({ share: Number.NaN, lower: 0, upper: 1 });
  });
});
