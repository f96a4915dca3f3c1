import { describe, expect, it } from 'vitest';
import { deming } from '../../src/math/deming.ts';
import { peakFlow } from './handbook.ts';

describe('deming', () => {
  // Data: Bland & Altman 1986, Lancet 1:307-310, first readings; values computed from the formula.
  it('fits mini on Wright peak flow with equal errors', () => {
    const line = deming(Float64Array.from(peakFlow.wright1), Float64Array.from(peakFlow.mini1))!;
    expect(line.slope).toBeCloseTo(0.9708808198, 9);
    expect(line.intercept).toBeCloseTo(15.2315555, 6);
    expect(line.slope - line.reach * line.slopeError).toBeLessThan(1);
    expect(line.slope + line.reach * line.slopeError).toBeGreaterThan(1);
  });

  // The convention: ratio of the variances of the errors, that of y over that of x. Least squares of y on x (0.91735,
  // 39.3403, confirmed in R) is where only y errs, that of x on y where only x does.
  it('lies between the two lines of least squares, at its ends where only one of the two errs', () => {
    const x = Float64Array.from(peakFlow.wright1);
    const y = Float64Array.from(peakFlow.mini1);
    const onlyY = deming(x, y, 1e9)!;
    expect(onlyY.slope).toBeCloseTo(0.9173478660704, 6);
    expect(onlyY.intercept).toBeCloseTo(39.3402786686, 4);
    const correlation = 0.9432794469;
    expect(deming(x, y, 1e-9)!.slope).toBeCloseTo(0.9173478660704 / correlation ** 2, 6);
    const slopes = [0.1, 0.5, 1, 2, 10].map((ratio) => deming(x, y, ratio)!.slope);
    expect(slopes).toEqual([...slopes].sort((a, b) => b - a));
  });

  it('takes its errors from six slow cosines, so that points which resemble their neighbours count for fewer', () => {
    const x = Float64Array.from({ length: 240 }, (_, i) => 15 + 5 * (((i * 37) % 240) / 240));
    const slow = x.map((value, i) => value + 0.3 * Math.sin((2 * Math.PI * i) / 120));
    const quick = x.map((value, i) => value + 0.3 * Math.sin((2 * Math.PI * i) / 4));
    // Student's t for 97.5 % with six degrees of freedom (tables).
    expect(deming(x, slow)!.reach).toBeCloseTo(2.44691, 4);
    expect(deming(x, slow)!.interceptError).toBeGreaterThan(2 * deming(x, quick)!.interceptError);
  });

  it('turns into its own inverse when x and y change places', () => {
    const x = Float64Array.from(peakFlow.wright1);
    const y = Float64Array.from(peakFlow.mini1);
    expect(deming(x, y, 2)!.slope * deming(y, x, 0.5)!.slope).toBeCloseTo(1, 10);
  });

  it('counts a point of weight two as two points', () => {
    const x = Float64Array.from(peakFlow.wright1);
    const y = Float64Array.from(peakFlow.mini1);
    const weights = x.map((_, i) => 1 + (i % 2));
    const repeated = (values: Float64Array) =>
      Float64Array.from([...values].flatMap((value, i) => Array<number>(weights[i]!).fill(value)));
    const longer = deming(repeated(x), repeated(y), 2)!;
    const weighted = deming(x, y, 2, weights)!;
    expect(weighted.slope).toBeCloseTo(longer.slope, 10);
    expect(weighted.intercept).toBeCloseTo(longer.intercept, 8);
  });

  it('refuses points that do not move together', () => {
    expect(deming(Float64Array.from([1, 2, 3, 4]), Float64Array.from([5, 5, 5, 5]))).toBeNull();
  });
});
