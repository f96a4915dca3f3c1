import { gammaln } from 'simple-statistics';
import { beyondEnd, normalQuantile } from './normal.ts';

/**
 * Probability that Student's t with `freedom` degrees of freedom is at most t, by the continued
 * fraction of the incomplete beta function (Abramowitz & Stegun 26.5.8 and 26.7.1).
 */
export function studentProbability(t: number, freedom: number): number {
  const tail = incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t < 0 ? tail : 1 - tail;
}

/**
 * Quantile of Student's t, by Newton's steps from the normal quantile: that lies below, and right of 0 the
 * probability bends downwards, so that every step comes nearer and none goes too far.
 *
 * @param p probability, above 0 and below 1
 * @param freedom degrees of freedom, at least 1; need not be whole
 */
export function studentQuantile(p: number, freedom: number): number {
  if (p < 0.5) return -studentQuantile(1 - p, freedom);
  const peak = Math.exp(gammaln((freedom + 1) / 2) - gammaln(freedom / 2)) / Math.sqrt(freedom * Math.PI);
  let t = Math.max(0, normalQuantile(p));
  for (let i = 0; i < 200; i++) {
    const density = peak * (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
    const step = (p - studentProbability(t, freedom)) / density;
    t += step;
    if (Math.abs(step) <= 1e-12 * t) break;
  }
  return t;
}

/** Standard errors in half an interval of what was estimated with so many degrees of freedom. */
export const studentReach = (freedom: number) => studentQuantile(1 - beyondEnd, freedom);

function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges fast only below the mean of the distribution; above it use the mirror image.
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(gammaln(a + b) - gammaln(a) - gammaln(b) + a * Math.log(x) + b * Math.log(1 - x));
  let fraction = 0;
  for (let m = 100; m > 0; m--) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    fraction = even / (1 + odd / (1 + fraction));
  }
  const first = (-(a + b) * x) / (a + 1);
  return front / (a * (1 + first / (1 + fraction)));
}
