import { describe, expect, it, test } from 'vitest';
import { autocovariance, autoregression } from '../../src/math/autoregression.ts';
import { lew, mavro, michelso } from './nist.ts';

const lagOne = (values: readonly number[]) => {
  const [c0, c1] = autocovariance(Float64Array.from(values), 1);
  return c1! / c0!;
};
const deviation = (values: readonly number[]) =>
  Math.sqrt((autocovariance(Float64Array.from(values), 0)[0]! * values.length) / (values.length - 1));
/** 1001 values that go up and down by 0.1 around a first one: NumAcc2 to NumAcc4. */
const sawtooth = (whole: number) => [
  whole + 0.2,
  ...Array.from({ length: 1000 }, (_, k) => whole + (k % 2 === 0 ? 0.1 : 0.3)),
];

describe('agrees with the certified values of NIST StRD, univariate summary statistics', () => {
  it.each([
    ['Michelso', michelso, 0.0790105478190518, 0.535199668621283],
    ['Lew', lew, 277.332168044316, -0.307304800605679],
  ] as const)('%s: deviation and lag-1 autocorrelation to nine digits', (_, values, sd, r) => {
    expect(deviation(values) / sd).toBeCloseTo(1, 9);
    expect(lagOne(values)).toBeCloseTo(r, 9);
  });

  it('Mavro: deviation of readings that differ in the fifth digit', () => {
    expect(deviation(mavro) / 0.000429123454003053).toBeCloseTo(1, 9);
  });

  // Deviation certified; lag-1 autocorrelation from memory, and it follows from the pattern.
  it.each([1, 1_000_000, 10_000_000])('NumAcc, around %i: keeps the digits that doubles have', (whole) => {
    expect(deviation(sawtooth(whole))).toBeCloseTo(0.1, 8);
    expect(lagOne(sawtooth(whole))).toBeCloseTo(-0.999, 7);
  });
});

test('missing samples are passed over, and an autoregression of known weights is found again', () => {
  let state = 7;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647 - 0.5;
  };
  const series = new Float64Array(20_000);
  for (let t = 2; t < series.length; t++) series[t] = 0.6 * series[t - 1]! - 0.3 * series[t - 2]! + random();
  const whole = autoregression([series], 2);
  expect(whole[0]!).toBeCloseTo(0.6, 1);
  expect(whole[1]!).toBeCloseTo(-0.3, 1);
  const gaps = series.map((value, t) => (t % 500 < 20 ? Number.NaN : value));
  expect(Math.abs(autoregression([gaps], 2)[0]! - whole[0]!)).toBeLessThan(0.03);
});
