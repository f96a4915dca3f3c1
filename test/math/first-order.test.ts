import { expect, it } from 'vitest';
import { firstOrder } from '../../src/math/first-order.ts';

it('answers a step by 1 - exp(-t/tau)', () => {
  const step = new Float64Array(300).fill(100);
  step[0] = 0;
  const answer = firstOrder(step, 55.7);
  for (const t of [1, 30, 56, 200]) expect(answer[t]).toBeCloseTo(100 * (1 - Math.exp(-t / 55.7)), 9);
});

it('stays where it is while nothing is known', () => {
  const answer = firstOrder(Float64Array.of(Number.NaN, 100, Number.NaN, Number.NaN, 200), 10);
  expect([...answer.subarray(0, 4)]).toEqual([100, 100, 100, 100]);
  expect(answer[4]!).toBeGreaterThan(100);
});
