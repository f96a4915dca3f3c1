import { describe, expect, it } from 'vitest';
import { mostDrawn, threeParameterFit, workTimeFit } from '../../src/math/critical-power.ts';
import { Random } from '../make/random.ts';

const of = (...values: number[]) => Float64Array.from(values);
/* Constructed: CP 300 W, W′ 20 kJ, Pmax 1100 W; times exact, fits confirmed in R 4.2 (lm, minpack.lm nlsLM). */
const watts = of(320, 350, 400, 500, 800);
const seconds = of(975, 375, 175, 75, 15);

describe('workTimeFit', () => {
  it('goes through two published efforts', () => {
    // MacInnis et al. 2019, IJSPP 14:38: 417 W over 240 s, 342 W over 1200 s; published mean CP 323 W.
    const first = workTimeFit(of(240, 1200), of(417, 342));
    expect(first?.cp).toBeCloseTo(323.25, 9);
    expect(first?.reserve).toBeCloseTo(22_500, 6);
    expect(first?.cpReach).toBeNull();
    const second = workTimeFit(of(240, 1200), of(412, 344));
    expect(second?.cp).toBeCloseTo(327, 9);
    expect(second?.reserve).toBeCloseTo(20_400, 6);
  });
  it('agrees with linear regression of work on time', () => {
    const fit = workTimeFit(seconds, watts);
    expect(fit?.cp).toBeCloseTo(308.363582365364, 9);
    expect(fit?.reserve).toBeCloseTo(12948.562895987308, 6);
    expect(fit?.cpReach).toBeGreaterThan(0);
  });
  it('needs two different durations', () => {
    expect(workTimeFit(of(300, 300), of(300, 310))).toBeNull();
  });
});

describe('threeParameterFit', () => {
  it('recovers the curve that made the points', () => {
    const fit = threeParameterFit(seconds, watts);
    expect(fit?.cp).toBeCloseTo(300, 4);
    expect(fit?.reserve).toBeCloseTo(20_000, 1);
    expect(fit?.pMax).toBeCloseTo(1100, 2);
  });
  it('states intervals that hold the truth as often as they say', () => {
    // Every time to exhaustion off by 2 s (one standard deviation); five efforts leave two degrees of freedom.
    const random = new Random('critical power');
    let [cp, reserve] = [0, 0];
    const draws = 400;
    for (let draw = 0; draw < draws; draw++) {
      const fit = threeParameterFit(
        seconds.map((time) => time + 2 * random.normal()),
        watts,
      );
      if (Math.abs(fit!.cp - 300) <= fit!.cpReach!) cp++;
      if (Math.abs(fit!.reserve - 20_000) <= fit!.reserveReach!) reserve++;
    }
    for (const held of [cp, reserve]) {
      expect(held / draws).toBeGreaterThan(0.92);
      expect(held / draws).toBeLessThan(0.98);
    }
  });
  it('refuses too few points', () => {
    expect(threeParameterFit(of(100, 200, 300), of(400, 350, 330))).toBeNull();
  });
});

describe('mostDrawn', () => {
  it('empties above CP, fills as fast below, never beyond full', () => {
    const power = of(400, 400, 400, 200, 400, 400, 0, 0, 0, 350);
    expect(mostDrawn(power, 300)).toBe(400);
    expect(mostDrawn(power, 300, 6)).toBe(50);
    expect(mostDrawn(of(Number.NaN, 320), 300)).toBe(20);
  });
});
