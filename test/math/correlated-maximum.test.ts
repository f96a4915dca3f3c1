import { describe, expect, it } from 'vitest';
import { chanceOfBoth, chanceOfMaximum, heightOfMaximum } from '../../src/math/correlated-maximum.ts';
import { normalProbability } from '../../src/math/normal.ts';
import { Random } from '../make/random.ts';

describe('chanceOfBoth', () => {
  it('is the product for r = 0, the single chance for r = 1, and 1/4 + arcsin(r)/2π at the middle', () => {
    for (const h of [0, 1, 2.326348, 3.090232]) {
      expect(chanceOfBoth(h, 0)).toBeCloseTo(normalProbability(-h) ** 2, 12);
      expect(chanceOfBoth(h, 1) / normalProbability(-h)).toBeCloseTo(1, 3);
    }
    // Sheppard 1899.
    for (const r of [0.2, 0.5, 0.9])
      expect(chanceOfBoth(0, r)).toBeCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), 12);
  });
});

describe('chanceOfMaximum', () => {
  it('adds up for independent values, and is the single chance for identical ones', () => {
    const single = normalProbability(-3.090232); // 0.001
    expect(chanceOfMaximum(3.090232, [])).toBeCloseTo(single, 12);
    expect(chanceOfMaximum(3.090232, [0, 0, 0])).toBeCloseTo(4 * single - 3 * single ** 2, 9);
    expect(chanceOfMaximum(3.090232, [1, 1, 1]) / single).toBeCloseTo(1, 2);
  });

  it('agrees with simulated chains of correlated values, on the safe side', () => {
    const random = new Random('chains of correlated values');
    const correlations = [0.9, 0.85, 0.95, 0.7, 0.9, 0.8];
    const draws = 60_000;
    const height = 2.5;
    let reached = 0;
    for (let i = 0; i < draws; i++) {
      let value = random.normal();
      let highest = value;
      for (const r of correlations) {
        value = r * value + Math.sqrt(1 - r * r) * random.normal();
        highest = Math.max(highest, value);
      }
      if (highest >= height) reached++;
    }
    const simulated = reached / draws;
    const error = Math.sqrt(simulated / draws);
    const bound = chanceOfMaximum(height, correlations);
    expect(bound).toBeGreaterThan(simulated - 3 * error);
    expect(bound).toBeLessThan(1.15 * simulated + 3 * error);
  });

  it('has its inverse', () => {
    const correlations = [0.9, 0.5];
    expect(chanceOfMaximum(heightOfMaximum(0.0005, correlations), correlations)).toBeCloseTo(0.0005, 9);
  });
});
