import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { autoregression } from '../../src/math/autoregression.ts';
import { changePoint } from '../../src/math/change-point.ts';
import { chiSquaredTail } from '../../src/math/chi-squared.ts';
import { concordance } from '../../src/math/concordance.ts';
import { crossProducts } from '../../src/math/cross-products.ts';
import { deming } from '../../src/math/deming.ts';
import { grubbsVariances } from '../../src/math/grubbs.ts';
import { leastSquares } from '../../src/math/least-squares.ts';
import { limitError, limitsOfAgreement } from '../../src/math/limits-of-agreement.ts';
import { mean } from '../../src/math/mean.ts';
import { meanMaximal } from '../../src/math/mean-maximal.ts';
import { errorBetweenNeighbours } from '../../src/math/neighbours.ts';
import { normalQuantile } from '../../src/math/normal.ts';
import { bendOf, passingBablok } from '../../src/math/passing-bablok.ts';
import { robustFit } from '../../src/math/robust-fit.ts';
import { robustSpread } from '../../src/math/robust-spread.ts';
import { studentQuantile } from '../../src/math/student.ts';
import { shareOf } from '../truth/bounds.ts';

/** Simulated pairs, and what NumPy, SciPy and R make of them: `computed` and `versions` say when and which. */
const {
  given,
  answers: { scipy: answers, r },
} = JSON.parse(readFileSync(new URL('./second-opinion.json', import.meta.url), 'utf8'));

const columns = (pair: Record<'own' | 'other' | 'cadence', number[]>) => {
  const [own, other, cadence] = (['own', 'other', 'cadence'] as const).map((name) =>
    Float64Array.from(pair[name]),
  ) as [Float64Array, Float64Array, Float64Array];
  const n = own.length;
  const ratio = own.map((watts, i) => Math.log(watts / other[i]!));
  const time = own.map((_, i) => i / (n - 1));
  const level = own.map((watts, i) => Math.log((watts + other[i]!) / 2));
  return { own, other, ratio, time, level: centred(level), cadence: centred(cadence) };
};

function centred(values: Float64Array): Float64Array {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return values.map((value) => value - mean);
}

describe.each([0, 1, 2])('simulated pair %d, as NumPy and SciPy compute it', (k) => {
  const { own, other, ratio, time, level, cadence } = columns(given.pairs[k]);
  const answer = answers.pairs[k];

  it('the overall ratio and its error between neighbouring blocks', () => {
    const share = mean(own) / mean(other);
    expect(share).toBeCloseTo(answer.overall.ratio, 12);
    const misfit = own.map((watts, i) => (watts - share * other[i]!) / mean(other));
    expect(errorBetweenNeighbours(misfit)).toBeCloseTo(answer.overall.error, 12);
  });

  it('limits of agreement', () => {
    const limits = limitsOfAgreement(Array.from(own, (watts, i) => 100 * (watts / other[i]! - 1)));
    for (const name of ['mean', 'low', 'high'] as const) {
      expect(limits[name]).toBeCloseTo(answer.limits[name], 9);
    }
    expect(limits.spread * limitError(own.length)).toBeCloseTo(answer.limits.error, 9);
    for (const [i, name] of (['low', 'mean', 'high'] as const).entries()) {
      expect(limits.half[name] / studentQuantile(0.975, 6)).toBeCloseTo(answer.limits.longRun[i], 9);
    }
  });

  // ODRPACK iterates until nothing moves by more than its own arithmetic allows.
  it.each([
    { name: 'alike', weighted: 0, errorRatio: 1 },
    { name: 'alike', weighted: 0, errorRatio: 2 },
    { name: 'in proportion', weighted: 1, errorRatio: 1 },
    { name: 'in proportion', weighted: 1, errorRatio: 2 },
  ])('a line through errors in both, $name, ratio of variances $errorRatio', ({ weighted, errorRatio }) => {
    const weights = own.map((watts, i) => (weighted === 0 ? 1 : 4 / (watts + other[i]!) ** 2));
    const line = deming(other, own, errorRatio, weights)!;
    const found = answer.deming[weighted][errorRatio - 1];
    expect(line.slope).toBeCloseTo(found.line.slope, 6);
    expect(line.intercept).toBeCloseTo(found.line.intercept, 4);
    expect(line.slopeError / found.errors.slope).toBeCloseTo(1, 8);
    expect(line.interceptError / found.errors.intercept).toBeCloseTo(1, 8);
  });

  it('the interval of concordance', () => {
    const { low, high } = concordance(other.map(Math.log), own.map(Math.log))!;
    expect(low).toBeCloseTo(answer.concordanceInterval[0], 9);
    expect(high).toBeCloseTo(answer.concordanceInterval[1], 9);
  });

  it('a line by ranks, its interval, and how far the points bend away from it', () => {
    const line = passingBablok(other, own)!;
    expect(line.slope).toBeCloseTo(answer.passingBablok.slope, 12);
    expect(line.intercept).toBeCloseTo(answer.passingBablok.intercept, 9);
    expect(line.flattest.slope).toBeCloseTo(answer.passingBablok.low, 12);
    expect(line.steepest.slope).toBeCloseTo(answer.passingBablok.high, 12);
    expect(bendOf(other, own, line)).toBeCloseTo(answer.passingBablok.bend, 9);
  });

  it('the joint fit of drift, power and cadence by least squares', () => {
    const fit = leastSquares([new Float64Array(own.length).fill(1), time, level, cadence], ratio)!;
    fit.coefficients.forEach((value, i) => {
      expect(value).toBeCloseTo(answer.jointFit.coefficients[i], 10);
    });
    expect(fit.residuals.reduce((sum, r) => sum + r * r, 0)).toBeCloseTo(answer.jointFit.squares, 10);
  });

  it('a robust slope within the interval of Theil and Sen', () => {
    const slope = robustFit([time], ratio)!.coefficients[1]!;
    expect(slope).toBeGreaterThan(answer.theilSen.low);
    expect(slope).toBeLessThan(answer.theilSen.high);
  });

  it('the best split into two means', () => {
    const found = changePoint(ratio, 5)!;
    expect(found.at).toBe(answer.changePoint.at);
    expect(found.squares).toBeCloseTo(answer.changePoint.squares, 10);
  });
});

