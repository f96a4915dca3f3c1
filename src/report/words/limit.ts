import type { Limit, Unit } from '../../types.ts';
import { number, quantity } from './number.ts';

const spreads: Readonly<Record<Exclude<Limit['of'], 'value'>, string>> = {
  'declared spread': 'honest spreads of meters as declared',
  'field spread': 'honest spreads of meters as found in the field',
};

const ends: Readonly<Record<Limit['end'], string>> = {
  cautious: 'by the cautious end of the interval',
  estimate: 'by the estimate itself',
};

/** Said beside a number whose limits ask more than that it lies beyond them. */
export const heldByCautiousEnd = 'held against these by the cautious end of the interval';

/** What a multiple of a spread comes to is known only beside a measurement. */
export const spreadSaid =
  'A limit in honest spreads lies that many standard deviations of honest submissions from their centre: both depend on the meters and the ride, and a report prints the number that follows.';

/** A limit as its rule sets it, in the unit of the value where that is known. */
export function ruleLimitSaid(limit: Limit, unit: Unit | null): string {
  const sides = (['at least', 'at most'] as const).flatMap((side) => {
    const bound = limit[side];
    return bound === undefined ? [] : [`${side} ${boundSaid(bound, limit.of, unit)}`];
  });
  return `${sides.join(' or ')}, ${ends[limit.end]}`;
}

function boundSaid(bound: number, of: Limit['of'], unit: Unit | null): string {
  if (of !== 'value') return `${number(bound)} ${spreads[of]}`;
  if (unit === null) return number(bound);
  return ruleNumber(bound, unit);
}

/** A number of a rule file with its unit; a share as the file has it, and as a reader does. */
export function ruleNumber(value: number, unit: Unit): string {
  return unit === 'share' ? `${number(value)} (${quantity(value, unit)})` : quantity(value, unit);
}
