import { describe, expect, it } from 'vitest';
import { peaks } from '../../src/align/lags.ts';

const peaksOf = (gain: readonly number[]) =>
  peaks(
    {
      first: -2,
      gain: Float64Array.from(gain),
      correlation: new Float64Array(gain.length),
      surrogate: { gain: 0, correlation: 0 },
    },
    12,
  );

describe('the answers that lags give', () => {
  it('are highest within three seconds on either side: a lag on the way up to another is none of its own', () => {
    expect(peaksOf([0, 1, 3, 8, 9, 2, 1, 0, 0, 5, 0])).toEqual([
      { lag: 2, gain: 9 },
      { lag: 7, gain: 5 },
    ]);
    expect(peaksOf([0, 1, 2, 9, 8, 3, 0])).toEqual([{ lag: 1, gain: 9 }]);
  });

  it('of equal neighbours the first', () => {
    expect(peaksOf([0, 4, 4, 0])).toEqual([{ lag: -1, gain: 4 }]);
  });
});
