import { type Channel, type Columns, channels, SecondState } from '../types.ts';
import type { Order } from './order.ts';

/**
 * Lays one column on the 1 s grid: records of one second are averaged (missing ones left out), bridged
 * seconds carry the last value on, every other second without a record is NaN.
 */
export function layColumn(column: Float64Array, order: Order, state: Uint8Array): Float64Array {
  const { records, seconds } = order;
  const start = seconds[0]!;
  const laid = new Float64Array(state.length).fill(Number.NaN);
  for (let i = 0; i < records.length; ) {
    const second = seconds[i]!;
    let end = i + 1;
    while (end < records.length && seconds[end] === second) end++;
    laid[second - start] = end === i + 1 ? column[records[i]!]! : meanAt(column, records, i, end);
    i = end;
  }
  for (let i = 1; i < laid.length; i++) if (state[i] === SecondState.bridged) laid[i] = laid[i - 1]!;
  return laid;
}

/** Mean of what the records from `from` to `to` hold; NaN where they hold nothing. */
function meanAt(column: Float64Array, records: Int32Array, from: number, to: number): number {
  let sum = 0;
  let count = 0;
  for (let i = from; i < to; i++) {
    const value = column[records[i]!]!;
    if (Number.isNaN(value)) continue;
    sum += value;
    count++;
  }
  return sum / count;
}

export function layColumns(columns: Columns, order: Order, state: Uint8Array): Columns {
  const laid: { [C in Channel]?: Float64Array } = {};
  for (const channel of channels) {
    const column = columns[channel];
    if (column !== undefined) laid[channel] = layColumn(column, order, state);
  }
  return laid;
}
