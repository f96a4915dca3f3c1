import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fakeDigest, Random } from './random.ts';

describe('random numbers', () => {
  it('gives the same stream for the same key, on every machine', () => {
    const random = new Random('pinned');
    expect([random.bits(), random.bits(), random.bits()]).toEqual([1669470461, 2944761690, 1234460928]);
    expect(fakeDigest('a')).toBe('350390849e551dc821ca29ec24104a11f9ff268b2816cd8a826a1ba297b0c953');
  });

  it('forks do not depend on what was drawn before, and differ by name', () => {
    const early = new Random(1).fork('ride');
    const parent = new Random(1);
    for (let i = 0; i < 100; i++) parent.normal();
    expect(parent.fork('ride').uniform()).toBe(early.uniform());
    expect(new Random(1).fork('a').uniform()).not.toBe(new Random(1).fork('b').uniform());
  });

  it('neighbouring seeds are unrelated', () => {
    let sum = 0;
    for (let seed = 0; seed < 4000; seed++) {
      sum += (new Random(seed).uniform() - 0.5) * (new Random(seed + 1).uniform() - 0.5);
    }
    // SD of the mean product of independent uniforms: 1/12/√4000 = 0.0013.
    expect(Math.abs(sum / 4000)).toBeLessThan(0.005);
  });

  it('has the moments it should', () => {
    const random = new Random('moments');
    const moments = (draw: () => number) => {
      const values = Array.from({ length: 40_000 }, draw);
      const mean = values.reduce((a, b) => a + b) / values.length;
      return [
        mean,
        Math.sqrt(values.reduce((a, b) => a + (b - mean) * (b - mean), 0) / values.length),
      ] as const;
    };
    const [uniformMean, uniformSpread] = moments(() => random.uniform());
    expect(uniformMean).toBeCloseTo(0.5, 2);
    expect(uniformSpread).toBeCloseTo(Math.sqrt(1 / 12), 2);
    const [normalMean, normalSpread] = moments(() => random.normal(3, 2));
    expect(normalMean).toBeCloseTo(3, 1);
    expect(normalSpread).toBeCloseTo(2, 1);
    expect(moments(() => random.heavy(5))[1]).toBeCloseTo(1, 1);
    expect(moments(() => random.exponential(4))[0]).toBeCloseTo(4, 0);
  });

  it('stays within bounds', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: -50, max: 50 }), fc.nat({ max: 40 }), (key, low, width) => {
        const random = new Random(key);
        for (let i = 0; i < 50; i++) {
          const whole = random.integer(low, low + width);
          expect(whole).toBeGreaterThanOrEqual(low);
          expect(whole).toBeLessThanOrEqual(low + width);
          const bounded = random.normalWithin(low, 5, low - 1, low + 1);
          expect(Math.abs(bounded - low)).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});
