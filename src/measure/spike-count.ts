import { SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Counts samples that stand alone above everything around them by more than a rider on a wheel can add
 * and take away within a second. Torque alone does not tell: a false sample may come with a false cadence.
 * Outdoors, a sample whose energy shows up as speed is left standing.
 */
export const spikeCount = defineMeasure({
  id: 'spike-count',
  of: 'recording',
  options: {
    widestSeconds: number('longest run of high samples that counts as one spike, s'),
    aroundSeconds: number('seconds looked at on either side'),
    aboveWatts: number('how far above the highest of them, at least, W'),
    aboveFactor: number('and at least this many times the highest of them'),
    massKg: number('rider and bicycle at their lightest, to turn energy into speed, kg'),
    speedShare: number('share of the speed due from which a sample counts as ridden'),
  },
  compute(all, recording, options) {
    const power = recording.channels.power;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    const { spikes, seconds, highest } = find(recording, power, options);
    const first = spikes[0];
    return exact(spikes.length, 'count', seconds, {
      stretches: spikes,
      details:
        first === undefined
          ? { spikes: 0 }
          : { spikes: spikes.length, highest: { value: highest, unit: 'W' }, first: first[0] },
      charts: first === undefined ? [] : [closeUps(`spikes:${subjectOf(all, recording)}`, recording, spikes)],
    });
  },
});

interface Options {
  readonly widestSeconds: number;
  readonly aroundSeconds: number;
  readonly aboveWatts: number;
  readonly aboveFactor: number;
  readonly massKg: number;
  readonly speedShare: number;
}

function find(recording: Series, power: Float64Array, options: Options) {
  const spikes: Stretch[] = [];
  let seconds = 0;
  let highest = 0;
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    if (Number.isNaN(watts)) continue;
    seconds++;
    if (!(watts >= options.aboveWatts) || recording.state[i] !== SecondState.recorded) continue;
    // A spike starts by a step up; it cannot start at the edge of what was recorded.
    if (!(watts - power[i - 1]! >= options.aboveWatts)) continue;
    const width = widthOf(power, i, options);
    if (width === 0 || (recording.recording.indoors === false && becameSpeed(recording, i, width, options)))
      continue;
    for (let k = 0; k < width; k++) highest = Math.max(highest, power[i + k]!);
    spikes.push([i, i + width]);
    i += width - 1;
  }
  return { spikes, seconds, highest };
}

/** Seconds until it is over; 0 when its surroundings rise with it. */
function widthOf(power: Float64Array, from: number, options: Options): number {
  const before = highestOf(power, from - options.aroundSeconds, from);
  let lowest = Infinity;
  for (let width = 1; width <= options.widestSeconds; width++) {
    lowest = Math.min(lowest, power[from + width - 1]!);
    const after = highestOf(power, from + width, from + width + options.aroundSeconds);
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
  from: number,
  width: number,
  options: Options,
): boolean {
  if (speed === undefined) return false;
  const before = speed[from - 1]!;
  const after = speed[from + width]!;
  const energy = options.aboveWatts * width;
  const due = Math.sqrt(before * before + (2 * energy) / options.massKg) - before;
  return after - before >= options.speedShare * due;
}
