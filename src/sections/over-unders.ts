import type { Stretch } from '../types.ts';
import { type LevelStretch, levelStretches } from './levels.ts';
import { settings } from './settings.ts';

/** Stretches in which power goes up and down between levels in turn, as in over-under intervals. */
export function overUnders(power: Float64Array, window: Stretch): Stretch[] {
  const levels = levelStretches(power, window, {
    grain: 10,
    share: settings.setPointShare,
    shortest: 20,
  }).filter(({ stretch }) => stretch[1] - stretch[0] <= settings.overUnderLongest);
  const found: Stretch[] = [];
  let from = 0;
  for (let i = 1; i <= levels.length; i++) {
    if (i < levels.length && continues(levels, from, i)) continue;
    if (i - from >= settings.overUnderLevels)
      found.push([levels[from]!.stretch[0], levels[i - 1]!.stretch[1]]);
    from = i;
  }
  return found;
}

/** The level follows within seconds, is far enough away, and turns the other way than the last change. */
function continues(levels: readonly LevelStretch[], from: number, i: number): boolean {
  const last = levels[i - 1]!;
  const next = levels[i]!;
  if (next.stretch[0] - last.stretch[1] > 20) return false;
  const change = next.watts / last.watts - 1;
  if (Math.abs(change) < settings.overUnderStep) return false;
  return i - 1 === from || change > 0 !== last.watts > levels[i - 2]!.watts;
}
