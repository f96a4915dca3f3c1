import type { Stretch } from '../../types.ts';

/** Closer than this, s, there is nothing more to see. */
const closest = 10;
const zoomStep = 2;

/** Whole seconds within the ride, at least as wide as the closest look. */
export function settle([from, to]: Stretch, length: number): Stretch {
  const width = Math.min(length, Math.max(closest, Math.round(to - from)));
  const start = Math.min(Math.max(0, Math.round((from + to - width) / 2)), length - width);
  return [start, start + width];
}

/** Half or double the width, keeping what is under `at` where it is. */
export function zoom([from, to]: Stretch, at: number, inwards: boolean, length: number): Stretch {
  const factor = inwards ? 1 / zoomStep : zoomStep;
  return settle([at - (at - from) * factor, at + (to - at) * factor], length);
}

/** A stretch with as much of the ride on both sides as shows where it stands. */
export function around([from, to]: Stretch, length: number): Stretch {
  const room = Math.max(15, (to - from) / 2);
  return settle([from - room, to + room], length);
}

/** The view moved so that a second is in it. */
export function including([from, to]: Stretch, at: number, length: number): Stretch {
  if (at < from) return settle([at, at + to - from], length);
  if (at >= to) return settle([at + 1 - (to - from), at + 1], length);
  return [from, to];
}
