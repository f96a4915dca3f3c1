import type { Stretch } from '../types.ts';

/** A stretch in which power keeps to one level. */
export interface LevelStretch {
  readonly stretch: Stretch;
  readonly watts: number;
}

/**
 * The longest stretches in which means over `grain` seconds stay within a share of their running level,
 * found greedily from the start; a mean with a gap, or without power, ends a level.
 */
export function levelStretches(
  power: Float64Array,
  [from, to]: Stretch,
  { grain, share, shortest }: { grain: number; share: number; shortest: number },
): LevelStretch[] {
  const found: LevelStretch[] = [];
  let start = from;
  let sum = 0;
  let count = 0;
  const close = (end: number) => {
    if (count > 0 && end - start >= shortest) found.push({ stretch: [start, end], watts: sum / count });
    start = end;
    sum = 0;
    count = 0;
  };
  for (let t = from; t + grain <= to; t += grain) {
    const mean = meanOf(power, t, t + grain);
    const keeps = mean > 0 && (count === 0 || Math.abs(mean / (sum / count) - 1) <= share);
    if (!keeps) close(t);
    if (!(mean > 0)) {
      start = t + grain;
      continue;
    }
    sum += mean;
    count++;
  }
  close(from + Math.floor((to - from) / grain) * grain);
  return found;
}

/** Mean of a stretch; NaN when any second is missing. */
function meanOf(power: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let t = from; t < to; t++) sum += power[t]!;
  return sum / (to - from);
}
