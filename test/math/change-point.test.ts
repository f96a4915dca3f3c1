import { describe, expect, it } from 'vitest';
import { changePoint } from '../../src/math/change-point.ts';
import { nile } from './handbook.ts';

describe('changePoint', () => {
  // Flow of the Nile 1871 to 1970 (R, datasets::Nile): break after 1898, confirmed with strucchange 1.5-3.
  it('finds the break in the flow of the Nile', () => {
    const found = changePoint(Float64Array.from(nile), 15)!;
    expect(found.at).toBe(28);
    expect(found.squaresOfOne).toBeCloseTo(2_835_157, 0);
    expect(found.squares).toBeCloseTo(1_597_457, 0);
    expect(found.before).toBeCloseTo(1097.75, 2);
    expect(found.after).toBeCloseTo(849.972222, 6);
  });
});
