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
  if (series !== all.primary || channels.power === undefined) {
    return { power: column, at: column.map((_, second) => second) };
  }
  return { power: channels.power, at: time.map((clock) => Math.round(clock) - series.start) };
}
