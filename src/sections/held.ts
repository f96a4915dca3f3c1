import { plateaus } from '../math/plateaus.ts';
import { robustSpread } from '../math/robust-spread.ts';
import { stretchesWhere } from '../math/stretches.ts';
import type { Stretch } from '../types.ts';
import type { LevelStretch } from './levels.ts';
import { settings } from './settings.ts';

/** A stretch between two steps of power. */
export interface HeldLevel extends LevelStretch {
  /** Standard deviation of ten-second means around the level, as a share of it. */
  readonly spread: number;
}

/**
 * Cuts the pedalling of the window where power steps from one level to another. How large a step must be
 * follows from how much neighbouring means differ in this ride, so that legs that are uneven make no levels.
 */
export function heldLevels(power: Float64Array, [from, to]: Stretch): HeldLevel[] {
  const grain = settings.heldGrain;
  const count = Math.floor((to - from) / grain);
  const logs = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let t = from + i * grain; t < from + (i + 1) * grain; t++) sum += power[t]!;
    logs[i] = sum >= settings.heldWatts * grain ? Math.log(sum / grain) : Number.NaN;
  }
  const steps = logs.subarray(1).map((log, i) => log - logs[i]!);
  const noise = Math.max(settings.heldNoise, robustSpread(steps) / Math.SQRT2);
  const longest = settings.heldLongest / grain;
  return stretchesWhere(0, count, (i) => !Number.isNaN(logs[i]!)).flatMap(([first, last]) => {
    const run = logs.subarray(first, last);
    const ends = plateaus(run, { noise, price: settings.heldPrice, longest });
    return ends.map((end, k) => {
      const begin = k === 0 ? 0 : ends[k - 1]!;
      const { centre, spread } = levelOf(run.subarray(begin, end));
      const stretch: Stretch = [from + (first + begin) * grain, from + (first + end) * grain];
      return { stretch, watts: Math.exp(centre), spread };
    });
  });
}

/** Centre of the logarithms, and the spread of the means of two grains around it. */
function levelOf(logs: Float64Array): { centre: number; spread: number } {
  const centre = logs.reduce((a, b) => a + b, 0) / logs.length;
  let squares = 0;
  let pairs = 0;
  for (let i = 0; i + 1 < logs.length; i += 2) {
    squares += ((logs[i]! + logs[i + 1]!) / 2 - centre) ** 2;
    pairs++;
  }
  return { centre, spread: pairs < 2 ? 0 : Math.sqrt(squares / (pairs - 1)) };
}
