import type { Series, Stretch } from '../../types.ts';

/**
 * The stretch over which left–right balance shows one value in every second that tells power, however
 * much the rider changes; none where it moves, or shows it for fewer such seconds than asked. A rider's
 * balance moves from turn to turn: one that never does was not measured.
 */
export function stillBalance({ channels, length }: Series, leastSeconds: number): Stretch[] {
  const { balance, power } = channels;
  if (balance === undefined || power === undefined) return [];
  let [from, to, told] = [0, 0, 0];
  for (let i = 0; i < length; i++) {
    if (!(power[i]! > 0) || Number.isNaN(balance[i]!)) continue;
    if (told === 0) from = i;
    else if (balance[i] !== balance[from]) return [];
    to = i + 1;
    told++;
  }
  return told >= leastSeconds ? [[from, to]] : [];
}
