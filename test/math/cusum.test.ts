import { expect, it } from 'vitest';
import { cusum } from '../../src/math/cusum.ts';
import { mean } from '../../src/math/mean.ts';
import { montgomery, nile } from './handbook.ts';

it('is the running sum of Montgomery & Runger, Table 16-7', () => {
  const sums = cusum(montgomery.x, montgomery.target);
  montgomery.sums.forEach((sum, i) => {
    expect(sums[i]).toBeCloseTo(sum, 9);
  });
});

// A sum that starts anew at zero whenever it falls below is a running sum above its own lowest point.
it('rises above its lowest point and falls below its highest as Table 16-8 says', () => {
  const { x, target, slack, high, low } = montgomery;
  const up = cusum(x, target + slack);
  const down = cusum(x, target - slack);
  high.forEach((_, i) => {
    const [risen, fallen] = [up.subarray(0, i + 1), down.subarray(0, i + 1)];
    expect(up[i]! - Math.min(0, ...risen)).toBeCloseTo(high[i]!, 9);
    expect(Math.max(0, ...fallen) - down[i]!).toBeCloseTo(low[i]!, 9);
  });
});

// Flow of the Nile 1871 to 1970 (R, datasets::Nile): 4995.2 after 1898, confirmed in R.
it('is farthest from zero where the flow of the Nile breaks', () => {
  const sizes = cusum(nile, mean(nile)).map(Math.abs);
  const farthest = Math.max(...sizes);
  expect(farthest).toBeCloseTo(4995.2, 6);
  expect(sizes.indexOf(farthest)).toBe(28 - 1);
});
