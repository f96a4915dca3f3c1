/**
 * Answer of a first-order system with unit gain to a signal of one value a second: the step response is
 * 1 - exp(-t/tau). It starts settled at the first known value; across unknown seconds it stays as it is.
 *
 * @param tau time constant, s
 */
export function firstOrder(signal: Float64Array, tau: number): Float64Array {
  const keep = Math.exp(-1 / tau);
  const answer = new Float64Array(signal.length);
  let state = firstKnown(signal);
  for (let i = 0; i < signal.length; i++) {
    const value = signal[i]!;
    if (!Number.isNaN(value)) state = state * keep + value * (1 - keep);
    answer[i] = state;
  }
  return answer;
}

function firstKnown(signal: Float64Array): number {
  for (let i = 0; i < signal.length; i++) if (!Number.isNaN(signal[i]!)) return signal[i]!;
  return Number.NaN;
}
