import { stretchesWhere } from '../math/stretches.ts';
import { SecondState, type Series } from '../types.ts';
import { defineMeasure, exact, notApplicable } from './measure.ts';

/**
 * Share of the records whose place in time is in doubt: as many as each backward step of the clock covers
 * (at most the records before or after it: a clock that is put right in the first minute misplaces only
 * that), far from the body of the ride, without a time, or sharing a second with another where no
 * neighbouring second is free for it. An exact count. Its stretches are the seconds that the clock went back over,
 * and those that still hold several records.
 */
export const misplacedShare = defineMeasure({
  id: 'misplaced-share',
  of: 'recording',
  unit: 'share',
  options: {},
  compute(_all, recording) {
    const { time } = recording.recording;
    if (time.length === 0) return notApplicable('too-short', { seconds: 0, needed: 1 });
    const { behind, steps, timeless, far, whole, furthest, twice, records } = walk(recording, time);
    // Several records a second are no fault where the clock itself tells them apart.
    const crowded = whole ? surplus(records, recording.state) : new Int32Array(recording.length);
    const doubled = crowded.reduce((sum, count) => sum + count, 0);
    // What was written behind the clock usually shares its second as well: no record counts twice.
    const misplaced = Math.min(time.length, Math.max(behind, doubled) + timeless + far);
    return exact(misplaced / time.length, time.length, {
      stretches: stretchesWhere(0, recording.length, (second) => twice[second]! > 0 || crowded[second]! > 0),
      details: {
        records: time.length,
        misplaced,
        backward: steps,
        behind,
        furthest: { value: furthest, unit: 's' },
        far,
        doubled,
        timeless,
      },
    });
  },
});

function walk({ start, length }: Series, time: Float64Array) {
  let latest = -Infinity;
  /** How many backward steps cover each second: their beginnings less their ends, summed up below. */
  const twice = new Int32Array(length + 1);
  /** How many records bear the time of each second. */
  const records = new Int32Array(length);
  const found = { behind: 0, steps: 0, timeless: 0, far: 0, whole: true, furthest: 0, twice, records };
  let previous = -Infinity;
  for (let k = 0; k < time.length; k++) {
    const clock = time[k]!;
    if (!Number.isFinite(clock)) {
      found.timeless++;
      continue;
    }
    if (!Number.isInteger(clock)) found.whole = false;
    const second = Math.round(clock);
    if (second < start || second >= start + length) {
      found.far++;
      continue;
    }
    records[second - start]!++;
    if (clock < latest && clock < previous) {
      const back = Math.round(latest - clock);
      found.steps++;
      found.furthest = Math.max(found.furthest, back);
      found.behind += Math.min(back, k, time.length - k);
      twice[second - start]!++;
      twice[Math.round(latest) - start]!--;
    }
    latest = Math.max(latest, clock);
    previous = clock;
  }
  for (let second = 1; second < length; second++) twice[second]! += twice[second - 1]!;
  return found;
}

/**
 * How many records of each second had to share it. A second that nobody's time names and that is recorded all
 * the same took one of a neighbour's.
 */
function surplus(records: Int32Array, state: Uint8Array): Int32Array {
  const crowded = records.map((count) => Math.max(0, count - 1));
  for (let second = 0; second < records.length; second++) {
    if (records[second] !== 0 || state[second] !== SecondState.recorded) continue;
    const giver = second > 0 && crowded[second - 1]! > 0 ? second - 1 : second + 1;
    crowded[giver]!--;
  }
  return crowded;
}
