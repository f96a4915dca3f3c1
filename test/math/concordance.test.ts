import { describe, expect, it } from 'vitest';
import { concordance, concordanceOf } from '../../src/math/concordance.ts';
import { Random } from '../make/random.ts';
import { peakFlow } from './handbook.ts';

const column = (values: readonly number[]) => Float64Array.from(values);

describe('concordance', () => {
  // Data: Bland & Altman 1986, Lancet 1:307-310, first readings; computed with epiR 2.0.57 (epi.ccc). Moments over
  // n - 1 would give 0.942752467.
  it('is that of Lin 1989 for the two peak flow meters', () => {
    const [x, y] = [column(peakFlow.wright1), column(peakFlow.mini1)];
    const found = concordance(x, y)!;
    expect(found.value).toBeCloseTo(0.942742431427484, 12);
    expect(concordance(y, x)!.value).toBeCloseTo(found.value, 12);
    // Correlation times what scale and place take: 0.9432794469 · 0.999430693136343, from the same source.
    expect(found.value).toBeCloseTo(0.9432794469 * 0.999430693136343, 9);
    // Lin's own interval, for independent points: 0.8505 to 0.9787.
    expect(found.low).toBeLessThan(found.value);
    expect(found.high).toBeGreaterThan(found.value);
    expect(found.high).toBeLessThan(1);
  });

  /** Shares of draws whose interval holds the truth, of values that keep so much of the one before. */
  function held(keeps: number): number {
    const random = new Random(`concordance ${keeps}`);
    const draws = 400;
    const n = 100;
    let count = 0;
    for (let d = 0; d < draws; d++) {
      const x = Float64Array.from({ length: n }, () => random.normal(0, 0.3));
      let error = random.normal(0, 0.05);
      const y = x.map((value) => {
        error = keeps * error + Math.sqrt(1 - keeps ** 2) * random.normal(0, 0.05);
        return value + 0.04 + error;
      });
      const { low, high } = concordance(x, y)!;
      const truth = (2 * 0.3 ** 2) / (2 * 0.3 ** 2 + 0.05 ** 2 + 0.04 ** 2);
      if (low <= truth && truth <= high) count++;
    }
    return count / draws;
  }

  it.each([0, 0.5])('holds the truth in about 95 of 100 draws of neighbours that share %f', (keeps) => {
    expect(held(keeps)).toBeGreaterThan(0.91);
    expect(held(keeps)).toBeLessThan(0.99);
  });

  it('says nothing of what does not vary, or does not differ', () => {
    expect(concordance(column(Array(9).fill(5)), column(Array(9).fill(5)))).toBeNull();
    expect(concordance(column(peakFlow.wright1), column(peakFlow.wright1))).toBeNull();
  });
});

// From its definition: of variances a² + e² and covariance a², means d apart, 2a²/(2a² + e² + d²).
it('is told from what two columns share, how far apart they lie and how they scatter', () => {
  const random = new Random('shared');
  const shared = Float64Array.from({ length: 50_000 }, () => random.normal(5, 0.2));
  const y = shared.map((value) => value + 0.05 + random.normal(0, 0.03));
  expect(concordanceOf(0.2 ** 2, 0.05, 0.03)).toBeCloseTo(concordance(shared, y)!.value, 3);
  expect(concordanceOf(0.04, 0, 0)).toBe(1);
  // The same difference, on half the range: a quarter of the variance.
  expect(concordanceOf(0.01, 0.05, 0.03)).toBeLessThan(concordanceOf(0.04, 0.05, 0.03));
});
