import type { Finding, HonestRange } from '../../types.ts';
import { figure, quantity } from './number.ts';

/** Standard deviations that hold about 95 of 100 honest submissions. */
const reach = 2;

/** Where about 95 of 100 honest submissions lie. */
export function honestEnds({ centre, spread }: HonestRange): readonly [low: number, high: number] {
  return [centre - reach * spread, centre + reach * spread];
}

/**
 * Where honest submissions lie beside the number that was judged: with meters that keep what is claimed for
 * them, and with meters as they are found in the field. Null where the measure cannot say.
 */
export function honestSaid({ expected, subject, unit }: Finding): string | null {
  if (expected === null) return null;
  const between = (range: HonestRange) => {
    const [low, high] = honestEnds(range);
    return `between ${figure(low, unit)} and ${quantity(high, unit)}`;
  };
  const who = `About 95 of 100 honest ${subject.startsWith('pair') ? 'pairs' : 'submissions'} lie`;
  const [claimed, found] = [between(expected.declared), between(expected.field)];
  return claimed === found
    ? `${who} ${found}.`
    : `${who} ${claimed} where meters keep what is claimed for them, and ${found} with meters as found in the field.`;
}
