import type { Measure } from './measure.ts';

/** Every measure, in the order of the families: recording, trace, agreement, physiology. */
export const measures: readonly Measure[] = [];
