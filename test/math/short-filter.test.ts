import { describe, expect, it } from 'vitest';
import { shortFilter } from '../../src/math/short-filter.ts';
import { Random } from '../make/random.ts';

const length = 400;
const x = Float64Array.from({ length }, (_, t) => 200 + 40 * Math.sin(t / 9) + new Random(`x ${t}`).normal());
const truth = [0.1, 0.5, 0.3, 0.15, -0.05];
const lag = 7;
const y = x.map(
  (_, t) => 12 + truth.reduce((sum, weight, k) => sum + weight * (x[t - lag - (k - 2)] ?? 0), 0),
);

const close = (weights: Float64Array, wanted: readonly number[]) => {
  for (const [k, weight] of wanted.entries()) expect(weights[k]).toBeCloseTo(weight, 8);
};

describe('a short filter', () => {
  it('is found by its weights and intercept', () => {
    const fit = shortFilter(y, x, lag, 2, 50, 350)!;
    close(fit.weights, truth);
    expect(fit.intercept).toBeCloseTo(12, 6);
    expect(fit.count).toBe(300);
  });

  it('is found around gaps of both and seconds that do not count, which are left out with all that sees them', () => {
    const gapped = x.slice();
    const over = y.slice();
    gapped[100] = Number.NaN;
    over[200] = Number.NaN;
    over.fill(0, 250, 260);
    const fit = shortFilter(over, gapped, lag, 2, 50, 350, (t) => t < 250 || t >= 260)!;
    close(fit.weights, truth);
    expect(fit.count).toBe(300 - 5 - 1 - 10);
  });

  it('reaches no further than both do', () => {
    expect(shortFilter(y, x, lag, 2, -20, 900)!.count).toBe(length - lag - 2);
    expect(shortFilter(y, x, -lag, 2, -20, 900)!.count).toBe(length - lag - 2);
  });

  it('is none where nothing enters, or taps cannot be told apart', () => {
    expect(shortFilter(y, x, lag, 2, 50, 50)).toBeNull();
    expect(shortFilter(y, x.map(Math.floor).fill(200), lag, 2, 50, 350)).toBeNull();
  });
});
