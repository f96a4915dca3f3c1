import type { Series, Subjects } from '../../types.ts';

/** Power sample by sample, each with its place in the ride. */
export interface Samples {
  /** W, NaN where missing. */
  readonly power: Float64Array;
  /** Second on the primary's series of each sample; not ascending where a clock runs backwards. */
  readonly at: Float64Array;
}

/**
 * Power as the file holds it, in its own order, before any second was averaged or moved: what questions
 * about the digits and the sequence of a recording need. A second recording, which has no other place in
 * the ride than its aligned grid, is taken from there.
 */
export function samplesOf(all: Subjects, series: Series): Samples | null {
  const column = series.channels.power;
  if (column === undefined) return null;
  const { time, channels } = series.recording;
  const onGrid = series !== all.primary || channels.power === undefined;
  const power = onGrid ? column : channels.power;
  const at = new Float64Array(power.length);
  for (let i = 0; i < at.length; i++) at[i] = onGrid ? i : Math.round(time[i]!) - series.start;
  return { power, at };
}
