import { declaredPair } from '../declared.ts';
import { mean } from '../math/mean.ts';
import { errorBetweenNeighbours } from '../math/neighbours.ts';
import { robustFit } from '../math/robust-fit.ts';
import { studentReach } from '../math/student.ts';
import type { AlignedSecond, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { type Blocks, blocksOf } from './pair/blocks.ts';
import { behindChain, expectedDifference } from './pair/expected.ts';
import { gate, isIndependent } from './pair/gate.ts';
import { pairSamples, repeating, repeatsOf } from './pair/samples.ts';

/**
 * Overall difference of two meters: total work of the primary over that of the second, in percent, over
 * the seconds of the race that both recorded with power on either. The interval is that of the ratio of this ride
 * without noise: what makes neighbouring blocks alike, as slow wander and how hard they are ridden, is part of the
 * ratio and no error of it. Where honest pairs lie is stated beside it.
 */
export const overallDifference = defineMeasure({
  id: 'overall-difference',
  of: 'pair',
  unit: '%',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that give an interval'),
    leastFading: number(
      'fall of the difference where power rises e-fold, as a share of it, from which it fades as that of legs does',
    ),
  },
  circumstances: {
    ...repeating,
    'third sides with the primary': 'a further meter reads nearer to the primary than to this one',
    'fades as one leg doubled':
      'the second tells no left and right, and the difference fades as power rises, as that of uneven legs does',
  },
  compute(all, pair, { blockSeconds, leastBlocks, leastFading }) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const samples = pairSamples(all, pair);
    const blocks = blocksOf(samples, blockSeconds);
    if (blocks.count < leastBlocks) {
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: leastBlocks });
    }
    const ownMean = mean(samples.own);
    const otherMean = mean(samples.other);
    const ratio = ownMean / otherMean;
    // A ratio of sums, made linear: its error is that of the mean of own - ratio·other (Cochran 1977).
    const misfit = blocks.own.map((watts, i) => (watts - ratio * blocks.other[i]!) / otherMean);
    const error = errorBetweenNeighbours(misfit);
    const percent = 100 * (ratio - 1);
    // Every second difference is one that the others do not hold.
    const half = 100 * studentReach(blocks.count / 2) * error;
    const expected = expectedDifference(all, pair.subject, otherMean, 100 * error);
    const excess = percent - expected.field.centre;
    return measured(percent, [percent - half, percent + half], blocks.count, {
      stretches: [all.window],
      expected,
      circumstances: [
        ...repeatsOf(all, pair),
        ...(thirdSides(all, pair, excess, { blockSeconds, leastBlocks })
          ? ['third sides with the primary']
          : []),
        ...(excess > 0 && mayDoubleOneLeg(all, pair) && 100 * fading(blocks) >= leastFading * excess
          ? ['fades as one leg doubled']
          : []),
      ],
      details: {
        own: { value: ownMean, unit: 'W' },
        other: { value: otherMean, unit: 'W' },
        seconds: { value: samples.at.length, unit: 's' },
      },
    });
  },
});

/**
 * Whether a further independent meter, compared for as long as a pair must be, reads nearer to the primary than to
 * the second, places allowed for: then it is the second that lies apart.
 *
 * @param excess of the primary over the second, %
 */
function thirdSides(
  all: Subjects,
  pair: AlignedSecond,
  excess: number,
  { blockSeconds, leastBlocks }: { readonly blockSeconds: number; readonly leastBlocks: number },
): boolean {
  return all.seconds
    .filter((third) => third !== pair && isIndependent(third))
    .some((third) => {
      const samples = pairSamples(all, third);
      if (blocksOf(samples, blockSeconds).count < leastBlocks) return false;
      const watts = mean(samples.other);
      const overThird =
        100 * (mean(samples.own) / watts - 1) - expectedDifference(all, third.subject, watts, 0).field.centre;
      return Math.sign(excess) * overThird < Math.abs(excess) / 2;
    });
}

/** Whether the second sits where legs push and tells nothing of each of them: it may measure one and double it. */
function mayDoubleOneLeg(all: Subjects, pair: AlignedSecond): boolean {
  const told = pair.series.channels.balance?.filter((share) => !Number.isNaN(share)) ?? [];
  const { other } = declaredPair(all, pair.subject);
  return behindChain(other) !== true && told.every((share) => share === told[0]);
}

/**
 * By how much the ratio falls, as a logarithm, where power rises e-fold: the cautious end of it, 0 where it may not
 * fall at all. Legs grow more alike towards full effort (Kell & Greer 2017, J Strength Cond Res 31:468-473), so that
 * what a meter of one of them is off by fades; a gain stays.
 */
function fading({ own, other }: Blocks): number {
  const ratio = own.map((watts, i) => Math.log(watts / other[i]!));
  const level = own.map((watts, i) => Math.log((watts + other[i]!) / 2));
  const centre = mean(level);
  const fit = robustFit([level.map((log) => log - centre)], ratio);
  return fit === null ? 0 : Math.max(0, -fit.coefficients[1]! - fit.reach * fit.errors[1]!);
}
