import type { Random } from '../random.ts';

/** How readings are averaged; `seconds` is the width of the box, or the same mean age for the others. */
export interface Kernel {
  readonly shape: 'box' | 'triangle' | 'exponential';
  readonly seconds: number;
}

/** Averages over the past only, as an instrument does. */
export function smooth(values: Float64Array, step: number, kernel: Kernel): Float64Array {
  const width = Math.round(kernel.seconds / step);
  if (width <= 1) return values;
  if (kernel.shape === 'exponential') return exponential(values, width / 2);
  if (kernel.shape === 'triangle') {
    const half = Math.max(1, Math.round(width / 2));
    return box(box(values, half), width - half + 1);
  }
  return box(values, width);
}

function box(values: Float64Array, width: number): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  for (let i = 0; i < values.length; i++) {
    sum += values[i]! - (i >= width ? values[i - width]! : 0);
    out[i] = sum < 1e-9 ? 0 : sum / Math.min(i + 1, width);
  }
  return out;
}

function exponential(values: Float64Array, tau: number): Float64Array {
  const keep = Math.exp(-1 / tau);
  const out = new Float64Array(values.length);
  let state = values[0] ?? 0;
  for (let i = 0; i < values.length; i++) {
    state = state * keep + values[i]! * (1 - keep);
    out[i] = state < 1 ? 0 : state;
  }
  return out;
}

/** How readings travel. */
export interface Link {
  /** s */
  readonly lag: number;
  /** A message may refer to a moment up to this many seconds older. */
  readonly jitter: number;
  /** Seconds from one message to the next. */
  readonly every: number;
}

/** Shifts by a fraction of samples; what a message says stands until the next one. */
export function delay(
  values: Float64Array,
  step: number,
  { lag, jitter, every }: Link,
  random: Random,
): Float64Array {
  if (lag === 0 && jitter === 0 && every <= step) return values;
  const perSecond = Math.round(1 / step);
  const hold = Math.max(1, Math.round(every / step));
  const out = new Float64Array(values.length);
  let wait = 0;
  for (let i = 0; i < values.length; i++) {
    if (jitter > 0 && i % perSecond === 0) wait = jitter * random.uniform();
    out[i] = i % hold === 0 ? valueAt(values, i - (lag + wait) / step) : out[i - 1]!;
  }
  return out;
}

/** Shifts by whole samples. */
export function delayWhole(values: Float64Array, samples: number): Float64Array {
  if (samples <= 0) return values;
  const out = new Float64Array(values.length);
  out.fill(values[0] ?? 0, 0, samples);
  out.set(values.subarray(0, Math.max(0, values.length - samples)), Math.min(samples, values.length));
  return out;
}

/** Straight between samples; the ends go on as they are. */
export function valueAt(values: Float64Array, position: number): number {
  if (position <= 0) return values[0] ?? Number.NaN;
  const last = values.length - 1;
  if (position >= last) return values[last]!;
  const below = Math.floor(position);
  const part = position - below;
  return values[below]! * (1 - part) + values[below + 1]! * part;
}
