import { SecondState, type Series } from '../../types.ts';

/**
 * The seconds of a series that a record fell into, without those that are only carried over: a recorder
 * that writes irregularly does not hold its values, it leaves them out.
 */
export interface Records {
  /** Second on the series of each record. */
  readonly at: Int32Array;
  /** W, NaN where the record holds none. */
  readonly power: Float64Array;
  /** 1 where recording broke off (a gap or a pause) before this record. */
  readonly broken: Uint8Array;
}

const kept = new WeakMap<Series, Records>();

/** Records of a series that holds power, worked out once; null where it holds none. */
export function recordsOf(series: Series): Records | null {
  const { power } = series.channels;
  if (power === undefined) return null;
  const known = kept.get(series) ?? collect(series, power);
  kept.set(series, known);
  return known;
}

/** How many seconds record `i` stands for. */
export function secondsOf({ at, broken }: Records, i: number): number {
  return i + 1 < at.length && broken[i + 1] === 0 ? at[i + 1]! - at[i]! : 1;
}

function collect({ state, length }: Series, column: Float64Array): Records {
  const at = new Int32Array(length);
  const power = new Float64Array(length);
  const broken = new Uint8Array(length);
  let count = 0;
  let breaks = 1;
  for (let i = 0; i < length; i++) {
    if (state[i] === SecondState.bridged) continue;
    if (state[i] !== SecondState.recorded) {
      breaks = 1;
      continue;
    }
    at[count] = i;
    power[count] = column[i]!;
    broken[count] = breaks;
    breaks = 0;
    count++;
  }
  return { at: at.subarray(0, count), power: power.subarray(0, count), broken: broken.subarray(0, count) };
}
