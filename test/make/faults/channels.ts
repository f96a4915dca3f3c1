import type { Channel, RaceFacts } from '../../../src/types.ts';
import { retotalled, withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const there = { borderline: 1, moderate: 1, clear: 1 } as const;
const requiring = (race: RaceFacts): RaceFacts => ({ ...race, required: ['power', 'cadence', 'heartRate'] });

const shared = {
  rules: ['missing-channel'],
  measure: 'always the whole ride',
  strengths: there,
  needs: ['cadence', 'heart rate'],
  source: practice,
} as const;

/** A sensor that was never paired: the channel is not in the file, though the event requires it. */
export const neverPaired: Fault = {
  ...shared,
  name: 'sensor never paired',
  after(submission, _, random) {
    const missing: Channel = random.pick(['cadence', 'heartRate']);
    const { [missing]: _left, ...channels } = submission.primary.channels;
    const primary = retotalled({ ...submission.primary, channels });
    return withParts(submission, { primary, race: requiring(submission.race) });
  },
};

/** A battery that dies minutes after the start: the channel is there, and empty for most of the race. */
export const sensorDies: Fault = {
  ...shared,
  name: 'sensor dies early on',
  after(submission, _, random) {
    const dying: Channel = random.pick(['cadence', 'heartRate']);
    const column = submission.primary.channels[dying]!.slice();
    column.fill(Number.NaN, Math.round(column.length * random.between(0.05, 0.3)));
    const channels = { ...submission.primary.channels, [dying]: column };
    const primary = retotalled({ ...submission.primary, channels });
    return withParts(submission, { primary, race: requiring(submission.race) });
  },
};
