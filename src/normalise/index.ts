import { Problem } from '../problem.ts';
import {
  type Recording,
  SecondState,
  type Series,
  type Step,
  type StepId,
  type Subject,
  type Values,
} from '../types.ts';
import { layColumn, layColumns } from './grid.ts';
import { type Order, order } from './order.ts';
import { states } from './states.ts';

/**
 * Puts a recording on a regular 1 s grid and says, step by step, what was done to it. No value is
 * invented: what is missing is NaN, what is carried over is marked `bridged`.
 *
 * @throws Problem `no-records` when no record has a time.
 */
export function normalise(recording: Recording, subject: Subject): { series: Series; steps: Step[] } {
  const ordered = order(recording.time);
  if (ordered.records.length === 0) {
    throw new Problem({
      code: 'no-records',
      what: 'no record in this file has a time',
      where: recording.name,
      hint: 'Export the ride again from the head unit or app, in its original format',
    });
  }
  const state = states(recording, ordered);
  const series: Series = {
    recording,
    start: ordered.seconds[0]!,
    length: state.length,
    channels: layColumns(recording.channels, ordered, state),
    state,
    extraMeters: recording.extraMeters.map(({ name, power }) => ({
      name,
      power: layColumn(power, ordered, state),
    })),
  };
  return { series, steps: log(recording, ordered, state, subject) };
}

function log(recording: Recording, ordered: Order, state: Uint8Array, subject: Subject): Step[] {
  const steps: Step[] = [];
  const add = (id: StepId, values: Values) => steps.push({ subject, id, values });
  add('read', { format: recording.format, records: count(recording.time.length) });
  if (ordered.backward > 0) add('backward-steps', { count: count(ordered.backward) });
  if (ordered.far > 0) add('far-records-dropped', { count: count(ordered.far) });
  if (ordered.doubled > 0) add('doubled-seconds', { count: count(ordered.doubled) });
  const bridged = runs(state, SecondState.bridged);
  if (bridged.total > 0)
    add('bridged', { seconds: seconds(bridged.total), longest: seconds(bridged.longest) });
  const paused = runs(state, SecondState.paused);
  if (paused.total > 0) add('pauses', { count: count(paused.runs), seconds: seconds(paused.total) });
  const missing = runs(state, SecondState.missing);
  if (missing.total > 0) add('gaps', { missing: seconds(missing.total), longest: seconds(missing.longest) });
  for (const { name } of recording.extraMeters) add('extra-meter', { name });
  return steps;
}

const count = (value: number) => ({ value, unit: 'count' }) as const;
const seconds = (value: number) => ({ value, unit: 's' }) as const;

function runs(state: Uint8Array, wanted: number): { total: number; longest: number; runs: number } {
  let total = 0;
  let longest = 0;
  let number = 0;
  for (let i = 0, length = 0; i <= state.length; i++) {
    if (state[i] === wanted) length++;
    else if (length > 0) {
      total += length;
      longest = Math.max(longest, length);
      number++;
      length = 0;
    }
  }
  return { total, longest, runs: number };
}
