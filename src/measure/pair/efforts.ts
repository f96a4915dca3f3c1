import { mean } from '../../math/mean.ts';
import type { Section, Stretch } from '../../types.ts';

/** One sprint. */
export interface Effort {
  /** Between its edges. */
  readonly core: Stretch;
  /** With room before and after for lag and averaging. */
  readonly stretch: Stretch;
}

/** The sprints among the sections that both meters told as a whole, with room around them inside the window. */
export function effortsOf(
  sections: readonly Section[],
  own: Float64Array,
  other: Float64Array,
  [from, to]: Stretch,
  roomSeconds: number,
): Effort[] {
  return sections
    .filter(({ kind }) => kind === 'sprint')
    .map(({ stretch: core }) => ({
      core,
      stretch: [Math.max(from, core[0] - roomSeconds), Math.min(to, core[1] + roomSeconds)] as const,
    }))
    .filter((effort) => isTold(own, other, effort) && isTold(other, own, effort));
}

/**
 * A power that stands still for so long (s) between the edges of a sprint is the last value that a lost link left;
 * nobody sprints so evenly, and coarse steps repeat for less (common practice, no source).
 */
const stillSeconds = 5;

/**
 * Whether a meter told a sprint: every second of it, no held value between its edges, and no zero there nor around
 * them while the other shows at least half of the sprint's power, where nobody coasts.
 */
function isTold(column: Float64Array, beside: Float64Array, { core, stretch }: Effort): boolean {
  const half = mean(beside.subarray(...core)) / 2;
  for (let t = stretch[0]; t < stretch[1]; t++) {
    if (Number.isNaN(column[t]!) || (column[t] === 0 && beside[t]! >= half)) return false;
  }
  let still = 0;
  for (let t = core[0]; t < core[1]; t++) {
    still = t > core[0] && column[t] === column[t - 1] ? still + 1 : 1;
    if (column[t] === 0 || still >= stillSeconds) return false;
  }
  return true;
}
