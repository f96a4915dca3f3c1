import { expect, test } from 'vitest';
import { contentMarks } from '../../../src/measure/recording/marks.ts';
import { ruleOf } from '../measure-of.ts';
import { ride } from '../series.ts';

const options = ruleOf('duplicate-submission').options as never;
const marks = (power: number[]) => contentMarks(Float64Array.from(power), options);
const common = (a: number[], b: number[]) => {
  const theirs = new Set(marks(b));
  return marks(a).filter((mark) => theirs.has(mark)).length;
};
const one = ride(3600, 1);
const other = ride(3600, 2);

test('two rides have no mark in common', () => {
  expect(common(one, other)).toBe(0);
});

test('a shared minute is bound to leave one, wherever it lies', () => {
  for (const at of [0, 777, 2000, 3540]) {
    const mixed = [...other.slice(0, 1234), ...one.slice(at, at + 60), ...other.slice(1234)];
    expect(common(one, mixed)).toBeGreaterThan(0);
  }
});

test('they are few, and constant stretches leave none', () => {
  expect(marks(one).length).toBeLessThan(one.length / 10);
  expect(marks(one.map(() => 200))).toHaveLength(0);
  expect(marks(one.slice(0, 40))).toHaveLength(0);
});
