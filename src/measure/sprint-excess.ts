import { normalReach } from '../math/normal.ts';
import { studentReach } from '../math/student.ts';
import type { EffortsChart, Reading, Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { detailRatio } from './pair/detail.ts';
import { type Effort, effortsOf } from './pair/efforts.ts';
import { gate } from './pair/gate.ts';

/**
 * How much more the primary reads above the second in sprints than over the rest of the race: surplus work
 * beyond the steady ratio, in percent of the work between the sprint's edges. The surplus is summed from a
 * few seconds before the sprint until both meters are back, so that lag and averaging cancel. The interval comes
 * from the sprints themselves and never falls below the scatter of stretches elsewhere in the race, as long as a
 * sprint between its edges, of whose work the surplus is told; how far single sprints of honest meters lie
 * apart is stated beside it, and does not shrink with their number.
 */
export const sprintExcess = defineMeasure({
  id: 'sprint-excess',
  of: 'pair',
  unit: '%',
  options: {
    roomSeconds: number('room before and after for lag and averaging, s'),
    shortSeconds: number('typical sprint below which averaging decides too much, s'),
    mostDetailRatio: number('ratio of second-to-second variation above which one meter averages far longer'),
    declaredSpread: number('honest excess between two meters within their claims, one standard deviation, %'),
    fieldSpread: number('honest excess between two meters as found in the field, one standard deviation, %'),
  },
  circumstances: {
    'single sprint': 'there is only one sprint, and honest meters lie several percent apart in a single one',
    'short sprints': 'the sprints are so short that averaging decides how high they read',
    'unequal averaging': 'one meter averages over many more seconds than the other',
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const own = all.primary.channels.power!;
    const other = pair.series.channels.power!;
    const efforts = effortsOf(all.sections, own, other, all.window, options.roomSeconds);
    if (efforts.length === 0) return notApplicable('too-few-efforts', { efforts: 0, needed: 1 });
    const rest = restOf(own, other, all.window, efforts);
    const seconds = efforts.map(({ core }) => core[1] - core[0]).sort((a, b) => a - b)[efforts.length >> 1]!;
    const placebo = scatterOf(own, other, rest, seconds);
    if (placebo === null) return notApplicable('too-few-blocks', { blocks: rest.length, needed: 5 });
    const excesses = efforts.map((effort) => excessOf(own, other, effort, placebo.level));
    const { mean, error, reach } = meanOfEfforts(excesses, placebo.spread, placebo.count);
    // What one meter tells later than the other falls out where a race's end cuts a sprint off.
    const cut = efforts.filter((effort) => isCut(effort, options.roomSeconds)).length;
    const torn = (100 * clockSpread * cut) / (efforts.length * seconds);
    const half = Math.hypot(reach * error, normalReach * torn);
    const circumstances = [
      ...(efforts.length === 1 ? ['single sprint'] : []),
      ...(seconds < options.shortSeconds ? ['short sprints'] : []),
      ...(detailRatio(own, other, all.window) > options.mostDetailRatio ? ['unequal averaging'] : []),
    ];
    return measured(mean, [mean - half, mean + half], efforts.length, {
      stretches: efforts.map(({ stretch }) => stretch),
      expected: {
        declared: { centre: 0, spread: Math.hypot(options.declaredSpread, error) },
        field: { centre: 0, spread: Math.hypot(options.fieldSpread, error) },
      },
      circumstances,
      details: {
        efforts: efforts.length,
        steady: { value: 100 * (placebo.level - 1), unit: '%' },
        highest: { value: Math.max(...excesses), unit: '%' },
        seconds: { value: seconds, unit: 's' },
      },
      charts: [effortsChart(pair.subject, own, other, efforts, excesses)],
    });
  },
});

/** Standard deviation of what whole seconds leave unsaid, s: a rectangle of a second. */
const clockSpread = 1 / Math.sqrt(12);

function isCut({ core, stretch }: Effort, room: number): boolean {
  return core[0] - stretch[0] < room || stretch[1] - core[1] < room;
}

/** Stretches of the race outside the sprints. */
function restOf(
  own: Float64Array,
  other: Float64Array,
  [from, to]: Stretch,
  efforts: readonly Effort[],
): number[] {
  const inEffort = new Uint8Array(own.length);
  for (const { stretch } of efforts) inEffort.fill(1, stretch[0], stretch[1]);
  const rest: number[] = [];
  for (let t = from; t < to; t++) if (inEffort[t] === 0 && own[t]! > 0 && other[t]! > 0) rest.push(t);
  return rest;
}

/** Ratio of work over the rest, and how stretches of so many seconds scatter around it, %. */
function scatterOf(own: Float64Array, other: Float64Array, rest: readonly number[], length: number) {
  let ownAll = 0;
  let otherAll = 0;
  const pieces: { own: number; other: number }[] = [];
  for (let i = 0; i + length <= rest.length; i += length) {
    const piece = { own: 0, other: 0 };
    for (let j = i; j < i + length; j++) {
      piece.own += own[rest[j]!]!;
      piece.other += other[rest[j]!]!;
    }
    ownAll += piece.own;
    otherAll += piece.other;
    pieces.push(piece);
  }
  if (pieces.length < 5) return null;
  const level = ownAll / otherAll;
  const squares = pieces.reduce((sum, piece) => sum + (piece.own / (level * piece.other) - 1) ** 2, 0);
  return { level, spread: 100 * Math.sqrt(squares / (pieces.length - 1)), count: pieces.length };
}

/** Surplus of the primary beyond the steady ratio, % of the work between the effort's edges. */
function excessOf(own: Float64Array, other: Float64Array, { stretch, core }: Effort, level: number): number {
  let surplus = 0;
  for (let t = stretch[0]; t < stretch[1]; t++) surplus += own[t]! - level * other[t]!;
  let work = 1;
  for (let t = core[0]; t < core[1]; t++) work += level * other[t]!;
  return (100 * surplus) / work;
}

function meanOfEfforts(excesses: readonly number[], placebo: number, placeboCount: number) {
  const n = excesses.length;
  const mean = excesses.reduce((a, b) => a + b, 0) / n;
  const own =
    n < 3 ? 0 : Math.sqrt(excesses.reduce((sum, excess) => sum + (excess - mean) ** 2, 0) / (n - 1));
  const spread = Math.max(own, placebo);
  const freedom = own > placebo ? n - 1 : placeboCount - 1;
  return { mean, error: spread / Math.sqrt(n), reach: studentReach(freedom) };
}

/** As many sprints as a reader will look at, the largest excess first. */
const shown = 12;

function effortsChart(
  subject: string,
  own: Float64Array,
  other: Float64Array,
  efforts: readonly Effort[],
  excesses: readonly number[],
): EffortsChart {
  const readings = (column: Float64Array, [from, to]: Stretch): Reading[] =>
    Array.from(column.subarray(from, to), (value) => (Number.isNaN(value) ? null : value));
  const all = efforts.map(({ stretch, core }, i) => ({
    from: stretch[0],
    primary: readings(own, stretch),
    second: readings(other, stretch),
    peakPrimary: bestMean(own, stretch),
    peakSecond: bestMean(other, stretch),
    excess: excesses[i]!,
    seconds: core[1] - core[0],
  }));
  const largest = [...all].sort((a, b) => Math.abs(b.excess) - Math.abs(a.excess)).slice(0, shown);
  return {
    kind: 'efforts',
    id: `efforts ${subject}`,
    subject,
    efforts: largest.sort((a, b) => a.from - b.from),
  };
}

/** Best mean of five seconds within a stretch, W. */
function bestMean(column: Float64Array, [from, to]: Stretch): number {
  const length = Math.min(5, to - from);
  let sum = 0;
  let best = 0;
  for (let t = from; t < to; t++) {
    sum += column[t]!;
    if (t - from >= length) sum -= column[t - length]!;
    if (t - from >= length - 1) best = Math.max(best, sum / length);
  }
  return best;
}
