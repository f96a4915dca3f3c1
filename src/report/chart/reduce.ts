import type { Reading } from '../../types.ts';

/** One decimal is a tenth of a pixel: finer than anyone sees. */
export const round = (value: number) => Math.round(value * 10) / 10;

/** Lowest and highest reading, or null when there is none. */
export function extent(
  ...series: readonly (readonly Reading[])[]
): readonly [low: number, high: number] | null {
  let low = Infinity;
  let high = -Infinity;
  for (const values of series) {
    for (const value of values) {
      if (value === null) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low > high ? null : [low, high];
}

/**
 * The path of a series over `width` pixels. Where several seconds share a pixel the path runs through the
 * lowest and the highest of them in the order in which they came, so that no peak is lost; where nothing
 * was recorded it breaks.
 */
export function tracePath(
  values: readonly Reading[],
  x: (index: number) => number,
  y: (value: number) => number,
): string {
  const pen = new Pen();
  let at = 0;
  while (at < values.length) {
    const column = Math.floor(x(at));
    let next = at + 1;
    while (next < values.length && Math.floor(x(next)) === column) next++;
    const shared = next > at + 1;
    const kept = shared ? ends(values, at, next) : values[at] === null ? [] : [at];
    if (kept.length === 0) pen.lift();
    for (const index of kept) pen.to(shared ? column : x(index), y(values[index]!));
    at = next;
  }
  return pen.path;
}

/** Where the lowest and the highest of values[from..to) stand, in order; none when nothing was read there. */
function ends(values: readonly Reading[], from: number, to: number): readonly number[] {
  let lowest = -1;
  let highest = -1;
  for (let at = from; at < to; at++) {
    const value = values[at] ?? null;
    if (value === null) continue;
    if (lowest < 0 || value < values[lowest]!) lowest = at;
    if (highest < 0 || value > values[highest]!) highest = at;
  }
  if (lowest < 0) return [];
  return lowest === highest ? [lowest] : lowest < highest ? [lowest, highest] : [highest, lowest];
}

/** Draws in tenths of a pixel, each stroke from the last: half as long as absolute places, and as exact. */
class Pen {
  path = '';
  private x = 0;
  private y = 0;
  private down = false;

  lift(): void {
    this.down = false;
  }

  to(x: number, y: number): void {
    const [right, below] = [Math.round(x * 10), Math.round(y * 10)];
    const [dx, dy] = [right - this.x, below - this.y];
    if (!this.down) this.path += `M${right / 10} ${below / 10}`;
    else if (dx === 0) this.path += dy === 0 ? '' : `v${dy / 10}`;
    else if (dy === 0) this.path += `h${dx / 10}`;
    else this.path += `l${dx / 10}${dy < 0 ? '' : ' '}${dy / 10}`;
    this.x = right;
    this.y = below;
    this.down = true;
  }
}

/** A path through points, unbroken. */
export function polyline(points: readonly (readonly [x: number, y: number])[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

/** First minus second, where both were read. Taken before any smoothing: a dropout must not leave a spike. */
export function difference(first: readonly Reading[], second: readonly Reading[]): readonly Reading[] {
  return first.map((value, index) => {
    const other = second[index] ?? null;
    return value === null || other === null ? null : value - other;
  });
}

/** Mean over `window` seconds around each second; null where less than half of them was read. */
export function smooth(values: readonly Reading[], window: number): readonly Reading[] {
  const half = Math.floor(window / 2);
  let sum = 0;
  let read = 0;
  const take = (index: number, sign: 1 | -1) => {
    const value = values[index] ?? null;
    if (value === null) return;
    sum += sign * value;
    read += sign;
  };
  for (let at = 0; at < half; at++) take(at, 1);
  return values.map((_, at) => {
    take(at + half, 1);
    take(at - half - 1, -1);
    return read > half ? sum / read : null;
  });
}
