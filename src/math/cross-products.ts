import FFT from 'fft.js';

/** Sums over all lags, as a fast Fourier transform gives them. */
export interface CrossProducts {
  /** Σ a[t]·b[t-lag], at index lag + b.length - 1, for lags -(b.length-1) … a.length-1. */
  readonly forward: Float64Array;
  /** The same with b reversed in time: what two unrelated series of the same make would give. */
  readonly reversed: Float64Array;
}

/**
 * Cross-correlates two series over every lag, in n log n. Both transforms come from one complex
 * transform (a as the real part, b as the imaginary part).
 */
export function crossProducts(a: Float64Array, b: Float64Array): CrossProducts {
  const lags = a.length + b.length - 1;
  let size = 2;
  while (size < lags) size *= 2;
  const fft = transformOf(size);
  const packed = new Float64Array(2 * size);
  for (let t = 0; t < a.length; t++) packed[2 * t] = a[t]!;
  for (let t = 0; t < b.length; t++) packed[2 * t + 1] = b[t]!;
  const spectrum = new Float64Array(2 * size);
  fft.transform(spectrum, packed);
  const { same, turned } = products(spectrum, size);
  // Both results are real, so one inverse transform yields both: the first as the real part, the
  // second as the imaginary part.
  for (let i = 0; i < 2 * size; i += 2) {
    packed[i] = same[i]! - turned[i + 1]!;
    packed[i + 1] = same[i + 1]! + turned[i]!;
  }
  fft.inverseTransform(spectrum, packed);
  const forward = new Float64Array(lags);
  const reversed = new Float64Array(lags);
  for (let i = 0; i < lags; i++) {
    const lag = i - (b.length - 1);
    forward[i] = spectrum[2 * ((lag + size) % size)]!;
    // a against the reversed b is the convolution at lag + b.length - 1, which is i.
    reversed[i] = spectrum[2 * i + 1]!;
  }
  return { forward, reversed };
}

let last: FFT | null = null;

/** The transform of a size, its tables kept for the next of the same size: rides of one event are alike. */
function transformOf(size: number): FFT {
  if (last?.size !== size) last = new FFT(size);
  return last;
}

/** A·conj(B) and A·B from the transform of a + i·b. */
function products(spectrum: Float64Array, size: number): { same: Float64Array; turned: Float64Array } {
  const same = new Float64Array(2 * size);
  const turned = new Float64Array(2 * size);
  for (let k = 0; k < size; k++) {
    const mirror = (size - k) % size;
    const re = spectrum[2 * k]!;
    const im = spectrum[2 * k + 1]!;
    const mirrorRe = spectrum[2 * mirror]!;
    const mirrorIm = spectrum[2 * mirror + 1]!;
    const aRe = (re + mirrorRe) / 2;
    const aIm = (im - mirrorIm) / 2;
    const bRe = (im + mirrorIm) / 2;
    const bIm = (mirrorRe - re) / 2;
    same[2 * k] = aRe * bRe + aIm * bIm;
    same[2 * k + 1] = aIm * bRe - aRe * bIm;
    turned[2 * k] = aRe * bRe - aIm * bIm;
    turned[2 * k + 1] = aRe * bIm + aIm * bRe;
  }
  return { same, turned };
}
