import { stretchesWhere } from '../math/stretches.ts';
import type { Series, Stretch } from '../types.ts';
import { settings } from './settings.ts';

/** Stretches that go up for minutes, by altitude over distance (or speed) in windows. */
export function climbs({ channels, length }: Series, [from, to]: Stretch): Stretch[] {
  const { altitude, distance, speed } = channels;
  if (altitude === undefined || (distance === undefined && speed === undefined)) return [];
  const half = settings.climbWindow / 2;
  const travelled = (a: number, b: number) =>
    distance === undefined ? ((speed![a]! + speed![b]!) / 2) * (b - a) : distance[b]! - distance[a]!;
  const goesUp = (t: number) => {
    const a = Math.max(0, t - half);
    const b = Math.min(length - 1, t + half);
    return altitude[b]! - altitude[a]! >= settings.climbGrade * travelled(a, b) && travelled(a, b) > 0;
  };
  return stretchesWhere(from, to, goesUp, settings.climbShortest, half);
}
