import { expect, it } from 'vitest';
import { evidenceFor } from '../../src/math/misfit.ts';

// Nile, 1871 to 1970: squares of one mean 2835157, of two 1597457 (R, strucchange 1.5-3); BIC 1318 and 1270, which
// pay two logarithms of 100 for the second mean and the place of the break.
it('is what BIC of R makes of one break in the flow of the Nile', () => {
  const left = new Float64Array(100).fill(Math.sqrt(15974.57));
  const otherLeft = new Float64Array(100).fill(Math.sqrt(28351.57));
  expect(evidenceFor(left, otherLeft)).toBeCloseTo(1318 - 1270 + 2 * Math.log(100), 0);
  expect(evidenceFor(otherLeft, left)).toBeCloseTo(-evidenceFor(left, otherLeft), 9);
});
