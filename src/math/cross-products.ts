import FFT from 'fft.js';

/** Sums over a range of lags, as a fast Fourier transform gives them. */
export interface CrossProducts {
  /** Σ a[t]·b[t-lag], from the first lag to the last. */
  readonly forward: Float64Array;
  /** The same with b reversed in time: what two unrelated series of the same make would give. */
  readonly reversed: Float64Array;
}

/**
 * Cross-correlates two series over the lags from `first` to `last`, all that meet when left out, in n log n. Both
 * transforms come from one complex transform (a as the real part, b as the imaginary part), and both results go back
 * as one. The transform goes round: it need only be so long that what meets at another lag falls on none of these.
 */
export function crossProducts(
  a: Float64Array,
  b: Float64Array,
  first = 1 - b.length,
  last = a.length - 1,
): CrossProducts {
  const least = Math.max(a.length, b.length, a.length - first, b.length + last);
  const { size, fft, series, spectrum } = spaceFor(least);
  series.fill(0);
  for (let t = 0; t < a.length; t++) series[2 * t] = a[t]!;
  for (let t = 0; t < b.length; t++) series[2 * t + 1] = b[t]!;
  fft.transform(spectrum, series);
  multiply(spectrum, series, size);
  fft.inverseTransform(spectrum, series);
  const lags = last - first + 1;
  const forward = new Float64Array(lags);
  const reversed = new Float64Array(lags);
  for (let i = 0; i < lags; i++) {
    const lag = i + first;
    forward[i] = spectrum[2 * (lag < 0 ? lag + size : lag)]!;
    // a against the reversed b is the convolution at lag + b.length - 1.
    reversed[i] = spectrum[2 * (lag + b.length - 1) + 1]!;
  }
  return { forward, reversed };
}

/** What a transform of a size works with. */
interface Space {
  readonly size: number;
  readonly fft: FFT;
  readonly series: Float64Array;
  readonly spectrum: Float64Array;
}

/** By size: rides of one event are alike. */
const spaces = new Map<number, Space>();

/** Space for at least so many values, kept for the next of the same size. */
function spaceFor(least: number): Space {
  let size = 2;
  while (size < least) size *= 2;
  let space = spaces.get(size);
  if (space === undefined) {
    const [series, spectrum] = [new Float64Array(2 * size), new Float64Array(2 * size)];
    space = { size, fft: new FFT(size), series, spectrum };
    spaces.set(size, space);
  }
  return space;
}

/**
 * From the transform of a + i·b, A·conj(B) + i·A·B: both go back to real series, the first as the real part, the
 * second as the imaginary part.
 */
function multiply(spectrum: Float64Array, out: Float64Array, size: number): void {
  for (let k = 0; k < size; k++) {
    const mirror = (size - k) & (size - 1);
    const re = spectrum[2 * k]!;
    const im = spectrum[2 * k + 1]!;
    const mirrorRe = spectrum[2 * mirror]!;
    const mirrorIm = spectrum[2 * mirror + 1]!;
    const aRe = (re + mirrorRe) / 2;
    const aIm = (im - mirrorIm) / 2;
    const bRe = (im + mirrorIm) / 2;
    const bIm = (mirrorRe - re) / 2;
    const sameRe = aRe * bRe + aIm * bIm;
    const sameIm = aIm * bRe - aRe * bIm;
    const turnedRe = aRe * bRe - aIm * bIm;
    const turnedIm = aRe * bIm + aIm * bRe;
    out[2 * k] = sameRe - turnedIm;
    out[2 * k + 1] = sameIm + turnedRe;
  }
}
