import { declaredFor } from '../declared.ts';
import { longestLength, totalLength } from '../math/stretches.ts';
import { type Channel, SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { stillBalance } from './recording/still-balance.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Seconds in which power or cadence repeats a value for longer than it can while another channel moves, or
 * in which left–right balance never moves at all: an exact count, each channel with its own shortest time.
 * A meter at one leg may state the same balance throughout: where it is declared, balance is not asked
 * about; where nothing is, only if nothing else stands still. (Heart rate is asked about by its own rule.)
 */
export const frozenSeconds = defineMeasure({
  id: 'frozen-seconds',
  of: 'recording',
  unit: 's',
  options: {
    powerSeconds: number('shortest time that power must repeat, s'),
    cadenceSeconds: number('shortest time that cadence must repeat, s'),
    balanceSeconds: number('fewest seconds with power over which balance may not stand still, s'),
    records: number('and fewest records in a row that hold the value, where a recorder leaves seconds out'),
    adjoiningSeconds: number(
      'repeated power this close to the next repeated power steps from target to target, s',
    ),
    targetShare: number('share of such steps among the stretches of power from which it looks like a target'),
  },
  circumstances: {
    'target levels': 'power steps from one repeated level straight to the next',
    'sides unknown': 'whether the meter measures both legs was not declared',
  },
  compute(all, recording, options) {
    const { power, cadence } = recording.channels;
    if (power === undefined && cadence === undefined)
      return notApplicable('no-channel', { channel: 'power' });
    const inPower =
      power === undefined ? [] : frozenIn(recording, power, options.powerSeconds, options.records);
    const inCadence =
      cadence === undefined ? [] : frozenIn(recording, cadence, options.cadenceSeconds, options.records);
    const sides = declaredFor(all.rider.devices, recording.recording.name, 'primary')?.sides ?? null;
    const asked = sides === 2 || (sides === null && inPower.length + inCadence.length === 0);
    const inBalance = asked ? stillBalance(recording, options.balanceSeconds) : [];
    const stretches = [...inPower, ...inCadence, ...inBalance].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
    const steps = inPower.filter(
      ([from], k) => k > 0 && from - inPower[k - 1]![1] <= options.adjoiningSeconds,
    ).length;
    return exact(totalLength(stretches), recording.length, {
      stretches,
      circumstances: [
        ...(steps > options.targetShare * inPower.length ? ['target levels'] : []),
        ...(inBalance.length > 0 && sides === null ? ['sides unknown'] : []),
      ],
      details: {
        channel: mostStill(inPower, inCadence, inBalance),
        stretches: stretches.length,
        longest: { value: longestLength(stretches), unit: 's' },
      },
      charts:
        stretches.length === 0 ? [] : [closeUps(`frozen:${subjectOf(all, recording)}`, recording, stretches)],
    });
  },
});

/** The channel that stands still longest; power where none does. */
function mostStill(...[power, cadence, balance]: readonly (readonly Stretch[])[]): Channel {
  const [watts, turns, share] = [power!, cadence!, balance!].map(totalLength) as [number, number, number];
  if (share > Math.max(watts, turns)) return 'balance';
  return turns > watts ? 'cadence' : 'power';
}

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
