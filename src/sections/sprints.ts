import type { Stretch } from '../types.ts';
import { settings } from './settings.ts';

/** Short hard efforts, from edge to edge; a gap inside leaves one out. */
export function sprints(power: Float64Array, [from, to]: Stretch): Stretch[] {
  const mean = meanPedalling(power, from, to);
  const peak = settings.sprintPeak * mean;
  const edge = settings.sprintEdge * mean;
  const found: Stretch[] = [];
  for (let t = from + 1; t + 1 < to; t++) {
    if (!((power[t - 1]! + power[t]! + power[t + 1]!) / 3 >= peak)) continue;
    let start = t;
    while (start > from && power[start - 1]! >= edge) start--;
    let end = t + 1;
    while (end < to && power[end]! >= edge) end++;
    const seconds = end - start;
    if (seconds >= settings.sprintShortest && seconds <= settings.sprintLongest) found.push([start, end]);
    t = end;
  }
  return found;
}

function meanPedalling(power: Float64Array, from: number, to: number): number {
  let sum = 0;
  let count = 0;
  for (let t = from; t < to; t++) {
    if (!(power[t]! > 0)) continue;
    sum += power[t]!;
    count++;
  }
  return sum / count;
}
