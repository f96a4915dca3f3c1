import { type Channel, type Columns, channels, type Defect, type ExtraMeter } from '../types.ts';
import { sortMeters } from './meters.ts';

/** Columns as a format read them: all of one length, NaN where there is nothing. */
export interface RawColumns {
  readonly time: Float64Array;
  readonly channels: { readonly [C in Channel]?: Float64Array | undefined };
  /** Columns beside the power channel that may be meters of their own. */
  readonly meters: readonly ExtraMeter[];
}

export interface Assembled {
  readonly time: Float64Array;
  readonly channels: Columns;
  readonly extraMeters: readonly ExtraMeter[];
  readonly defects: readonly Defect[];
}

/**
 * What every format does at its end: records without a time are left out (and counted), channels without
 * a single value are absent, further meters are told from copies of the power channel.
 */
export function assemble(raw: RawColumns): Assembled {
  const defects: Defect[] = [];
  const kept = timedRecords(raw.time);
  if (kept !== null) {
    defects.push({
      id: 'unreadable-values',
      values: { count: raw.time.length - kept.length, column: 'time' },
    });
  }
  const select = (column: Float64Array) =>
    kept === null ? column : Float64Array.from(kept, (i) => column[i]!);

  const filled: { [C in Channel]?: Float64Array } = {};
  for (const channel of channels) {
    const column = raw.channels[channel];
    if (column === undefined) continue;
    const selected = select(channel === 'heartRate' ? withoutZeros(column) : column);
    if (hasValue(selected)) filled[channel] = selected;
  }
  const meters = sortMeters(
    filled.power,
    raw.meters.map(({ name, power }) => ({ name, power: select(power) })),
  );
  if (meters.standIn !== null) {
    filled.power = meters.standIn.power;
    defects.push({ id: 'power-in-developer-field', values: { name: meters.standIn.name } });
  }
  return { time: select(raw.time), channels: filled, extraMeters: meters.extra, defects };
}

/** Indices of the records that have a time; null when all have. */
function timedRecords(time: Float64Array): Uint32Array | null {
  const kept = new Uint32Array(time.length);
  let count = 0;
  for (let i = 0; i < time.length; i++) if (Number.isFinite(time[i]!)) kept[count++] = i;
  return count === time.length ? null : kept.subarray(0, count);
}

/** Recorders write 0 bpm while they hear no strap: nobody rides at that heart rate, so it is missing. */
function withoutZeros(column: Float64Array): Float64Array {
  const heard = column.slice();
  for (let i = 0; i < heard.length; i++) if (heard[i] === 0) heard[i] = Number.NaN;
  return heard;
}

export function hasValue(column: Float64Array): boolean {
  return column.some((value) => !Number.isNaN(value));
}
