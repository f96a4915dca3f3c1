import { longestLength, totalLength } from '../math/stretches.ts';
import { type Channel, SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { closeUps } from './recording/close-ups.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * Seconds in which one channel repeats a value for longer than it can while another channel moves: an
 * exact count over power, cadence and heart rate, each with its own shortest time.
 */
export const frozenSeconds = defineMeasure({
  id: 'frozen-seconds',
  of: 'recording',
  options: {
    powerSeconds: number('shortest time that power must repeat, s'),
    cadenceSeconds: number('shortest time that cadence must repeat, s'),
    heartRateSeconds: number('shortest time that heart rate must repeat, s'),
    targetShare: number('share of the recorded seconds from which repeated power looks like a target'),
  },
  circumstances: {
    'target levels': 'power repeats in so much of the ride that it looks like a reported target',
  },
  compute(all, recording, options) {
    const shortest = {
      power: options.powerSeconds,
      cadence: options.cadenceSeconds,
      heartRate: options.heartRateSeconds,
    };
    const names = Object.keys(shortest) as (keyof typeof shortest)[];
    const present = names.filter((channel) => recording.channels[channel] !== undefined);
    if (present.length === 0) return notApplicable('no-channel', { channel: 'power' });
    const recorded = recording.state.reduce((n, s) => n + (s === SecondState.recorded ? 1 : 0), 0);
    const frozen = present.map((channel) => ({
      channel,
      stretches: frozenIn(recording, channel, shortest[channel]),
    }));
    const stretches = frozen.flatMap((one) => one.stretches).sort((a, b) => a[0] - b[0]);
    const inPower = totalLength(frozen.find(({ channel }) => channel === 'power')?.stretches ?? []);
    const worst = frozen.reduce((a, b) => (totalLength(b.stretches) > totalLength(a.stretches) ? b : a));
    return exact(totalLength(stretches), 's', recorded, {
      stretches,
      circumstances: inPower >= options.targetShare * recorded && inPower > 0 ? ['target levels'] : [],
      details: {
        channel: worst.channel,
        stretches: stretches.length,
        longest: { value: longestLength(stretches), unit: 's' },
      },
      charts:
        stretches.length === 0 ? [] : [closeUps(`frozen:${subjectOf(all, recording)}`, recording, stretches)],
    });
  },
});

/** Stretches of one repeated value above zero, while another channel takes more than one value. */
function frozenIn({ channels, state, length }: Series, channel: Channel, shortest: number): Stretch[] {
  const column = channels[channel]!;
  const others = (['power', 'cadence', 'heartRate', 'speed'] as const)
    .filter((other) => other !== channel)
    .flatMap((other) => channels[other] ?? []);
  const found: Stretch[] = [];
  for (let from = 0, to = 1; from < length; from = to++) {
    const value = column[from]!;
    if (!(value > 0) || state[from] !== SecondState.recorded) continue;
    while (to < length && column[to] === value && state[to] === SecondState.recorded) to++;
    if (to - from >= shortest && others.some((other) => moves(other, from, to))) found.push([from, to]);
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
