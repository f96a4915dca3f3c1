import { meanOfValid } from './mean.ts';

/**
 * Fits one autoregression x[t] = Σ w[k]·x[t-k-1] + e to several columns at once, by Yule–Walker:
 * autocovariances over all pairs of valid samples, each column scaled to unit variance, solved by the
 * Levinson–Durbin recursion (Durbin 1960). NaN samples are passed over.
 *
 * @returns the weights w, `order` of them; all 0 when the columns hold no variation.
 */
export function autoregression(columns: readonly Float64Array[], order: number): Float64Array {
  const covariance = new Float64Array(order + 1);
  for (const column of columns) {
    const own = autocovariance(column, order);
    if (own[0]! > 0) for (let k = 0; k <= order; k++) covariance[k]! += own[k]! / own[0]!;
  }
  return levinson(covariance);
}

/** Mean product of deviations at lags 0 … `lags`, over the pairs where both samples are valid. */
export function autocovariance(column: Float64Array, lags: number): Float64Array {
  const { mean, count } = meanOfValid(column);
  const covariance = new Float64Array(lags + 1);
  if (count === 0) return covariance;
  const centred = new Float64Array(column.length);
  for (let t = 0; t < column.length; t++) {
    const value = column[t]!;
    if (!Number.isNaN(value)) centred[t] = value - mean;
  }
  for (let lag = 0; lag <= lags; lag++) {
    let products = 0;
    for (let t = lag; t < centred.length; t++) products += centred[t]! * centred[t - lag]!;
    covariance[lag] = products / count;
  }
  return covariance;
}

function levinson(covariance: Float64Array): Float64Array {
  const order = covariance.length - 1;
  const weights = new Float64Array(order);
  let error = covariance[0]!;
  for (let m = 0; m < order && error > 0; m++) {
    let reflection = covariance[m + 1]!;
    for (let k = 0; k < m; k++) reflection -= weights[k]! * covariance[m - k]!;
    reflection /= error;
    const before = weights.slice(0, m);
    for (let k = 0; k < m; k++) weights[k] = before[k]! - reflection * before[m - 1 - k]!;
    weights[m] = reflection;
    error *= 1 - reflection * reflection;
  }
  return weights;
}
