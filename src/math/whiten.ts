import { autoregression } from './autoregression.ts';

/** Length (s) of the blocks whose own mean and spread the residuals are brought to: about one surge. */
const scaleBlock = 60;
/** Residuals beyond this many local spreads are cut: one spike must not decide a correlation. */
const cut = 4;
/** Enough to take out pedalling rhythm and a few seconds of averaging. */
const order = 4;

/**
 * Turns channels into residuals that no longer predict themselves: the prediction error of one
 * autoregression fitted to all of them together (one filter, so that lags between them survive), less its own
 * mean in blocks of a minute, over its own spread there, and cut at four. Left in, the mean would make all rides
 * alike: the noisier a meter, the less of its level the autoregression takes out. A residual whose inputs are
 * missing is 0 and so carries no weight.
 */
export function whiten(columns: readonly Float64Array[]): Float64Array[] {
  const weights = autoregression(columns, order);
  return columns.map((column) => evenOut(residuals(column, weights)));
}

function residuals(column: Float64Array, weights: Float64Array): Float64Array {
  const out = new Float64Array(column.length);
  for (let t = weights.length; t < column.length; t++) {
    let error = column[t]!;
    for (let k = 0; k < weights.length; k++) error -= weights[k]! * column[t - k - 1]!;
    out[t] = Number.isNaN(error) ? 0 : error;
  }
  return out;
}

function evenOut(residual: Float64Array): Float64Array {
  for (let from = 0; from < residual.length; from += scaleBlock)
    centre(residual.subarray(from, from + scaleBlock));
  const overall = rootMeanSquare(residual, 0, residual.length);
  if (overall === 0) return residual;
  for (let from = 0; from < residual.length; from += scaleBlock) {
    const to = Math.min(from + scaleBlock, residual.length);
    // A floor keeps a stretch of rounding noise (a trace held constant) from being blown up.
    const scale = Math.max(rootMeanSquare(residual, from, to), overall / 10);
    for (let t = from; t < to; t++) residual[t] = Math.max(-cut, Math.min(cut, residual[t]! / scale));
  }
  return residual;
}

/** Takes the mean out of the residuals that are not 0, in place. */
function centre(values: Float64Array): void {
  let sum = 0;
  let count = 0;
  for (const value of values) {
    if (value === 0) continue;
    sum += value;
    count++;
  }
  const mean = sum / count;
  for (let t = 0; t < values.length; t++) if (values[t] !== 0) values[t]! -= mean;
}

/** Over the residuals that are not 0. */
function rootMeanSquare(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  let count = 0;
  for (let t = from; t < to; t++) {
    const value = values[t]!;
    if (value === 0) continue;
    sum += value * value;
    count++;
  }
  return count === 0 ? 0 : Math.sqrt(sum / count);
}
