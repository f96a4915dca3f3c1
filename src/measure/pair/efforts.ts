import type { Section, Stretch } from '../../types.ts';

/** One sprint. */
export interface Effort {
  /** Between its edges. */
  readonly core: Stretch;
  /** With room before and after for lag and averaging. */
  readonly stretch: Stretch;
}

/** The sprints among the sections that are whole on both meters, with room around them inside the window. */
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
    .filter(({ stretch }) => isWhole(own, stretch) && isWhole(other, stretch));
}

function isWhole(column: Float64Array, [from, to]: Stretch): boolean {
  for (let t = from; t < to; t++) if (Number.isNaN(column[t]!)) return false;
  return true;
}
