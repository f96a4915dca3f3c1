import type { Series, Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { type Records, recordsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Counts records that stand alone above everything around them by more than a rider on a wheel can add
 * and take away within a second, and every record of more watts than any rider makes, however many stand
 * together: these make one place, and weigh by their number. Torque alone does not tell: a false sample may come
 * with a false cadence.
 * Outdoors, one whose energy shows up as speed is left standing.
 */
export const spikeCount = defineMeasure({
  id: 'spike-count',
  of: 'recording',
  unit: 'count',
  options: {
    widestRecords: number('longest run of high records that counts as one spike'),
    aroundRecords: number('records looked at on either side'),
    aboveWatts: number('how far above the highest of them, at least, W'),
    aboveFactor: number('and at least this many times the highest of them'),
    beyondWatts: number('from where a record is one whatever is around it: beyond any rider, W'),
    massKg: number('rider and bicycle at their lightest, to turn energy into speed, kg'),
    speedShare: number('share of the speed due from which a sample counts as ridden'),
  },
  compute(all, recording, options) {
    const records = recordsOf(recording);
    if (records === null) return notApplicable('no-channel', { channel: 'power' });
    const { places, spikes, valid, highest } = find(recording, records, options);
    const first = places[0];
    return exact(spikes, valid, {
      stretches: places,
      details:
        first === undefined
          ? { spikes }
          : {
              spikes,
              places: places.length,
              within: { value: options.widestRecords, unit: 's' },
              highest: { value: highest, unit: 'W' },
              first: first[0],
            },
      charts: first === undefined ? [] : [closeUps(`spikes:${subjectOf(all, recording)}`, recording, places)],
    });
  },
});

interface Options {
  readonly widestRecords: number;
  readonly aroundRecords: number;
  readonly aboveWatts: number;
  readonly aboveFactor: number;
  readonly beyondWatts: number;
  readonly massKg: number;
  readonly speedShare: number;
}

function find(recording: Series, records: Records, options: Options) {
  const { at, power, broken } = records;
  const outdoors = recording.recording.indoors === false;
  const places: Stretch[] = [];
  let spikes = 0;
  let valid = 0;
  let highest = 0;
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    if (Number.isNaN(watts)) continue;
    valid++;
    if (watts >= options.beyondWatts) {
      highest = Math.max(highest, watts);
      spikes++;
      const goesOn = broken[i] === 0 && power[i - 1]! >= options.beyondWatts;
      places.push([goesOn ? places.pop()![0] : at[i]!, at[i]! + 1]);
      continue;
    }
    // A spike begins by a step up; it cannot begin where recording broke off.
    if (broken[i] === 1 || !(watts - power[i - 1]! >= options.aboveWatts)) continue;
    const width = widthOf(power, i, options);
    if (width === 0 || (outdoors && becameSpeed(recording, records, i, width, options))) continue;
    for (let k = 0; k < width; k++) highest = Math.max(highest, power[i + k]!);
    spikes++;
    places.push([at[i]!, at[i + width - 1]! + 1]);
    i += width - 1;
  }
  return { places, spikes, valid, highest };
}

/** Records until it is over; 0 when its surroundings rise with it. */
function widthOf(power: Float64Array, from: number, options: Options): number {
  const before = highestOf(power, from - options.aroundRecords, from);
  let lowest = Infinity;
  for (let width = 1; width <= options.widestRecords; width++) {
    lowest = Math.min(lowest, power[from + width - 1]!);
    const after = highestOf(power, from + width, from + width + options.aroundRecords);
    const around = Math.max(before, after);
    if (lowest - around >= options.aboveWatts && lowest >= options.aboveFactor * around) return width;
  }
  return 0;
}

/** Highest value that is there, at least 0. */
function highestOf(power: Float64Array, from: number, to: number): number {
  let highest = 0;
  for (let i = Math.max(0, from); i < to && i < power.length; i++) {
    if (power[i]! > highest) highest = power[i]!;
  }
  return highest;
}

/** Whether speed rose by a fair share of what the extra energy would make of it. */
function becameSpeed(
  { channels: { speed } }: Series,
  { at }: Records,
  from: number,
  width: number,
  options: Options,
): boolean {
  if (speed === undefined) return false;
  const before = speed[at[from]! - 1]!;
  const after = speed[at[from + width]!]!;
  const due = Math.sqrt(before * before + (2 * options.aboveWatts * width) / options.massKg) - before;
  return after - before >= options.speedShare * due;
}
