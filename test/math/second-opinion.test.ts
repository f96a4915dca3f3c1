import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { autoregression } from '../../src/math/autoregression.ts';
import { changePoint } from '../../src/math/change-point.ts';
import { chiSquaredTail } from '../../src/math/chi-squared.ts';
import { crossProducts } from '../../src/math/cross-products.ts';
import { deming } from '../../src/math/deming.ts';
import { grubbsVariances } from '../../src/math/grubbs.ts';
import { leastSquares } from '../../src/math/least-squares.ts';
import { limitError, limitsOfAgreement } from '../../src/math/limits-of-agreement.ts';
import { meanMaximal } from '../../src/math/mean-maximal.ts';
import { normalQuantile } from '../../src/math/normal.ts';
import { robustFit } from '../../src/math/robust-fit.ts';
import { studentQuantile } from '../../src/math/student.ts';
import { shareOf } from '../truth/bounds.ts';

/** Simulated pairs, and what NumPy and SciPy make of them: `computed` and `answers.versions` say when and which. */
const { given, answers } = JSON.parse(
  readFileSync(new URL('./second-opinion.json', import.meta.url), 'utf8'),
);

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

  it('limits of agreement', () => {
    const limits = limitsOfAgreement(Array.from(own, (watts, i) => 100 * (watts / other[i]! - 1)));
    for (const name of ['mean', 'low', 'high'] as const) {
      expect(limits[name]).toBeCloseTo(answer.limits[name], 9);
    }
    expect(limits.spread * limitError(own.length)).toBeCloseTo(answer.limits.error, 9);
  });

  // ODRPACK iterates until nothing moves by more than its own arithmetic allows.
  it.each([1, 2])('a line through errors in both, ratio of variances %d', (errorRatio) => {
    const line = deming(other, own, errorRatio)!;
    const found = answer.deming[errorRatio - 1];
    expect(line.slope).toBeCloseTo(found.slope, 6);
    expect(line.intercept).toBeCloseTo(found.intercept, 4);
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
