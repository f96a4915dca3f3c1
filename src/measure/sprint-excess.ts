import { studentQuantile } from '../math/student.ts';
import type { EffortsChart, Reading, Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { detailRatio } from './pair/detail.ts';
import { type Effort, findEfforts } from './pair/efforts.ts';
import { gate } from './pair/gate.ts';

/**
 * How much more the primary reads above the second in sprints than over the rest of the race, in percent
 * of work. Work is compared from a few seconds before the sprint until both meters are back, so that lag
 * and averaging cancel. The interval comes from the sprints themselves and never falls below the scatter
 * of stretches of the same length elsewhere in the race; how far single sprints of honest meters lie
 * apart is stated beside it, and does not shrink with their number.
 */
export const sprintExcess = defineMeasure({
  id: 'sprint-excess',
  of: 'pair',
  options: {
    peakOverMean: number('three-second power that makes a sprint, times the mean of the race'),
    edgeOverMean: number('power at which a sprint begins and ends, times the mean of the race'),
    shortestSeconds: number('shortest effort, s'),
    longestSeconds: number('longest effort, s'),
    roomSeconds: number('room before and after for lag and averaging, s'),
    shortSeconds: number('typical sprint below which averaging decides too much, s'),
    mostDetailRatio: number('ratio of second-to-second variation above which one meter averages far longer'),
    declaredSpread: number('honest excess between two meters within their claims, one standard deviation, %'),
    fieldSpread: number('honest excess between two meters as found in the field, one standard deviation, %'),
  },
  circumstances: {
    'short sprints': 'the sprints are so short that averaging decides how high they read',
    'unequal averaging': 'one meter averages over many more seconds than the other',
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const own = all.primary.channels.power!;
    const other = pair.series.channels.power!;
    const efforts = findEfforts(own, other, all.window, options);
    if (efforts.length === 0) return notApplicable('too-few-efforts', { efforts: 0, needed: 1 });
    const rest = restOf(own, other, all.window, efforts);
    const placebo = scatterOf(own, other, rest, typicalLength(efforts));
    if (placebo === null) return notApplicable('too-few-blocks', { blocks: rest.length, needed: 5 });
    const logs = efforts.map(({ stretch }) => logRatio(own, other, stretch) - placebo.level);
    const { mean, error, reach } = meanOfEfforts(logs, placebo.spread, placebo.count);
    const percent = (log: number) => 100 * Math.expm1(log);
    const seconds = efforts.map((effort) => effort.seconds).sort((a, b) => a - b)[efforts.length >> 1]!;
    const circumstances = [
      ...(seconds < options.shortSeconds ? ['short sprints'] : []),
      ...(detailRatio(own, other, all.window) > options.mostDetailRatio ? ['unequal averaging'] : []),
    ];
    return measured(
      percent(mean),
      '%',
      [percent(mean - reach * error), percent(mean + reach * error)],
      efforts.length,
      {
        stretches: efforts.map(({ stretch }) => stretch),
        expected: {
          declared: { centre: 0, spread: Math.hypot(options.declaredSpread, 100 * error) },
          field: { centre: 0, spread: Math.hypot(options.fieldSpread, 100 * error) },
        },
        circumstances,
        details: {
          steady: { value: percent(placebo.level), unit: '%' },
          highest: { value: percent(Math.max(...logs)), unit: '%' },
          seconds: { value: seconds, unit: 's' },
        },
        charts: [effortsChart(pair.subject, own, other, efforts, logs)],
      },
    );
  },
});

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

function typicalLength(efforts: readonly Effort[]): number {
  const lengths = efforts.map(({ stretch }) => stretch[1] - stretch[0]).sort((a, b) => a - b);
  return lengths[lengths.length >> 1]!;
}

/** Overall log ratio of the rest, and how stretches as long as a sprint scatter around it. */
function scatterOf(own: Float64Array, other: Float64Array, rest: readonly number[], length: number) {
  let ownAll = 0;
  let otherAll = 0;
  const logs: number[] = [];
  for (let i = 0; i + length <= rest.length; i += length) {
    let a = 0;
    let b = 0;
    for (let j = i; j < i + length; j++) {
      a += own[rest[j]!]!;
      b += other[rest[j]!]!;
    }
    ownAll += a;
    otherAll += b;
    logs.push(Math.log(a / b));
  }
  if (logs.length < 5) return null;
  const level = Math.log(ownAll / otherAll);
  const spread = Math.sqrt(logs.reduce((sum, log) => sum + (log - level) ** 2, 0) / (logs.length - 1));
  return { level, spread, count: logs.length };
}

function logRatio(own: Float64Array, other: Float64Array, [from, to]: Stretch): number {
  let a = 1;
  let b = 1;
  for (let t = from; t < to; t++) {
    a += own[t]!;
    b += other[t]!;
  }
  return Math.log(a / b);
}

function meanOfEfforts(logs: readonly number[], placebo: number, placeboCount: number) {
  const n = logs.length;
  const mean = logs.reduce((a, b) => a + b, 0) / n;
  const own = n < 3 ? 0 : Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (n - 1));
  const spread = Math.max(own, placebo);
  const freedom = own > placebo ? n - 1 : placeboCount - 1;
  return { mean, error: spread / Math.sqrt(n), reach: studentQuantile(0.975, freedom) };
}

/** As many sprints as a reader will look at, the largest excess first. */
const shown = 12;

function effortsChart(
  subject: string,
  own: Float64Array,
  other: Float64Array,
  efforts: readonly Effort[],
  logs: readonly number[],
): EffortsChart {
  const readings = (column: Float64Array, [from, to]: Stretch): Reading[] =>
    Array.from(column.subarray(from, to), (value) => (Number.isNaN(value) ? null : value));
  const all = efforts.map(({ stretch, seconds }, i) => ({
    from: stretch[0],
    primary: readings(own, stretch),
    second: readings(other, stretch),
    peakPrimary: bestMean(own, stretch),
    peakSecond: bestMean(other, stretch),
    excess: 100 * Math.expm1(logs[i]!),
    seconds,
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
