import type { Finding, HonestRange } from '../../types.ts';
import { figure, quantity } from './number.ts';

/** Standard deviations on either side that hold about 95 of 100 honest submissions; 97 lie on one side of either end. */
const reach = 2;

/**
 * Where honest submissions lie. A finding that is limited on one side only states that side alone: how far
 * honest submissions lie on the other, nobody asked (most riders are far below any record).
 */
export interface HonestEnds {
  readonly low: number | null;
  readonly high: number | null;
}

export function honestEnds({ limits }: Pick<Finding, 'limits'>, { centre, spread }: HonestRange): HonestEnds {
  const all = Object.values(limits);
  const below = all.some(({ atMost }) => atMost !== null);
  const above = all.some(({ atLeast }) => atLeast !== null);
  return {
    low: below || !above ? centre - reach * spread : null,
    high: above || !below ? centre + reach * spread : null,
  };
}

/**
 * Where honest submissions lie beside the number that was judged: with meters that keep what is claimed for
 * them, and with meters as they are found in the field. Null where the measure cannot say.
 */
export function honestSaid(finding: Finding): string | null {
  const { expected, subject, unit } = finding;
  if (expected === null) return null;
  const where = (range: HonestRange) => {
    const { low, high } = honestEnds(finding, range);
    if (low === null) return `below ${quantity(high!, unit)}`;
    if (high === null) return `above ${quantity(low, unit)}`;
    return `between ${figure(low, unit)} and ${quantity(high, unit)}`;
  };
  const who = `${shareSaid(finding)} honest ${subject.startsWith('pair') ? 'pairs' : 'submissions'} lie`;
  const [claimed, found] = [where(expected.declared), where(expected.field)];
  return claimed === found
    ? `${who} ${found}.`
    : `${who} ${claimed} where meters keep what is claimed for them, and ${found} with meters as found in the field.`;
}

/** What is shaded on a scale. Null where nothing is. */
export function shadingSaid(finding: Finding): string | null {
  if (finding.expected === null) return null;
  const share = shareSaid(finding);
  return `Shaded: where ${share.charAt(0).toLowerCase()}${share.slice(1)} honest submissions lie, with meters as found in the field.`;
}

function shareSaid(finding: Finding): string {
  const { low, high } = honestEnds(finding, finding.expected!.field);
  return low === null || high === null ? 'At least 97 of 100' : 'About 95 of 100';
}