describe.each([0, 1, 2])("simulated pair %d, as R's own packages compute it", (k) => {
  const { own, other, ratio, time, level, cadence } = columns(given.pairs[k]);
  const answer = r.pairs[k];

  // Tukey's biweight with a scale by the median: rlm of MASS. Both iterate until the weights stand.
  it('the joint fit of drift, power and cadence', () => {
    const fit = robustFit([time, level, cadence], ratio)!;
    fit.coefficients.forEach((value, i) => {
      expect(value).toBeCloseTo(answer.robustFit[i], 6);
    });
    expect(robustSpread(fit.residuals)).toBeCloseTo(answer.scale, 6);
  });

  // epi.ccc of epiR. Its interval takes blocks to be independent: these resemble their neighbours.
  it('concordance', () => {
    const found = concordance(other.map(Math.log), own.map(Math.log))!;
    expect(found.value).toBeCloseTo(answer.concordance, 12);
    const [low, high] = answer.concordanceInterval;
    const width = (from: number, to: number) => Math.atanh(to) - Math.atanh(from);
    expect(width(found.low, found.high)).toBeGreaterThan(0.7 * width(low, high));
    expect(width(found.low, found.high)).toBeLessThan(3 * width(low, high));
  });

  it('the best break, by breakpoints of strucchange', () => {
    expect(changePoint(ratio, 5)!.at).toBe(answer.changePoint);
  });
});

describe('traces of one pair, as NumPy and SciPy compute them', () => {
  const own = Float64Array.from(given.traces.own);
  const other = Float64Array.from(given.traces.other);

  it('the lag of the highest correlation, and its height', () => {
    const { forward } = crossProducts(centred(own), centred(other));
    const best = forward.reduce((most, value, i) => (value > forward[most]! ? i : most), 0);
    expect(best - (other.length - 1)).toBe(answers.traces.lag);
    expect(forward[best]! / answers.traces.peak).toBeCloseTo(1, 10);
  });

  it('an autoregression', () => {
    autoregression([own], 4).forEach((weight, k) => {
      expect(weight).toBeCloseTo(answers.traces.autoregression[k], 9);
    });
  });

  it('mean-maximal power', () => {
    meanMaximal(own, [1, 5, 15, 60, 300]).watts.forEach((watts, k) => {
      expect(watts).toBeCloseTo(answers.traces.meanMaximal[k], 9);
    });
  });
});

it("Grubbs' variances of three readings, as NumPy's covariances give them", () => {
  grubbsVariances(given.readings.map((reading: number[]) => Float64Array.from(reading))).forEach(
    (variance, i) => {
      expect(variance / answers.grubbs[i]).toBeCloseTo(1, 9);
    },
  );
});

describe('quantiles, as SciPy computes them', () => {
  it('normal', () => {
    for (const [i, p] of [0.6, 0.975, 0.9985, 0.99999].entries()) {
      expect(normalQuantile(p)).toBeCloseTo(answers.quantiles.normal[i], 6);
    }
  });

  it('t and χ²', () => {
    for (const [freedom, t] of answers.quantiles.student) {
      expect(studentQuantile(0.975, freedom)).toBeCloseTo(t, 6);
    }
    for (const [x, freedom, tail] of answers.quantiles.chiSquaredTail) {
      expect(chiSquaredTail(x, freedom)).toBeCloseTo(tail, 8);
    }
  });

  it('beta, which bounds a share', () => {
    for (const [count, of, bound] of answers.quantiles.binomialUpper) {
      expect(shareOf(count, of).upper).toBeCloseTo(bound, 8);
    }
  });
});
