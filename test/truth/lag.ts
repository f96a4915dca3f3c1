import type { Alignment } from '../../src/types.ts';
import type { MeterSpec } from '../make/meter.ts';
import type { RecorderSpec } from '../make/recorder.ts';
import type { Submission } from '../make/submission.ts';
import type { PairCheck } from './row.ts';

/**
 * Lag of the second's power behind the primary's, known from how both were made, against what alignment
 * says of each segment. Clocks, links and averaging delay add up; from power alone nobody can tell them apart.
 */
export function checkPair(submission: Submission, index: number, alignment: Alignment): PairCheck {
  const { secure, origin, segments } = alignment;
  const { draft } = submission.truth;
  const [own, other] = [draft.recordings[0]!, draft.recordings[index + 1]!];
  const start = Math.floor(submission.primary.time[0] ?? 0) - draft.start;
  const offs = segments.map(({ stretch: [from, to], offset }) => {
    // Position in the primary's series → second of the ride, by the primary's clock.
    const middle = start + (from + to) / 2 - own.recorder.offset;
    const truth = told(draft.meters[own.meter]!, own.recorder, middle, draft.demand.stops);
    const theirs = told(draft.meters[other.meter]!, other.recorder, middle, draft.demand.stops);
    return Math.abs(offset - (truth - theirs));
  });
  return { secure, origin, segments: segments.length, off: offs.length === 0 ? null : Math.max(...offs) };
}

/** Seconds between something happening and the clock time under which its power is written. */
function told(
  meter: MeterSpec,
  recorder: RecorderSpec,
  at: number,
  stops: readonly (readonly [from: number, to: number])[],
): number {
  const age = meter.kernel.seconds / 2 + meter.lag + meter.jitter / 2 + standing(meter, recorder, at);
  const drift = recorder.driftPpm * 1e-6 * Math.max(0, at - recorder.from);
  return recorder.offset + age + drift - held(recorder, at, stops);
}

/**
 * Seconds for which a message has stood when the recorder writes it down. Its clock slides past the meter's
 * messages: when it meets the next one, what it writes becomes younger or older by a whole message at once.
 */
function standing({ every }: MeterSpec, { offset, driftPpm, from }: RecorderSpec, at: number): number {
  if (every === 0) return 0;
  const begun = Math.ceil(Math.max(0, from)) + 1 - (offset - Math.floor(offset));
  const records = Math.max(0, Math.round(at - begun));
  return (begun + records / (1 + driftPpm * 1e-6)) % every;
}

/** Seconds for which a clock that skips pauses has stood still by then. */
function held(
  { pauses, from }: RecorderSpec,
  at: number,
  stops: readonly (readonly [from: number, to: number])[],
): number {
  if (pauses !== 'clock stops') return 0;
  let sum = 0;
  for (const [stop, go] of stops) if (go <= at && stop >= from) sum += Math.max(0, go - stop - 3);
  return sum;
}
