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
  let place = x(0);
  while (at < values.length) {
    const column = Math.floor(place);
    // The lowest and the highest of the seconds that share this column.
    let lowest = -1;
    let highest = -1;
    let next = at;
    let ahead = place;
    do {
      const value = values[next] ?? null;
      if (value !== null) {
        if (lowest < 0 || value < values[lowest]!) lowest = next;
        if (highest < 0 || value > values[highest]!) highest = next;
      }
      ahead = x(++next);
    } while (next < values.length && Math.floor(ahead) === column);
    const across = next > at + 1 ? column : place;
    if (lowest < 0) pen.lift();
    else {
      const [first, last] = lowest < highest ? [lowest, highest] : [highest, lowest];
      pen.to(across, y(values[first]!));
      if (last !== first) pen.to(across, y(values[last]!));
    }
    at = next;
    place = ahead;
  }
  return pen.path;
}

/** Whole tenths as a path has them: without the nought before the point. */
function tenths(value: number): string {
  const size = Math.abs(value);
  const whole = Math.floor(size / 10);
  const rest = size - 10 * whole;
  const sign = value < 0 ? '-' : '';
  if (rest === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}.${rest}` : `${sign}${whole}.${rest}`;
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
    const { dx, dy } = this.go(x, y);
    if (!this.down) this.path += `M${tenths(this.x)} ${tenths(this.y)}`;
    else if (dx === 0) this.path += dy === 0 ? '' : `v${tenths(dy)}`;
    else if (dy === 0) this.path += `h${tenths(dx)}`;
    else this.path += `l${tenths(dx)}${dy < 0 ? '' : ' '}${tenths(dy)}`;
    this.down = true;
  }

  /** A stroke without length: its round ends make a dot. */
  dot(x: number, y: number): void {
    const { dx, dy } = this.go(x, y);
    this.path += `m${tenths(dx)}${dy < 0 ? '' : ' '}${tenths(dy)}h0`;
  }

  private go(x: number, y: number): { readonly dx: number; readonly dy: number } {
    const [right, below] = [Math.round(x * 10), Math.round(y * 10)];
    const way = { dx: right - this.x, dy: below - this.y };
    this.x = right;
    this.y = below;
    return way;
  }
}

type Point = readonly [x: number, y: number];

/** A path through points, unbroken. */
export function polyline(points: readonly Point[]): string {
  const pen = new Pen();
  for (const [x, y] of points) pen.to(x, y);
  return pen.path;
}

/** Points on whole pixels, each once, as strokes without length: the ways between them are short from left to right. */
export function dotPath(points: readonly Point[]): string {
  const pen = new Pen();
  const places = new Set(points.map(([x, y]) => `${Math.round(x)} ${Math.round(y)}`));
  const sorted = [...places].map((place) => place.split(' ').map(Number) as [number, number]);
  for (const [x, y] of sorted.sort((a, b) => a[0] - b[0] || a[1] - b[1])) pen.dot(x, y);
  return pen.path;
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
