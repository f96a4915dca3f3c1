/**
 * Quantile of the standard normal distribution: Wichura (1988), Algorithm AS 241, Appl. Statist. 37:477,
 * routine PPND7, and one step of Newton's method on the probability, to about 14 digits.
 *
 * @param p probability, above 0 and below 1
 */
export function normalQuantile(p: number): number {
  if (p > 0.5) return -normalQuantile(1 - p);
  const start = roughQuantile(p);
  const density = Math.exp((-start * start) / 2) / Math.sqrt(2 * Math.PI);
  return start - (normalProbability(start) - p) / density;
}

/** Probability beyond either end of an interval: all intervals hold 95 %. */
export const beyondEnd = 0.025;

/** Standard errors in half an interval of what is normal. */
export const normalReach = normalQuantile(1 - beyondEnd);

function roughQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (
      (q * (((59.10937472 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179)) /
      (((67.1875636 * r + 78.757757664) * r + 17.895169469) * r + 1)
    );
  }
  const tail = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const far = tail > 5;
  const r = tail - (far ? 5 : 1.6);
  const value = far
    ? (((0.17337203997 * r + 1.3067284816) * r + 3.081226386) * r + 6.657905115) /
      ((0.012258202635 * r + 0.24197894225) * r + 1)
    : (((0.17023821103 * r + 1.3067284816) * r + 2.75681539) * r + 1.4234372777) /
      ((0.12021132975 * r + 0.7370016425) * r + 1);
  return q < 0 ? -value : value;
}

/**
 * Probability that a standard normal value is at most z: the series for the middle, the continued
 * fraction for the tails (Abramowitz & Stegun 26.2.11 and 26.2.14), to about 14 digits.
 */
export function normalProbability(z: number): number {
  const x = Math.abs(z);
  const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  if (x < 3) {
    let term = x;
    let sum = x;
    for (let k = 3; term > 1e-17 * sum; k += 2) {
      term *= (x * x) / k;
      sum += term;
    }
    return z < 0 ? 0.5 - density * sum : 0.5 + density * sum;
  }
  let fraction = 0;
  for (let k = 60; k > 0; k--) fraction = k / (x + fraction);
  const tail = density / (x + fraction);
  return z < 0 ? tail : 1 - tail;
}
