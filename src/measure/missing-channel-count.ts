import { type Channel, SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';

const required = ['power', 'cadence', 'heartRate'] as const satisfies readonly Channel[];
type Lack = 'absent' | 'zero' | 'invalid';

/**
 * Counts the channels that the event requires and the recording cannot give in the race window. Absent,
 * zero throughout and mostly invalid are different faults and are told apart.
 */
export const missingChannelCount = defineMeasure({
  id: 'missing-channel-count',
  of: 'recording',
  unit: 'count',
  options: {
    validShare: number('share of the recorded seconds in which a channel must hold a value'),
  },
  circumstances: {
    power: 'power is missing',
    cadence: 'cadence is missing',
    heartRate: 'heart rate is missing',
  },
  compute(all, recording, { validShare }) {
    const wanted = required.filter((channel) => all.race.required?.includes(channel));
    if (wanted.length === 0) return notApplicable('nothing-required');
    const lacks = wanted.flatMap((channel) => {
      const lack = lackOf(recording, channel, all.window, validShare);
      return lack === null ? [] : [{ channel, lack }];
    });
    const names = (kind: Lack) =>
      lacks
        .filter(({ lack }) => lack === kind)
        .map(({ channel }) => (channel === 'heartRate' ? 'heart rate' : channel))
        .join(', ') || 'none';
    return exact(lacks.length, wanted.length, {
      circumstances: lacks.map(({ channel }) => channel),
      details: {
        required: wanted.length,
        missing: lacks.length,
        absent: names('absent'),
        zero: names('zero'),
        invalid: names('invalid'),
      },
    });
  },
});

function lackOf(
  { channels, state }: Series,
  channel: Channel,
  [from, to]: Stretch,
  validShare: number,
): Lack | null {
  const column = channels[channel];
  if (column === undefined) return 'absent';
  let recorded = 0;
  let valid = 0;
  let moved = 0;
  for (let i = from; i < to; i++) {
    if (state[i] !== SecondState.recorded) continue;
    recorded++;
    if (Number.isNaN(column[i]!)) continue;
    valid++;
    if (column[i] !== 0) moved++;
  }
  if (valid === 0 || valid < validShare * recorded) return 'invalid';
  return moved === 0 ? 'zero' : null;
}
