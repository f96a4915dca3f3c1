import { describe, expect, it } from 'vitest';
import { pedallingNoise, rampWander, wander } from './noise.ts';
import { Random } from './random.ts';

function allan(values: Float64Array, block: number): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i + 2 * block <= values.length; i += block) {
    let difference = 0;
    for (let j = 0; j < block; j++) difference += values[i + block + j]! - values[i + j]!;
    sum += (difference / block) * (difference / block);
    count++;
  }
  return Math.sqrt(sum / count / 2);
}

describe('noise', () => {
  it.each(['normal', 'heavy'] as const)(
    '%s pedalling noise is 1/f: means over 1 to 16 s scatter alike',
    (family) => {
      const noise = pedallingNoise(new Random('pink'), 4 * 40_000, 0.25, 0.15, family);
      expect(allan(noise, 4 * 8)).toBeCloseTo(1, 1);
      for (const seconds of [1, 2, 4, 16]) {
        expect(allan(noise, 4 * seconds)).toBeGreaterThan(0.8);
        expect(allan(noise, 4 * seconds)).toBeLessThan(1.2);
      }
    },
  );

  it('is the same noise whatever the step', () => {
    const fine = pedallingNoise(new Random('fine'), 4 * 40_000, 0.25, 0.15);
    const coarse = pedallingNoise(new Random('coarse'), 40_000, 1, 0.15);
    expect(allan(coarse, 8)).toBeCloseTo(allan(fine, 32), 1);
    expect(allan(coarse, 30)).toBeCloseTo(allan(fine, 120), 1);
  });

  it.each([
    ['first-order', wander],
    ['ramps', rampWander],
  ] as const)('%s wander has a spread of about 1', (_, make) => {
    const values = make(new Random('sway'), 200_000, 1, 100);
    let sum = 0;
    for (const value of values) sum += value * value;
    expect(Math.sqrt(sum / values.length)).toBeGreaterThan(0.85);
    expect(Math.sqrt(sum / values.length)).toBeLessThan(1.15);
  });
});
