/**
 * Marks every sample that lies in some window of `window` samples whose spread (highest minus lowest) is
 * at most `allowed(lowest)`. A NaN in a window rules it out. Linear: monotonic queues hold the extremes.
 */
export function inNarrowWindow(
  values: Float64Array,
  window: number,
  allowed: (lowest: number) => number,
): Uint8Array {
  const marked = new Uint8Array(values.length);
  const highs = new Int32Array(values.length);
  const lows = new Int32Array(values.length);
  let highFrom = 0;
  let highTo = 0;
  let lowFrom = 0;
  let lowTo = 0;
  let validFrom = 0;
  let markedTo = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (Number.isNaN(value)) {
      validFrom = i + 1;
      highFrom = highTo;
      lowFrom = lowTo;
      continue;
    }
    while (highTo > highFrom && values[highs[highTo - 1]!]! <= value) highTo--;
    highs[highTo++] = i;
    while (lowTo > lowFrom && values[lows[lowTo - 1]!]! >= value) lowTo--;
    lows[lowTo++] = i;
    const from = i - window + 1;
    if (from < validFrom) continue;
    while (highs[highFrom]! < from) highFrom++;
    while (lows[lowFrom]! < from) lowFrom++;
    const lowest = values[lows[lowFrom]!]!;
    if (values[highs[highFrom]!]! - lowest > allowed(lowest)) continue;
    marked.fill(1, Math.max(from, markedTo), i + 1);
    markedTo = i + 1;
  }
  return marked;
}
