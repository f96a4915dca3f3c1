import { expect, test } from 'vitest';
import { likeliestPath, type Near } from '../../src/align/path.ts';
import { settings } from '../../src/align/settings.ts';
import { Random } from '../make/random.ts';

/** Three neighbours, two others that are neighbours, and one by itself. */
const near: readonly Near[] = [
  [0, 2],
  [0, 2],
  [0, 2],
  [3, 4],
  [3, 4],
  [5, 5],
];
const windows = 5;

/** Every way there is. */
function* ways(length: number): Generator<number[]> {
  if (length === 0) yield [];
  else for (const way of ways(length - 1)) for (let s = 0; s < near.length; s++) yield [...way, s];
}

function scoreOf(way: readonly number[], likelihoods: readonly Float64Array[]): number {
  return way.reduce((sum, s, w) => {
    const before = way[w - 1] ?? s;
    const [first, last] = near[s]!;
    const cost = before >= first && before <= last ? settings.creepCost : settings.jumpCost;
    return sum + likelihoods[s]![w]! - (before === s ? 0 : cost);
  }, 0);
}

test.each([1, 2, 3, 4, 5, 6])('no way through the windows is likelier than the one found (%i)', (seed) => {
  const random = new Random(`path ${seed}`);
  const likelihoods = near.map(() => Float64Array.from({ length: windows }, () => 20 * random.normal()));
  const found = scoreOf([...likeliestPath(likelihoods, near)], likelihoods);
  const best = Math.max(...[...ways(windows)].map((way) => scoreOf(way, likelihoods)));
  expect(found).toBeCloseTo(best, 9);
});
