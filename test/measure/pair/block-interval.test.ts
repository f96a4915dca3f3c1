import { expect, it } from 'vitest';
import { blockInterval } from '../../../src/measure/pair/block-interval.ts';

it('is that of a mean of neighbours that resemble each other by 0.3', () => {
  // Of -2 … 2: s²/n = 0.5, t with four degrees of freedom 2.776445 (tables), √(1.3/0.7) = 1.362770.
  expect(blockInterval(Float64Array.of(-2, -1, 0, 1, 2))).toBeCloseTo(2.776445 * Math.SQRT1_2 * 1.36277, 4);
});
it('is none of fewer than four blocks', () => {
  expect(blockInterval(Float64Array.of(-1, 0, 1))).toBeNull();
  expect(blockInterval(Float64Array.of(-1, 0, 1, 0))).not.toBeNull();
});
