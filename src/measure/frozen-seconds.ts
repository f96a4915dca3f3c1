import { longestLength, totalLength } from '../math/stretches.ts';
import { SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Seconds in which power or cadence repeats a value for longer than it can while another channel moves: an
 * exact count, each channel with its own shortest time. (Heart rate is asked about by its own rule.)
 */
export const frozenSeconds = defineMeasure({
  id: 'frozen-seconds',
  of: 'recording',
  options: {
    powerSeconds: number('shortest time that power must repeat, s'),
    cadenceSeconds: number('shortest time that cadence must repeat, s'),
    records: number('and fewest records in a row that hold the value, where a recorder leaves seconds out'),
    adjoiningSeconds: number(
      'repeated power this close to the next repeated power steps from target to target, s',
    ),
    targetShare: number('share of such steps among the stretches of power from which it looks like a target'),
  },
  circumstances: { 'target levels': 'power steps from one repeated level straight to the next' },
  compute(all, recording, options) {
    const { power, cadence } = recording.channels;
    if (power === undefined && cadence === undefined)
      return notApplicable('no-channel', { channel: 'power' });
    const inPower =
      power === undefined ? [] : frozenIn(recording, power, options.powerSeconds, options.records);
    const inCadence =
      cadence === undefined ? [] : frozenIn(recording, cadence, options.cadenceSeconds, options.records);
    const stretches = [...inPower, ...inCadence].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
    const steps = inPower.filter(
      ([from], k) => k > 0 && from - inPower[k - 1]![1] <= options.adjoiningSeconds,
    ).length;
    return exact(totalLength(stretches), 's', recording.length, {
      stretches,
      circumstances: steps > options.targetShare * inPower.length ? ['target levels'] : [],
      details: {
        channel: totalLength(inCadence) > totalLength(inPower) ? 'cadence' : 'power',
        stretches: stretches.length,
        longest: { value: longestLength(stretches), unit: 's' },
      },
      charts:
        stretches.length === 0 ? [] : [closeUps(`frozen:${subjectOf(all, recording)}`, recording, stretches)],
    });
  },
});

/**
 * Stretches of one repeated value above zero, while another channel takes more than one value. What a
 * recorder that leaves seconds out carries over counts as time, not as another record of the value.
 */
function frozenIn(
  { channels, state, length }: Series,
  column: Float64Array,
  shortest: number,
  fewest: number,
): Stretch[] {
  const others = [channels.power, channels.cadence, channels.heartRate, channels.speed].filter(
    (other) => other !== undefined && other !== column,
  ) as Float64Array[];
  const found: Stretch[] = [];
  for (let from = 0, next = 1; from < length; from = next++) {
    const value = column[from]!;
    if (!(value > 0) || state[from] !== SecondState.recorded) continue;
    let to = next;
    let records = 1;
    for (; next < length && column[next] === value; next++) {
      if (state[next] === SecondState.recorded) {
        records++;
        to = next + 1;
      } else if (state[next] !== SecondState.bridged) break;
    }
    const long = to - from >= shortest && records >= fewest;
    if (long && others.some((other) => moves(other, from, to))) found.push([from, to]);
  }
  return found;
}

function moves(column: Float64Array, from: number, to: number): boolean {
  for (let i = from + 1; i < to; i++) {
    const change = column[i]! - column[i - 1]!;
    if (change !== 0 && !Number.isNaN(change)) return true;
  }
  return false;
}
