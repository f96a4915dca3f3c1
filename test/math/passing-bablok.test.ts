import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendOf, passingBablok } from '../../src/math/passing-bablok.ts';
import { Random } from '../make/random.ts';
import { peakFlow, sen } from './handbook.ts';

const column = (values: readonly number[]) => Float64Array.from(values);

describe('passingBablok', () => {
  // Case of the tests of R's package deming; the median of all slopes, without the shift, is 0.5.
  it('moves the median up by the number of slopes below -1', () => {
    const line = passingBablok(column([1, 2, 3, 4, 5, 6]), column([2, 1.2, 4.1, 3.5, 6.3, 3]))!;
    expect(line.slope).toBeCloseTo(1.05, 12);
    expect(line.intercept).toBeCloseTo(1 / 8, 12);
  });

  // Sen 1968, J Am Stat Assoc 63:1379-1389, as the tests of R's package deming and of SciPy have it: slope 4,
  // intercept of the residuals 6 (that of the medians is 4), 93 % interval from the 4th to the 18th of 21 slopes (the
  // printed one is wrong). No slope falls, so that the line is that of Theil and Sen.
  it('is the line of Theil and Sen where no slope is below -1: the example of Sen', () => {
    const line = passingBablok(column(sen.t), column(sen.y), 0.93)!;
    expect(line.slope).toBe(4);
    expect(line.intercept).toBe(6);
    expect(line.flattest.slope).toBeCloseTo(26 / 7, 12);
    expect(line.steepest.slope).toBeCloseTo(35 / 8, 12);
    expect(line.flattest.intercept).toBeGreaterThan(line.steepest.intercept);
  });

  // Data: Bland & Altman 1986, Lancet 1:307-310, first readings, of which two are equal on the Wright meter.
  it('fits mini on Wright peak flow: computed once more from its definition', () => {
    const line = passingBablok(column(peakFlow.wright1), column(peakFlow.mini1))!;
    expect(line.slope).toBeCloseTo(1.0648148148, 10);
    expect(line.flattest.slope).toBeLessThan(1);
    expect(line.steepest.slope).toBeGreaterThan(1);
  });

  it('turns into its own inverse when x and y change places', () => {
    const random = new Random('places');
    const x = Float64Array.from({ length: 41 }, () => random.normal(30, 10));
    const y = x.map((value) => 3 + 1.1 * value + random.normal(0, 4));
    const line = passingBablok(x, y)!;
    const back = passingBablok(y, x)!;
    expect(line.slope * back.slope).toBeCloseTo(1, 2);
    expect(line.flattest.slope * back.steepest.slope).toBeCloseTo(1, 2);
  });

  it('holds the true line in 95 of 100 draws', () => {
    const random = new Random('coverage');
    const draws = 400;
    let held = 0;
    for (let d = 0; d < draws; d++) {
      const truth = Float64Array.from({ length: 60 }, () => random.normal(30, 8));
      const x = truth.map((value) => value + random.normal(0, 1));
      const y = truth.map((value) => 2 + value + random.normal(0, 1));
      const { flattest, steepest } = passingBablok(x, y)!;
      if (flattest.slope <= 1 && steepest.slope >= 1) held++;
    }
    expect(held / draws).toBeGreaterThan(0.92);
    expect(held / draws).toBeLessThan(0.98);
  });

  it('is not turned by a fifth of stray points', () => {
    const random = new Random('stray');
    const x = Float64Array.from({ length: 60 }, (_, i) => 10 + i / 2);
    const y = x.map((value, i) => 2 + value + random.normal(0, 0.3) + (i % 5 === 0 ? -15 : 0));
    const { slope, intercept } = passingBablok(x, y)!;
    expect(slope).toBeCloseTo(1, 1);
    expect(Math.abs(intercept - 2)).toBeLessThan(1.5);
  });

  it('refuses points that do not rise together', () => {
    expect(passingBablok(column([1, 2, 3]), column([1, 2, 3]))).toBeNull();
    expect(passingBablok(column([5, 5, 5, 5]), column([5, 5, 5, 5]))).toBeNull();
    expect(passingBablok(column([1, 2, 3, 4]), column([5, 5, 5, 5]))).toBeNull();
    expect(passingBablok(column([5, 5, 5, 5]), column([1, 2, 3, 4]))).toBeNull();
  });
});

describe('bendOf', () => {
  const line = { slope: 1, intercept: 0 };
  const along = (offsets: readonly number[]) => {
    const x = Float64Array.from(offsets, (_, i) => 10 + i);
    return bendOf(
      x,
      x.map((value, i) => value + offsets[i]!),
      line,
    );
  };

  it('is the distance of those above from those below as two samples: worked by hand', () => {
    // All below, then all above: the two samples do not meet, √(3·3/6).
    expect(along([-1, -1, -1, 1, 1, 1])).toBeCloseTo(Math.sqrt(9 / 6), 12);
    // By turns: never more than one apart of three, a third of it.
    expect(along([-1, 1, -1, 1, -1, 1])).toBeCloseTo(Math.sqrt(9 / 6) / 3, 12);
    expect(along([0, 0, 0])).toBe(0);
    expect(along([1, 1, 1])).toBe(0);
  });

  // Kolmogorov's distribution: 1.36 in 5, 1.63 in 1 of 100 (Smirnov 1948); a line fitted to the points takes some of it.
  it('passes what chance makes of a line in few draws, and of a bend in most', () => {
    const random = new Random('bend');
    const draws = 400;
    const share = (bend: number, beyond: number) => {
      let count = 0;
      for (let d = 0; d < draws; d++) {
        const x = Float64Array.from({ length: 80 }, () => random.between(15, 55));
        const y = x.map((value) => value + bend * Math.max(0, value - 40) + random.normal(0, 0.5));
        if (bendOf(x, y, passingBablok(x, y)!) > beyond) count++;
      }
      return count / draws;
    };
    expect(share(0, 1.36)).toBeLessThan(0.05);
    expect(share(0, 1.63)).toBeLessThan(0.01);
    expect(share(0.5, 1.63)).toBeGreaterThan(0.9);
  });

  it('is the same whichever coordinate is called x', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(400), fc.nat(400)), { minLength: 2, maxLength: 20 }), (points) => {
        const x = column(points.map(([a]) => a + 1 / 3));
        const y = column(points.map(([, b]) => b));
        const there = bendOf(x, y, { slope: 2, intercept: 7 });
        expect(bendOf(y, x, { slope: 1 / 2, intercept: -3.5 })).toBeCloseTo(there, 9);
      }),
    );
  });
});
