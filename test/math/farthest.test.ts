import { expect, it } from 'vitest';
import { widthOfFarthest } from '../../src/math/farthest.ts';
import { Random } from '../make/random.ts';

it.each([3, 4, 5])('holds the farthest of %d values from the mean of the others 95 of 100 times', (count) => {
  const random = new Random(`farthest ${count}`);
  const single = Math.sqrt(1 + 1 / (count - 1));
  const draws = 40_000;
  let inside = 0;
  let insideOfOne = 0;
  for (let draw = 0; draw < draws; draw++) {
    const values = Array.from({ length: count }, () => random.normal());
    const sum = values.reduce((a, b) => a + b, 0);
    const distances = values.map((value) => Math.abs(value - (sum - value) / (count - 1)));
    const farthest = Math.max(...distances) / single;
    if (farthest <= 1.96 * widthOfFarthest(count)) inside++;
    if (farthest <= 1.96) insideOfOne++;
  }
  expect(inside / draws).toBeGreaterThan(0.947);
  expect(inside / draws).toBeLessThan(0.96);
  // The range of one meter alone would hold too few.
  expect(insideOfOne / draws).toBeLessThan(0.88);
});
