import { expect, it } from 'vitest';
import { wanderIn, wanderVariance } from '../../src/math/slow-wander.ts';
import { wander } from '../make/noise.ts';
import { Random } from '../make/random.ts';

const every = (n: number, value: (i: number) => number) =>
  Float64Array.from({ length: n }, (_, i) => value(i));

it('gives a weighted sum the variance of its covariances, gaps and all', () => {
  const random = new Random('weights');
  const at = every(50, (i) => 30 * i + (i > 20 ? 600 : 0));
  const weights = every(50, () => random.normal());
  let direct = 0;
  for (let i = 0; i < 50; i++)
    for (let j = 0; j < 50; j++)
      direct += weights[i]! * weights[j]! * Math.exp(-Math.abs(at[i]! - at[j]!) / 600);
  expect(wanderVariance(weights, at, 600)).toBeCloseTo(direct, 9);
});

it('of a wander far slower than the ride takes a shift whole, and nothing of a difference', () => {
  const at = every(40, (i) => i);
  const mean = every(40, () => 1 / 40);
  const halves = every(40, (i) => (i < 20 ? 1 : -1) / 20);
  expect(wanderVariance(mean, at, 1e9)).toBeCloseTo(1, 6);
  expect(wanderVariance(halves, at, 1e9)).toBeCloseTo(0, 6);
});

it.each([0, 1, 3])('tells a wander of SD %d in noise of SD 1, on average over many rides', (spread) => {
  const random = new Random(`wander ${spread}`);
  const draws = 300;
  let sum = 0;
  for (let draw = 0; draw < draws; draw++) {
    const slow = wander(random, 120, 30, 600);
    const values = every(120, (i) => spread * slow[i]! + random.normal());
    const mean = values.reduce((a, b) => a + b, 0) / 120;
    sum += wanderIn(
      values.map((value) => value - mean),
      3600,
      600,
    );
  }
  // What is below 0 counts as none, so that of no wander a little is found.
  expect(sum / draws).toBeGreaterThan(0.7 * spread ** 2);
  expect(sum / draws).toBeLessThan(1.25 * spread ** 2 + 0.1);
});
