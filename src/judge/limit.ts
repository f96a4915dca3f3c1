import { type EffectiveLimit, type Limit, levels, type Measured, type Raised, type Rule } from '../types.ts';
import { roundTo } from '../units.ts';

/** The levels that a limit can make, the lightest first. */
export const raisedLevels = levels.filter((level) => level !== 'none') satisfies readonly Raised[];

/** What a comparison needs to know of a measurement; the examples in a rule file have no unit. */
export interface Comparable extends Pick<Measured, 'value' | 'interval'> {
  readonly unit?: Measured['unit'] | undefined;
  readonly expected?: Measured['expected'] | undefined;
}

export type Side = 'above' | 'below';

/**
 * A limit in the unit of the value. A number of the rule file that is "of value" stands as written; a
 * multiple of an honest spread is rounded like the value that it is compared with. Null when the
 * measurement states no honest range: then it cannot be compared, which is not the same as passing.
 */
export function effectiveLimit(limit: Limit, measured: Comparable): EffectiveLimit | null {
  const { 'at least': atLeast = null, 'at most': atMost = null, of, end } = limit;
  if (of === 'value') return { atLeast, atMost, end };
  if (measured.expected === undefined) return null;
  const { centre, spread } = measured.expected[of === 'declared spread' ? 'declared' : 'field'];
  const place = (multiple: number | null) => {
    if (multiple === null) return null;
    const limitInUnit = centre + multiple * spread;
    return measured.unit === undefined ? limitInUnit : roundTo(limitInUnit, measured.unit);
  };
  return { atLeast: place(atLeast), atMost: place(atMost), end };
}

/** On which side a measurement is beyond a limit; null when it is within. */
export function sideBeyond(limit: EffectiveLimit, { value, interval }: Comparable): Side | null {
  const [low, high] = limit.end === 'cautious' ? interval : [value, value];
  if (limit.atLeast !== null && low >= limit.atLeast) return 'above';
  if (limit.atMost !== null && high <= limit.atMost) return 'below';
  return null;
}

/** Whether every limit of a rule can be compared with this measurement. */
export function canCompare(rule: Pick<Rule, 'limits'>, measured: Comparable): boolean {
  return measured.expected !== undefined || Object.values(rule.limits).every((limit) => limit.of === 'value');
}
