import { normalReach } from './normal.ts';

/**
 * 95 % interval of a share by its score (Wilson 1927, J Am Stat Assoc 22:209-212), 0 to 1.
 *
 * @param hits how many of them, 0 to `of`
 * @param of how many were looked at, at least 1
 */
export function wilson(hits: number, of: number): [low: number, high: number] {
  const z = normalReach;
  const share = hits / of;
  const middle = (share + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const reach = (z / (1 + z ** 2 / of)) * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  return [Math.max(0, middle - reach), Math.min(1, middle + reach)];
}
