import type { Reading } from '../../types.ts';

const blocks = '▁▂▃▄▅▆▇█';
const ramp = '_.-=*#%@';

/** The mean of what was read in each of `cells` equal parts; null where nothing was. */
export function condense(values: readonly Reading[], cells: number): readonly Reading[] {
  const count = Math.min(cells, values.length);
  return Array.from({ length: count }, (_, cell) => {
    const from = Math.floor((cell * values.length) / count);
    const to = Math.floor(((cell + 1) * values.length) / count);
    let sum = 0;
    let read = 0;
    for (let at = from; at < to; at++) {
      const value = values[at] ?? null;
      if (value === null) continue;
      sum += value;
      read++;
    }
    return read === 0 ? null : sum / read;
  });
}

/** A row of block characters between `low` and `high`, blank where nothing was read. */
export function spark(
  values: readonly Reading[],
  [low, high]: readonly [number, number],
  ascii: boolean,
): string {
  const marks = ascii ? ramp : blocks;
  const reach = high > low ? high - low : 1;
  return values
    .map((value) => {
      if (value === null) return ' ';
      const step = Math.floor(((value - low) / reach) * marks.length);
      return marks[Math.min(marks.length - 1, Math.max(0, step))]!;
    })
    .join('');
}
