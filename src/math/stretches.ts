import type { Stretch } from '../types.ts';

/**
 * The maximal stretches of `[from, to)` in which `holds` is true, at least `shortest` long; gaps of up
 * to `bridge` in between are joined over.
 */
export function stretchesWhere(
  from: number,
  to: number,
  holds: (index: number) => boolean,
  shortest = 1,
  bridge = 0,
): Stretch[] {
  const found: Stretch[] = [];
  let start = -1;
  let last = -1;
  for (let i = from; i <= to; i++) {
    if (i < to && holds(i)) {
      if (start < 0) start = i;
      last = i;
    } else if (start >= 0 && (i === to || i - last > bridge)) {
      if (last + 1 - start >= shortest) found.push([start, last + 1]);
      start = -1;
    }
  }
  return found;
}

/** Stretches in order of time, those that touch made one. */
export function touching(stretches: readonly Stretch[]): Stretch[] {
  const out: Stretch[] = [];
  for (const [from, to] of [...stretches].sort(([a], [b]) => a - b)) {
    const last = out[out.length - 1];
    if (last !== undefined && from <= last[1]) out[out.length - 1] = [last[0], Math.max(last[1], to)];
    else out.push([from, to]);
  }
  return out;
}

/** Summed length of stretches that do not overlap. */
export function totalLength(stretches: readonly Stretch[]): number {
  let total = 0;
  for (const [from, to] of stretches) total += to - from;
  return total;
}

/** The longest stretch's length, 0 where there is none. */
export function longestLength(stretches: readonly Stretch[]): number {
  let longest = 0;
  for (const [from, to] of stretches) longest = Math.max(longest, to - from);
  return longest;
}
