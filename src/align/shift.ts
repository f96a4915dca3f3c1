import { type Channel, type Columns, channels, SecondState, type Series } from '../types.ts';
import type { Segment } from './segments.ts';

/**
 * Puts the second's samples on the primary's grid by whole seconds: values are moved, never mixed.
 * Seconds outside the second recording are NaN and `missing`.
 */
export function shift(second: Series, primary: Series, segments: readonly Segment[]): Series {
  const move = (column: Float64Array) => moved(column, primary.length, segments, Number.NaN, Float64Array);
  const columns: { [C in Channel]?: Float64Array } = {};
  for (const channel of channels) {
    const column = second.channels[channel];
    if (column !== undefined) columns[channel] = move(column);
  }
  return {
    recording: second.recording,
    start: primary.start,
    length: primary.length,
    channels: columns satisfies Columns,
    state: moved(second.state, primary.length, segments, SecondState.missing, Uint8Array),
    extraMeters: second.extraMeters.map(({ name, power }) => ({ name, power: move(power) })),
  };
}

function moved<T extends Float64Array | Uint8Array>(
  column: T,
  length: number,
  segments: readonly Segment[],
  nothing: number,
  Column: new (length: number) => T,
): T {
  const out = new Column(length).fill(nothing) as T;
  for (const { stretch, lag } of segments) {
    const from = Math.max(stretch[0], lag, 0);
    const to = Math.min(stretch[1], column.length + lag, length);
    if (to > from) out.set(column.subarray(from - lag, to - lag) as never, from);
  }
  return out;
}
