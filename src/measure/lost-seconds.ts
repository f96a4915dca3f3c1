import { longestLength, stretchesWhere, totalLength } from '../math/stretches.ts';
import { SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { subjectOf } from './recording/subject.ts';

/**
 * The most seconds lost in any `withinSeconds` of the race: one long gap and a link that keeps dropping
 * out weigh alike. Lost is what has no record or no power, and what only looks recorded: zeros between
 * hard pedalling while cadence goes on, and power and cadence held together. Pauses and the rhythm of a
 * recorder that writes irregularly are not losses.
 */
export const lostSeconds = defineMeasure({
  id: 'lost-seconds',
  of: 'recording',
  unit: 's',
  options: {
    withinSeconds: number('length of the stretch in which losses are added up, s'),
    stillSpeed: number('slower than this a rider stands, and a meter may sleep, m/s'),
    zeroSeconds: number('shortest run of zero power under turning cranks that counts as lost, s'),
    zeroCadence: number('cadence from which cranks count as turning, rpm'),
    zeroBesideShare: number(
      "power just before and after that makes such zeros a loss, share of the ride's usual",
    ),
    heldSeconds: number('shortest run of power and cadence standing still together that counts as lost, s'),
  },
  compute(all, recording, options) {
    const [from, to] = all.window;
    if (to <= from) return notApplicable('too-short', { seconds: 0, needed: 1 });
    if (recording.channels.power === undefined) return notApplicable('no-channel', { channel: 'power' });
    const lost = lostIn(recording, all.window, recording.channels.power, options);
    const gaps = stretchesWhere(from, to, (i) => lost[i] === 1);
    const paused = stretchesWhere(from, to, (i) => recording.state[i] === SecondState.paused);
    const total = totalLength(gaps);
    return exact(mostWithin(lost, all.window, options.withinSeconds), to - from, {
      stretches: gaps,
      details: {
        within: { value: Math.min(options.withinSeconds, to - from), unit: 's' },
        total: { value: total, unit: 's' },
        share: { value: total / (to - from), unit: 'share' },
        longest: { value: longestLength(gaps), unit: 's' },
        paused: { value: totalLength(paused), unit: 's' },
      },
      charts:
        total === 0
          ? []
          : [
              {
                kind: 'coverage',
                id: `lost:${subjectOf(all, recording)}`,
                recording: [0, recording.length],
                window: all.window,
                lost: gaps,
                paused,
              },
            ],
    });
  },
});

interface Options {
  readonly stillSpeed: number;
  readonly zeroSeconds: number;
  readonly zeroCadence: number;
  readonly zeroBesideShare: number;
  readonly heldSeconds: number;
}

function lostIn(recording: Series, [from, to]: Stretch, power: Float64Array, options: Options): Uint8Array {
  const { state, channels } = recording;
  const { cadence, speed } = channels;
  const lost = new Uint8Array(to);
  for (let i = from; i < to; i++) {
    const asleep = speed !== undefined && speed[i]! < options.stillSpeed;
    const powerless = Number.isNaN(power[i]!) && state[i] !== SecondState.paused && !asleep;
    if (state[i] === SecondState.missing || powerless) lost[i] = 1;
  }
  if (cadence !== undefined) {
    const zeros = stretchesWhere(
      from,
      to,
      (i) => power[i] === 0 && cadence[i]! >= options.zeroCadence && state[i] === SecondState.recorded,
      options.zeroSeconds,
    );
    const pedalling = zeros.length === 0 ? 0 : options.zeroBesideShare * usual(power.subarray(from, to));
    for (const [a, b] of zeros) if (power[a - 1]! >= pedalling && power[b]! >= pedalling) lost.fill(1, a, b);
  }
  for (const [a, b] of heldIn(recording, [from, to], power, options.heldSeconds)) lost.fill(1, a, b);
  return lost;
}

/** Median of the power while there is some, W; NaN where there never is. */
function usual(power: Float64Array): number {
  const flowing = power.filter((watts) => watts > 0).sort();
  return flowing[flowing.length >> 1] ?? Number.NaN;
}

/**
 * Where what the meter tells stands still: power and cadence together, or every channel where no cadence is
 * recorded. A trainer that repeats its target moves on in cadence alone: there nothing was lost.
 */
function heldIn({ state, channels }: Series, [from, to]: Stretch, power: Float64Array, shortest: number) {
  const { cadence, speed, heartRate } = channels;
  const others = (cadence === undefined ? [speed, heartRate] : [cadence]).filter((c) => c !== undefined);
  if (others.length === 0) return [];
  const stands = (column: Float64Array, i: number) => column[i] === column[i - 1];
  return stretchesWhere(
    from + 1,
    to,
    (i) =>
      power[i]! > 0 &&
      state[i] === SecondState.recorded &&
      stands(power, i) &&
      others.every((column) => stands(column, i)),
    shortest,
  ).filter(([, b]) => b === to || !stands(power, b));
}

/** The most marked seconds in any window of this length. */
function mostWithin(lost: Uint8Array, [from, to]: Stretch, within: number): number {
  let inside = 0;
  let most = 0;
  for (let i = from; i < to; i++) {
    inside += lost[i]!;
    if (i - within >= from) inside -= lost[i - within]!;
    most = Math.max(most, inside);
  }
  return most;
}
