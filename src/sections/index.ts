import type { AlignedSet, Section, Stretch } from '../types.ts';

/** Finds the stretches of the race that are worth comparing on their own. */
export function findSections(_set: AlignedSet, [from, to]: Stretch): Section[] {
  const third = Math.floor((to - from) / 3);
  return [
    { kind: 'first third', stretch: [from, from + third] },
    { kind: 'last third', stretch: [to - third, to] },
  ];
}
