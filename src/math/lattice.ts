/** How a product was made whole again. */
export type Rounding = 'nearest' | 'down';

/** Lets a product that is a half in decimals count as one, whatever binary makes of the factor. */
const slack = 1e-9;

/**
 * Whole numbers up to `most` that whole numbers times `factor` (above 1) never reach. Their share is
 * 1 - 1/factor, one every factor/(factor - 1). With `nearest`, halves go up.
 */
export function emptyBins(factor: number, most: number, rounding: Rounding = 'nearest'): number[] {
  const excess = factor - 1;
  const shift = rounding === 'nearest' ? 0.5 : 0;
  const bins: number[] = [];
  // floor(factor·n + shift) = n + floor(excess·n + shift): it skips a number whenever the last part grows.
  for (let j = 1; ; j++) {
    const bin = Math.ceil((j - shift) / excess - slack) + j - 1;
    if (bin > most) return bins;
    bins.push(bin);
  }
}

/**
 * Whole numbers up to `most` that whole numbers times `factor` (above 0.5 and below 1) reach twice. Their
 * share is 1/factor - 1. With `nearest`, halves go up.
 */
export function doubledBins(factor: number, most: number, rounding: Rounding = 'nearest'): number[] {
  const lack = 1 - factor;
  const shift = rounding === 'nearest' ? 0.5 : 0;
  const bins: number[] = [];
  for (let j = 1; ; j++) {
    const bin = Math.floor((j - 1 + shift) / lack + slack) + 1 - j;
    if (bin > most) return bins;
    bins.push(bin);
  }
}
