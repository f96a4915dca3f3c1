import { median } from 'simple-statistics';
import { leastSquares } from '../math/least-squares.ts';
import { mean, meanOfValid } from '../math/mean.ts';
import { studentReach } from '../math/student.ts';
import type { AlignedSecond, Estimate, Section, SetPoint, SetPoints, Subject, Subjects } from '../types.ts';
import { kmh, roundTo } from '../units.ts';
import { blockInterval } from './pair/block-interval.ts';

/** Seconds at the start of a block in which power may still be on its way to the level. */
const settling = 10;
/** Means (s) that the interval of what a meter holds rests on. */
const grain = 10;

interface Meter {
  readonly subject: string;
  readonly power: Float64Array;
}

/**
 * What the set-point blocks show on every meter of one clock: the level, and how far the mean of each meter
 * lies from it. No file says what was asked for: the level is the median of the meter that keeps closest to
 * its own levels throughout the ride. Null where there are no such blocks.
 *
 * @param pairs the other meters that can be compared with the primary
 */
export function setPointsOf(all: Subjects, pairs: readonly AlignedSecond[]): SetPoints | null {
  const blocks = all.sections.filter(({ kind }) => kind === 'set-point block');
  const own = all.primary.channels.power;
  if (blocks.length === 0 || own === undefined) return null;
  const meters: Meter[] = [
    { subject: 'primary', power: own },
    ...pairs.map(({ subject, series }) => ({ subject, power: series.channels.power! })),
  ];
  const steadiest = leastBy(meters, (meter) => unevenness(meter, blocks));
  const found = blocks.flatMap((block, i): SetPoint[] => {
    const target = levelIn(steadiest, block);
    if (target === null) return [];
    const before = blocks[i - 1];
    const step =
      before !== undefined && block.stretch[0] - before.stretch[1] <= longestBetween ? before : null;
    return [
      {
        stretch: block.stretch,
        target: roundTo(target, 'W'),
        cadence: channelIn(all, pairs, 'cadence', block),
        speed: channelIn(all, pairs, 'speed', block),
        meters: meters.flatMap((meter) => {
          const held = heldBy(meter, block, target);
          const rise = step === null ? null : riseTime(meter.power, step, block);
          return held === null ? [] : [{ ...held, rise }];
        }),
      },
    ];
  });
  const others = meters.filter((meter) => meter !== steadiest).map(({ subject }) => subject);
  return { steadiest: steadiest.subject, blocks: found, trends: trends(found, others) };
}

function leastBy<T>(items: readonly T[], of: (item: T) => number): T {
  return items.map((item) => [of(item), item] as const).reduce((a, b) => (b[0] < a[0] ? b : a))[1];
}

/** Settled seconds of a block with a value. */
function settled(column: Float64Array, { stretch: [from, to] }: Section): Float64Array {
  return column.subarray(from + settling, to).filter((value) => !Number.isNaN(value));
}

/** Mean variance of the means of some seconds within the blocks, as shares of each level. */
function unevenness({ power }: Meter, blocks: readonly Section[]): number {
  const shares = blocks.flatMap((block) => {
    const means = grainsOf(power, block);
    const level = mean(means);
    return means.length < 2 ? [] : Array.from(means, (watts) => (watts / level - 1) ** 2);
  });
  return shares.length === 0 ? Number.POSITIVE_INFINITY : mean(shares);
}

function grainsOf(power: Float64Array, { stretch: [from, to] }: Section): Float64Array {
  const means: number[] = [];
  for (let start = from + settling; start + grain <= to; start += grain) {
    const { mean: watts, count } = meanOfValid(power.subarray(start, start + grain));
    if (count * 2 >= grain) means.push(watts);
  }
  return Float64Array.from(means);
}

function levelIn({ power }: Meter, block: Section): number | null {
  const seconds = settled(power, block);
  return seconds.length === 0 ? null : median(Array.from(seconds));
}

/** How far a meter's mean lies from the target, W, with its interval where the block is long enough. */
function heldBy(
  { subject, power }: Meter,
  block: Section,
  target: number,
): Pick<SetPoint['meters'][number], 'subject' | 'over' | 'low' | 'high'> | null {
  const means = grainsOf(power, block);
  if (means.length === 0) return null;
  const over = mean(means) - target;
  const half = blockInterval(means.map((watts) => watts - target - over));
  return {
    subject,
    over: roundTo(over, 'W'),
    low: half === null ? null : roundTo(over - half, 'W'),
    high: half === null ? null : roundTo(over + half, 'W'),
  };
}

