import { expect, test } from 'vitest';
import { combScores } from '../../src/measure/recording/comb-scores.ts';
import { type Comb, WattHistogram } from '../../src/measure/recording/watt-histogram.ts';
import { Random } from '../make/random.ts';

const combs: Comb[] = [
  { factor: 1.03, rounding: 'nearest' },
  { factor: 1.0712, rounding: 'down' },
  { factor: 0.93, rounding: 'nearest' },
];

/** Stretches of one ride, half an hour each. */
function histograms(count: number, flankWatts: number): WattHistogram[] {
  const random = new Random('comb scores');
  const watts = Int32Array.from({ length: 1800 * count }, () => Math.round(random.between(50, 350)));
  return Array.from(
    { length: count },
    (_, k) =>
      new WattHistogram(watts, 1800 * k, 1800 * (k + 1), 340, {
        strayShare: 0.02,
        flankWatts,
        commonShare: 0.98,
      }),
  );
}

test.each([
  [1, 4],
  [4, 4],
  [6, 4],
  [6, 3],
])('of %i histograms with flanks of %i W each is scored as it is by itself', (count, flankWatts) => {
  const all = histograms(count, flankWatts);
  const scores = combScores(combs, all);
  expect(scores).toHaveLength(count);
  for (const [k, histogram] of all.entries()) {
    for (const [i, comb] of combs.entries()) expect(scores[k]![i]).toBeCloseTo(histogram.scoreAt(comb), 9);
  }
});
