import type { ExtraMeter } from '../types.ts';

/** Words beside "power" that make it something else than what a meter on this rider reads now. */
const notAMeter =
  /left|right|balance|phase|avg|average|mean|max|min|peak|normal|target|zone|threshold|critical|form|air|aero|wind|lap|smooth|weight|ratio|accum/i;
const named = /(?:^|[^a-z])(?:power|watts?)(?:[^a-z]|$)/i;
const watts = /^(?:|w|watts?)$/i;

/** Whether a field of this name and unit (both as the file has them) may hold a meter's power in watts. */
export function isMeterName(name: string, unit: string): boolean {
  return watts.test(unit.trim()) && named.test(name) && !notAMeter.test(name);
}

export interface Meters {
  /** Further meters than the power channel. */
  readonly extra: readonly ExtraMeter[];
  /** The meter that stands in for the power channel where the file has none. */
  readonly standIn: ExtraMeter | null;
}

/**
 * Tells further meters from columns that only repeat one already there, or that stayed at zero because
 * their meter was absent.
 */
export function sortMeters(power: Float64Array | undefined, candidates: readonly ExtraMeter[]): Meters {
  const seen = power === undefined ? [] : [power];
  const found: ExtraMeter[] = [];
  for (const candidate of candidates) {
    if (!candidate.power.some((value) => value > 0)) continue;
    if (seen.some((other) => repeats(candidate.power, other))) continue;
    seen.push(candidate.power);
    found.push(candidate);
  }
  const [first, ...rest] = found;
  return power === undefined && first !== undefined
    ? { extra: rest, standIn: first }
    : { extra: found, standIn: null };
}

/** Watts by which a copy may differ: one of the two was rounded to whole watts. */
const rounding = 0.5;
/** Share of records in which a copy must be equal: now and then a recorder refreshes only one of the two. */
const equalShare = 0.99;

function repeats(a: Float64Array, b: Float64Array): boolean {
  let both = 0;
  let equal = 0;
  for (let i = 0; i < a.length; i++) {
    const difference = Math.abs(a[i]! - b[i]!);
    if (Number.isNaN(difference)) continue;
    both++;
    if (difference <= rounding) equal++;
  }
  return both > 0 && equal >= equalShare * both;
}
