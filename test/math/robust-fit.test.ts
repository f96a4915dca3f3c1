import { describe, expect, it } from 'vitest';
import { longRunMean } from '../../src/math/long-run.ts';
import { reachOf, robustFit } from '../../src/math/robust-fit.ts';
import { Random } from '../make/random.ts';
import { sen } from './handbook.ts';
import { norris } from './nist.ts';

const line = (n: number, value: (i: number) => number) =>
  Float64Array.from({ length: n }, (_, i) => value(i));

describe('robustFit', () => {
  it('stays within a standard error of the certified slope of Norris (NIST StRD)', () => {
    const fit = robustFit([Float64Array.from(norris.x)], Float64Array.from(norris.y))!;
    expect(Math.abs(fit.coefficients[1]! - 1.00211681802045)).toBeLessThan(0.429796848199937e-3);
  });

  // Sen 1968, J Am Stat Assoc 63:1379-1389: slope 4, 93 % interval 26/7 to 35/8 (the printed one is wrong).
  it('lies inside the interval of Sen for his example, where too few rows refuse and doubled ones do not', () => {
    expect(robustFit([Float64Array.from(sen.t)], Float64Array.from(sen.y))).toBeNull();
    const twice = (values: readonly number[]) => Float64Array.from([...values, ...values]);
    const fit = robustFit([twice(sen.t)], twice(sen.y))!;
    expect(fit.coefficients[1]).toBeGreaterThan(26 / 7);
    expect(fit.coefficients[1]).toBeLessThan(35 / 8);
    expect(fit.coefficients[1]).toBeCloseTo(4, 1);
  });

  it('is not turned by a fifth of wild rows', () => {
    const random = new Random('wild');
    const x = line(60, (i) => i / 30 - 1);
    const y = x.map((v, i) => 2 + 3 * v + random.normal(0, 0.1) + (i % 5 === 0 ? 40 : 0));
    const fit = robustFit([x], y)!;
    expect(fit.coefficients[0]).toBeCloseTo(2, 1);
    expect(fit.coefficients[1]).toBeCloseTo(3, 1);
  });

  it('says that two regressors which move together cannot be told apart', () => {
    const random = new Random('twins');
    const x = line(60, (i) => i / 30 - 1);
    const twin = x.map((v) => v + random.normal(0, 0.1));
    const fit = robustFit([x, twin], x)!;
    expect(Math.min(...fit.inflation)).toBeGreaterThan(5);
    expect(robustFit([x], x)!.inflation[0]).toBeCloseTo(1, 6);
  });

  // Efficiency 95 % at the normal distribution: the variance is that of least squares over 0.95.
  it('states the error that its slopes have', () => {
    const random = new Random('error');
    const draws = 1500;
    const x = line(60, (i) => i / 30 - 1);
    let squares = 0;
    let stated = 0;
    for (let d = 0; d < draws; d++) {
      const fit = robustFit(
        [x],
        x.map(() => random.normal(0, 1)),
      )!;
      squares += fit.coefficients[1]! ** 2 / draws;
      stated += (fit.errors[1]! ** 2 * fit.effectiveCount) / fit.weights.reduce((a, b) => a + b, 0) / draws;
    }
    expect(stated / squares).toBeGreaterThan(0.92);
    expect(stated / squares).toBeLessThan(1.08);
  });

  it('tells what each row adds to a coefficient, and reaches further where few rows weigh', () => {
    const random = new Random('influence');
    const x = line(60, (i) => (i % 20 === 0 ? 1 : 0.01 * random.normal()));
    const y = x.map((v) => 1 + 2 * v + random.normal(0, 0.1));
    const fit = robustFit([x], y)!;
    const slope = fit.influence[1]!;
    expect(slope.reduce((sum, weight, i) => sum + weight * y[i]!, 0)).toBeCloseTo(fit.coefficients[1]!, 6);
    expect(reachOf(fit, slope)).toBeGreaterThan(1.2 * reachOf(fit, fit.influence[0]!));
  });

  it('covers the true slope about as often as it claims, for neighbours that resemble each other', () => {
    const random = new Random('coverage');
    const draws = 1000;
    let covered = 0;
    for (let d = 0; d < draws; d++) {
      let wander = random.normal(0, 1);
      const x = line(60, (i) => i / 30 - 1);
      const y = x.map((v) => {
        wander = 0.4 * wander + random.normal(0, 1);
        return v + wander;
      });
      const fit = robustFit([x], y)!;
      if (Math.abs(fit.coefficients[1]! - 1) <= fit.reach * fit.errors[1]!) covered++;
    }
    expect(covered / draws).toBeGreaterThan(0.91);
    expect(covered / draws).toBeLessThan(0.985);
  });
});

describe('longRunMean', () => {
  it.each([0, 0.5])('covers the true mean about as often as it claims, lag-1 correlation %f', (rho) => {
    const random = new Random(`mean ${rho}`);
    const draws = 2000;
    let covered = 0;
    for (let d = 0; d < draws; d++) {
      let value = random.normal(0, 1 / Math.sqrt(1 - rho * rho));
      const values = line(60, () => {
        value = rho * value + random.normal(0, 1);
        return value;
      });
      const { mean, error, reach } = longRunMean(values);
      if (Math.abs(mean) <= reach * error) covered++;
    }
    expect(covered / draws).toBeGreaterThan(0.91);
    expect(covered / draws).toBeLessThan(0.98);
  });
});
