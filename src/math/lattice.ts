/** How a product was made whole again; with `nearest`, halves go up. */
export type Rounding = 'nearest' | 'down';

/** Lets a product that is a half in decimals count as one, whatever binary makes of the factor. */
const slack = 1e-9;

/** How the places of a comb follow each other. */
export interface Teeth {
  readonly up: boolean;
  /** Numbers from place to place, before they are made whole. */
  readonly period: number;
  readonly shift: number;
}

export function teethOf(factor: number, rounding: Rounding): Teeth {
  return {
    up: factor > 1,
    period: 1 / Math.abs(factor - 1),
    shift: rounding === 'nearest' ? 0.5 : 0,
  };
}

/**
 * The place at this number of a comb, from 0: floor(factor·n + shift) is n ± a part that grows by one every
 * `period` numbers; there a number is skipped (factor above 1) or met again (below).
 */
export function toothAt({ up, period, shift }: Teeth, number: number): number {
  return up
    ? Math.ceil((number + 1 - shift) * period - slack) + number
    : Math.floor((number + shift) * period + slack) - number;
}

/**
 * Writes into `bins` the comb that a factor leaves in whole numbers up to `most`. Above 1: the numbers that
 * whole numbers times the factor never reach, a share of 1 - 1/factor of all. Between 0.5 and 1: those that
 * they reach twice, a share of 1/factor - 1.
 *
 * @returns how many there are; what `bins` cannot hold is left out
 */
export function writeComb(factor: number, most: number, rounding: Rounding, bins: Int32Array): number {
  const teeth = teethOf(factor, rounding);
  for (let count = 0; count < bins.length; count++) {
    const bin = toothAt(teeth, count);
    if (bin > most) return count;
    bins[count] = bin;
  }
  return bins.length;
}

/** The same comb as a list. */
export function combOf(factor: number, most: number, rounding: Rounding = 'nearest'): number[] {
  const bins = new Int32Array(Math.max(0, most) + 1);
  return Array.from(bins.subarray(0, writeComb(factor, most, rounding, bins)));
}
