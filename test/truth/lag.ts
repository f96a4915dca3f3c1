import type { Alignment } from '../../src/types.ts';
import type { MeterSpec } from '../make/meter.ts';
import type { RecorderSpec } from '../make/recorder.ts';
import type { Submission } from '../make/submission.ts';
import type { PairCheck } from './row.ts';

/**
 * Lag of the second's power behind the primary's, known from how both were made, against what alignment
 * says of each segment, in its middle and shortly within its ends: a lag that runs on past a stop of the clock is
 * wrong at one end alone. Clocks, links and averaging delay add up; from power alone nobody can tell them apart.
 */
export function checkPair(submission: Submission, index: number, alignment: Alignment): PairCheck {
  const { secure, origin, segments } = alignment;
  const { draft } = submission.truth;
  const [own, other] = [draft.recordings[0]!, draft.recordings[index + 1]!];
  const [ownMeter, otherMeter] = [draft.meters[own.meter]!, draft.meters[other.meter]!];
  const { stops } = draft.demand;
  const start = Math.floor(submission.primary.time[0] ?? 0) - draft.start;
  // Position in the primary's series → second of the ride, by the primary's clock.
  const off = (position: number, offset: number) => {
    const at = start + position - own.recorder.offset;
    const truth = told(ownMeter, own.recorder, at, stops) - told(otherMeter, other.recorder, at, stops);
    // While nobody rides, either lag is right.
    return stops.some(([stop, go]) => at >= stop && at <= go) ? 0 : Math.abs(offset - truth);
  };
  // Between the middle and an end a clock may slide past a message, which no segment is made for.
  const slide = Math.max(ownMeter.every, otherMeter.every);
  const offs = segments.flatMap(({ stretch: [from, to], offset }) => [
    off((from + to) / 2, offset),
    ...endsOf(from, to).map((end) => off(end, offset) - slide),
  ]);
  return { secure, origin, segments: segments.length, off: offs.length === 0 ? null : Math.max(...offs) };
}

/** How far within its ends a segment is looked at, s: where a stop begins or ends is not told to the second. */
const within = 60;

/** Shortly within the ends of a segment that is long enough to have a middle apart from them. */
const endsOf = (from: number, to: number) => (to - from > 4 * within ? [from + within, to - within] : []);

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
