import { describe, expect, it } from 'vitest';
import { Random } from '../make/random.ts';
import { balancedAccuracy, type Sample } from './classifier.ts';

/** Pieces of so many rides, real ones `apart` standard deviations away in one figure of four. */
function pieces(apart: number, [real, made]: readonly [number, number] = [10, 40]): Sample[] {
  const random = new Random(`pieces ${apart}`);
  return Array.from({ length: real + made }, (_, ride) =>
    Array.from({ length: 12 }, (): Sample => {
      const own = ride < real;
      const figures = [random.normal(own ? apart : 0), random.normal(), random.normal(3, 2), random.normal()];
      return { figures, real: own, ride: `ride ${ride}` };
    }),
  ).flat();
}

describe('telling real from simulated', () => {
  it('is a coin toss where nothing tells them apart, however unequal the groups', () => {
    expect(Math.abs(balancedAccuracy(pieces(0)) - 0.5)).toBeLessThan(0.1);
    expect(Math.abs(balancedAccuracy(pieces(0, [3, 60])) - 0.5)).toBeLessThan(0.15);
  });

  it('is as good as the best straight boundary: Φ(d / 2)', () => {
    // d = 2: Φ(1) = 0.841.
    expect(balancedAccuracy(pieces(2))).toBeGreaterThan(0.79);
    expect(balancedAccuracy(pieces(2))).toBeLessThan(0.89);
    expect(balancedAccuracy(pieces(8))).toBeGreaterThan(0.99);
  });

  it('never judges a ride by its own pieces', () => {
    // Every ride has a place of its own that tells nothing of its group: pieces of the same ride would.
    const random = new Random('places');
    const own = Array.from({ length: 24 }, (_, ride) => {
      const [x, y] = [random.normal(0, 5), random.normal(0, 5)];
      return Array.from({ length: 10 }, (): Sample => {
        return { figures: [x + random.normal(0, 0.1), y], real: ride % 2 === 0, ride: `ride ${ride}` };
      });
    }).flat();
    expect(balancedAccuracy(own)).toBeLessThan(0.75);
  });
});
