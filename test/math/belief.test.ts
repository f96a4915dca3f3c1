import { describe, expect, it } from 'vitest';
import { abilityFrom } from '../../src/math/ability.ts';
import type { Belief } from '../../src/math/belief.ts';
import { beliefQuantile, blurred, chanceAbove, evenBelief, valueExceeded } from '../../src/math/belief.ts';

/** Believes a normal distribution, cut off at the ends of the grid. */
function normalBelief(centre: number, sd: number, first: number, last: number, step: number): Belief {
  const { weights } = evenBelief(first, last, step);
  const densities = weights.map((_, i) => Math.exp(-0.5 * ((first + i * step - centre) / sd) ** 2));
  const sum = densities.reduce((a, b) => a + b, 0);
  return { first, step, weights: densities.map((density) => density / sum) };
}

const mean = ({ first, step, weights }: Belief) =>
  weights.reduce((sum, w, i) => sum + w * (first + i * step), 0);
const spread = (belief: Belief) => {
  const centre = mean(belief);
  return Math.sqrt(
    belief.weights.reduce((sum, w, i) => sum + w * (belief.first + i * belief.step - centre) ** 2, 0),
  );
};

describe('abilityFrom, when every window is an all-out effort', () => {
  /*
   * Normal-normal case: between riders N(300, 30²), within a rider SD 6; posterior mean, predictive SD and the
   * 99 % range m ± 2.575829·√(σ² + v), v = 1/(1/τ² + n/σ²). Constructed, computed from the closed form.
   */
  const cases: [number[], number, number, number, number][] = [
    [[], 300, 30.594117, 221.1948, 378.8052],
    [[312], 311.538462, 8.403296, 289.893, 333.1839],
    [[312, 318, 309], 312.828947, 6.916799, 295.0125, 330.6454],
    [[312, 318, 309, 315, 311, 316], 313.410596, 6.477674, 296.7252, 330.096],
  ];
  it.each(cases)('is the conjugate update: %j', (history, posterior, predictive, low, high) => {
    const prior = normalBelief(300, 30, 120, 480, 0.25);
    const windows = history.map((value) => ({ value, age: 0, heldBack: false }));
    const belief = abilityFrom(windows, { spread: 6, drift: 0, reach: 1000, shares: [1] }, prior);
    expect(mean(belief)).toBeCloseTo(posterior, 2);
    expect(Math.hypot(spread(belief), 6)).toBeCloseTo(predictive, 2);
    expect(valueExceeded(belief, 0.995, 6)).toBeCloseTo(low, 1);
    expect(valueExceeded(belief, 0.005, 6)).toBeCloseTo(high, 1);
  });
});

describe('abilityFrom, when windows are lower bounds', () => {
  const model = { spread: 2, drift: 0, reach: 12, shares: [0, 0.1, 0.3, 0.6, 1] };
  const grid = evenBelief(80, 150, 0.25);
  const past = (value: number, age = 0, heldBack = false) => ({ value, age, heldBack });

  it('knows more from a cluster than from a lone top window', () => {
    const cluster = abilityFrom(
      [100, 99.5, 100.5, 99, 101, 93, 90].map((v) => past(v)),
      model,
      grid,
    );
    const lone = abilityFrom(
      [100, 93, 90].map((v) => past(v)),
      model,
      grid,
    );
    expect(valueExceeded(cluster, 0.001, 2)).toBeLessThan(valueExceeded(lone, 0.001, 2));
  });
  it('learns nothing but a lower bound from windows in which the rider held back', () => {
    const belief = abilityFrom(
      [100, 100, 100, 100].map((v) => past(v, 0, true)),
      model,
      grid,
    );
    expect(chanceAbove(belief, 140, 2)).toBeGreaterThan(0.1);
    expect(beliefQuantile(belief, 0.01)).toBeGreaterThan(97);
  });
  it('lets ability wander from old windows, as one', () => {
    const drifting = { ...model, drift: 2 };
    const values = [100, 101, 99, 100, 100.5, 99.5, 100, 101];
    const fresh = abilityFrom(
      values.map((v) => past(v, 5)),
      drifting,
      grid,
    );
    const old = abilityFrom(
      values.map((v) => past(v, 270)),
      drifting,
      grid,
    );
    // Nine months: SD 2·√9 = 6, whatever the number of windows.
    expect(spread(old)).toBeGreaterThan(5.5);
    expect(spread(fresh)).toBeLessThan(1.5);
  });
});

describe('beliefs', () => {
  it('blur by convolution: variances add', () => {
    const belief = blurred(normalBelief(0, 3, -40, 40, 0.1), 4);
    expect(spread(belief)).toBeCloseTo(5, 2);
    expect(belief.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });
  it('chance and value are each other’s inverse', () => {
    const belief = normalBelief(10, 2, -10, 30, 0.05);
    // √(2² + 1.5²) = 2.5; one-sided 0.001: z = 3.090232.
    expect(valueExceeded(belief, 0.001, 1.5)).toBeCloseTo(10 + 3.090232 * 2.5, 2);
    expect(chanceAbove(belief, 10 + 3.090232 * 2.5, 1.5)).toBeCloseTo(0.001, 5);
    expect(beliefQuantile(belief, 0.975)).toBeCloseTo(10 + 1.959964 * 2, 2);
  });
});