/** Mean of a channel in the settled part of a block, of the primary or else of another meter. */
function channelIn(
  { primary }: Subjects,
  pairs: readonly AlignedSecond[],
  channel: 'cadence' | 'speed',
  block: Section,
): number | null {
  const column = [primary, ...pairs.map(({ series }) => series)]
    .map(({ channels }) => channels[channel])
    .find((one) => one !== undefined);
  if (column === undefined) return null;
  const values = settled(column, block);
  if (values.length === 0) return null;
  return channel === 'speed' ? roundTo(kmh * mean(values), 'km/h') : roundTo(mean(values), 'rpm');
}

/** Longest ramp (s) that still counts as a step, and seconds that may lie between its two blocks. */
const longestStep = 20;
const longestBetween = 10;
/** Least step, as a share: smaller ones drown in the unevenness of legs. */
const leastStep = 0.2;

/**
 * Seconds from 10 to 90 % of the step between two blocks: eight tenths of the straight ramp that fits best,
 * by least squares over every start and length. Null where there is no step to speak of, or none that is over
 * within `longestStep`.
 */
function riseTime(power: Float64Array, before: Section, after: Section): number | null {
  const from = settled(power, before);
  const to = settled(power, after);
  if (from.length === 0 || to.length === 0) return null;
  const [low, high] = [mean(from), mean(to)];
  if (!(Math.abs(high / low - 1) >= leastStep)) return null;
  const first = before.stretch[1] - settling;
  const last = after.stretch[0] + longestStep;
  let best = { squares: Number.POSITIVE_INFINITY, length: 0 };
  for (let start = first; start <= after.stretch[0] + settling; start++) {
    for (let length = 0; length <= longestStep + 1; length++) {
      let squares = 0;
      for (let t = first; t < Math.min(last, after.stretch[1]) && squares < best.squares; t++) {
        const share = length === 0 ? Number(t >= start) : Math.min(1, Math.max(0, (t - start) / length));
        const misfit = power[t]! - low - share * (high - low);
        if (!Number.isNaN(misfit)) squares += misfit ** 2;
      }
      if (squares < best.squares) best = { squares, length };
    }
  }
  return best.length > longestStep ? null : roundTo(0.8 * best.length, 's');
}

/** Fewest blocks that a change with cadence or speed is told from, and least standard deviation of either. */
const fewestBlocks = 5;
const leastMovement = { cadence: 3, speed: 1.5 };

/**
 * How what a meter holds beyond the target changes with cadence and speed from block to block, % of the target
 * for 10 rpm and for 10 km/h: a straight line through the blocks, each by itself. Of the meter that the
 * target was taken from it would tell nothing.
 */
function trends(blocks: readonly SetPoint[], subjects: readonly Subject[]): SetPoints['trends'] {
  return subjects.flatMap((subject) =>
    (['cadence', 'speed'] as const).flatMap((of) => {
      const points = blocks.flatMap((block) => {
        const held = block.meters.find((meter) => meter.subject === subject);
        const x = block[of];
        return held === undefined || x === null ? [] : [{ x, percent: (100 * held.over) / block.target }];
      });
      const slope = slopeOf(points, leastMovement[of]);
      return slope === null ? [] : [{ subject, of, ...slope }];
    }),
  );
}

function slopeOf(points: readonly { x: number; percent: number }[], movement: number): Estimate | null {
  if (points.length < fewestBlocks) return null;
  const x = Float64Array.from(points, (point) => point.x);
  const centre = mean(x);
  const deviations = x.map((value) => value - centre);
  if (!(Math.sqrt(mean(deviations.map((value) => value ** 2))) >= movement)) return null;
  const fit = leastSquares(
    [new Float64Array(x.length).fill(1), deviations],
    Float64Array.from(points, (point) => point.percent),
  );
  if (fit === null) return null;
  const value = 10 * fit.coefficients[1]!;
  const freedom = x.length - 2;
  const variance = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0) / freedom;
  const half = 10 * studentReach(freedom) * Math.sqrt(variance * fit.inverse[1]![1]!);
  return {
    value: roundTo(value, '%'),
    low: roundTo(value - half, '%'),
    high: roundTo(value + half, '%'),
  };
}
