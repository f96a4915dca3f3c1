import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/math/least-squares.ts';
import { longley, norris } from './nist.ts';

describe('leastSquares', () => {
  it('agrees with the certified values of Norris (NIST StRD, linear, lower difficulty)', () => {
    const fit = leastSquares([ones(norris.x), Float64Array.from(norris.x)], Float64Array.from(norris.y))!;
    expect(fit.coefficients[0]).toBeCloseTo(-0.262323073774029, 11);
    expect(fit.coefficients[1]).toBeCloseTo(1.00211681802045, 13);
    const variance = squares(fit.residuals) / (norris.x.length - 2);
    expect(Math.sqrt(variance)).toBeCloseTo(0.884796396144373, 12);
    expect(Math.sqrt(variance * fit.inverse[0]![0]!)).toBeCloseTo(0.232818234301152, 12);
    expect(Math.sqrt(variance * fit.inverse[1]![1]!)).toBeCloseTo(0.429796848199937e-3, 15);
  });

  it('keeps seven digits of Longley (NIST StRD, multiple, ill-conditioned)', () => {
    const columns = longley.x.map((column) => Float64Array.from(column));
    const fit = leastSquares([ones(longley.y), ...columns], Float64Array.from(longley.y))!;
    const certified = [
      -3482258.63459582, 15.0618722713733, -0.35819179292591e-1, -2.02022980381683, -1.03322686717359,
      -0.511041056535807e-1, 1829.15146461355,
    ];
    for (const [k, value] of certified.entries()) expect(fit.coefficients[k]! / value).toBeCloseTo(1, 7);
    expect(Math.sqrt(squares(fit.residuals) / (16 - 7))).toBeCloseTo(304.854073561965, 5);
  });

  it('refuses columns that say the same thing twice', () => {
    const x = Float64Array.from([1, 2, 3, 4]);
    expect(leastSquares([x, x.map((v) => 2 * v)], x)).toBeNull();
  });

  it('weighs rows', () => {
    const fit = leastSquares([ones([1, 2, 3])], Float64Array.from([1, 2, 30]), Float64Array.from([1, 1, 0]))!;
    expect(fit.coefficients[0]).toBeCloseTo(1.5, 12);
  });
});

const ones = (like: ArrayLike<number>) => new Float64Array(like.length).fill(1);
const squares = (values: Float64Array) => values.reduce((sum, value) => sum + value * value, 0);
