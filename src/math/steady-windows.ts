/**
 * Marks every sample that lies in some window of `window` samples whose standard deviation (about the
 * window's own mean, n - 1) is at most `most`. A NaN in a window rules it out. Linear, by running sums
 * about the value that opens each run of valid samples.
 */
export function inSteadyWindow(values: Float64Array, window: number, most: number): Uint8Array {
  const marked = new Uint8Array(values.length);
  const allowed = most * most * (window - 1);
  let origin = 0;
  let sum = 0;
  let squares = 0;
  let inside = 0;
  let markedTo = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (Number.isNaN(value)) {
      inside = 0;
      continue;
    }
    if (inside === 0) {
      origin = value;
      sum = 0;
      squares = 0;
    }
    const here = value - origin;
    sum += here;
    squares += here * here;
    inside++;
    if (inside > window) {
      const gone = values[i - window]! - origin;
      sum -= gone;
      squares -= gone * gone;
    }
    if (inside < window) continue;
    // What rounding leaves of a constant window must not count as spread.
    if (squares - (sum * sum) / window > allowed + 1e-9 * squares) continue;
    marked.fill(1, Math.max(i - window + 1, markedTo), i + 1);
    markedTo = i + 1;
  }
  return marked;
}
