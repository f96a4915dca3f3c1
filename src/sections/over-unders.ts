import type { Stretch } from '../types.ts';
import type { LevelStretch } from './levels.ts';
import { settings } from './settings.ts';

/** Stretches in which power goes up and down between levels in turn, as in over-under intervals. */
export function overUnders(held: readonly LevelStretch[]): Stretch[] {
  const levels = held.filter(({ stretch: [from, to] }) => {
    return to - from >= settings.overUnderShortest && to - from <= settings.overUnderLongest;
  });
  const found: Stretch[] = [];
  let from = 0;
  for (let i = 1; i <= levels.length; i++) {
    if (i < levels.length && continues(levels, from, i)) continue;
    const long = i - from >= settings.overUnderLevels;
    if (long) found.push([levels[from]!.stretch[0], levels[i - 1]!.stretch[1]]);
    // The last level may begin the next row of them, unless it belongs to one already.
    from = !long && i < levels.length && continues(levels, i - 1, i) ? i - 1 : i;
  }
  return found;
}

/** The level follows within seconds, is far enough away, and turns back to the one before the last. */
function continues(levels: readonly LevelStretch[], from: number, i: number): boolean {
  const last = levels[i - 1]!;
  const next = levels[i]!;
  if (next.stretch[0] - last.stretch[1] > settings.overUnderBetween) return false;
  const change = next.watts / last.watts - 1;
  if (Math.abs(change) < settings.overUnderStep) return false;
  if (i - 1 === from) return true;
  const before = levels[i - 2]!;
  const returns = Math.abs(next.watts / before.watts - 1) <= settings.overUnderAlike;
  return returns && change > 0 !== last.watts > before.watts;
}
