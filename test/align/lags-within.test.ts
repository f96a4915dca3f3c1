import { describe, expect, it } from 'vitest';
import { gainWithin } from '../../src/align/lags.ts';
import { lagsWithin } from '../../src/align/lags-within.ts';
import { Random } from '../make/random.ts';

const random = new Random('lags within');
const primary = Float64Array.from({ length: 900 }, (_, t) => (t % 11 === 0 ? 0 : random.normal()));
const second = Float64Array.from({ length: 800 }, (_, t) => 0.5 * (primary[t + 30] ?? 0) + random.normal());

/** Each lag by itself. */
function oneByOne([from, to]: readonly [number, number], low: number, high: number, least: number) {
  const all = Array.from({ length: high - low + 1 }, (_, k) => low + k);
  return all
    .map((lag) => ({ lag, gain: gainWithin(primary, second, from, to, lag) }))
    .filter(({ gain }) => gain >= least);
}

describe('the lags that a stretch proposes', () => {
  it.each([
    ['in the middle', [300, 600], -200, 200],
    ['at the beginning', [0, 200], -400, 700],
    ['beyond the end of the second', [700, 900], -900, 900],
    ['out of reach', [0, 100], 300, 400],
  ] as const)('are those whose gain by themselves is enough: %s', (_, stretch, low, high) => {
    for (const least of [0.5, 3, 7])
      expect(lagsWithin(primary, second, stretch, [low, high], least)).toEqual(
        oneByOne(stretch, low, high, least),
      );
  });

  it('hold the true one', () => {
    expect(lagsWithin(primary, second, [300, 600], [-200, 200], 20).map(({ lag }) => lag)).toEqual([30]);
  });
});
