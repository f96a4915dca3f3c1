import { quantileSorted } from 'simple-statistics';
import { studentReach } from '../../math/student.ts';
import type { DependenceChart, NotApplicable } from '../../types.ts';
import { measured, notApplicable, number, type Reading } from '../measure.ts';
import type { Blocks } from './blocks.ts';
import { effectOf, fitRatio } from './ratio-fit.ts';

/** Options that the measures of a dependence share. */
export const dependenceOptions = {
  blockSeconds: number('length of a block, s'),
  leastBlocks: number('fewest blocks that make a slope'),
  mostInflation: number('variance inflation above which the effect cannot be told from the others'),
  lowQuantile: number(
    'quantile of the blocks where the range begins: a fit by power begins at the median, 0.5',
  ),
  highQuantile: number('quantile of the blocks where the range ends'),
} as const;

type DependenceOptions = { readonly [N in keyof typeof dependenceOptions]: number };

/** How the column that the difference may depend on is looked at. */
interface Axis {
  readonly effect: DependenceChart['of'];
  readonly unit: DependenceChart['unit'];
  readonly column: Float64Array;
  /** How far apart two of its values are for the fit: in logarithms for power, plainly for the others. */
  readonly distance: (from: number, to: number) => number;
  /** Least range, as a distance. */
  readonly leastRange: number;
  /** Honest change from one value to another, one standard deviation, %: of meters within their claims, and as found. */
  readonly honest: (from: number, to: number) => { readonly declared: number; readonly field: number };
}

/**
 * How much the difference between two meters changes over the range of power, cadence or speed that the ride
 * used, %, with the other effects taken out in the same fit. The low end of the range is a quantile of the
 * blocks, and so is the high end.
 */
export function dependence(
  subject: string,
  blocks: Blocks,
  axis: Axis,
  options: DependenceOptions,
): Reading | NotApplicable {
  if (blocks.count < options.leastBlocks) {
    return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
  }
  const sorted = Array.from(axis.column).sort((a, b) => a - b);
  const low = quantileSorted(sorted, options.lowQuantile);
  const high = quantileSorted(sorted, options.highQuantile);
  const range = axis.distance(low, high);
  if (!(range >= axis.leastRange)) return notApplicable('narrow-range', { what: axis.effect });
  const ratio = fitRatio(blocks, axis.effect);
  const effect = ratio === null ? null : effectOf(ratio, axis.effect);
  if (effect === null || effect.inflation > options.mostInflation) return notApplicable('cannot-separate');
  const change = (coefficient: number) => 100 * Math.expm1(coefficient * range);
  const error = 100 * effect.error * range;
  const { coefficient, half } = effect;
  const { declared, field } = axis.honest(low, high);
  return measured(
    change(coefficient),
    [change(coefficient - half), change(coefficient + half)],
    blocks.count,
    {
      expected: {
        declared: { centre: 0, spread: Math.hypot(declared, error) },
        field: { centre: 0, spread: Math.hypot(field, error) },
      },
      details: { from: { value: low, unit: axis.unit }, to: { value: high, unit: axis.unit } },
      charts: [chart(subject, blocks, axis, sorted)],
    },
  );
}

/** Bands of equal count, so that each dot rests on as much. */
const bands = 6;

function chart(subject: string, blocks: Blocks, axis: Axis, sorted: readonly number[]): DependenceChart {
  const percents = Array.from(blocks.own, (own, i) => (100 * own) / blocks.other[i]!);
  const edges = Array.from({ length: bands + 1 }, (_, k) => quantileSorted(sorted as number[], k / bands));
  return {
    kind: 'dependence',
    id: `${axis.effect} dependence ${subject}`,
    subject,
    of: axis.effect,
    unit: axis.unit,
    points: percents.map((percent, i) => ({ x: axis.column[i]!, percent })),
    bands: edges.slice(1).flatMap((to, k) => {
      const from = edges[k]!;
      const inside = percents.filter(
        (_, i) => axis.column[i]! >= from && (axis.column[i]! < to || k === bands - 1),
      );
      return inside.length < 3 ? [] : [{ from, to, count: inside.length, ...meanWithInterval(inside) }];
    }),
  };
}

function meanWithInterval(values: readonly number[]): { percent: number; low: number; high: number } {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  const half = studentReach(values.length - 1) * Math.sqrt(variance / values.length);
  return { percent: mean, low: mean - half, high: mean + half };
}
