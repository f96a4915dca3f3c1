import { longRunMean } from '../math/long-run.ts';
import { mean } from '../math/mean.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { expectedDifference } from './pair/expected.ts';
import { gate } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * Overall difference of two meters: total work of the primary over that of the second, in percent, over
 * the seconds of the race that both recorded with power on either. The interval counts in that blocks
 * resemble their neighbours; where honest pairs lie is stated beside it.
 */
export const overallDifference = defineMeasure({
  id: 'overall-difference',
  of: 'pair',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that give an interval'),
  },
  compute(all, pair, { blockSeconds, leastBlocks }) {
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
    const { error, reach } = longRunMean(misfit);
    const percent = 100 * (ratio - 1);
    const half = 100 * reach * error;
    return measured(percent, '%', [percent - half, percent + half], blocks.count, {
      stretches: [all.window],
      expected: expectedDifference(all, pair.subject, 100 * error),
      details: {
        own: { value: ownMean, unit: 'W' },
        other: { value: otherMean, unit: 'W' },
        seconds: { value: samples.at.length, unit: 's' },
      },
    });
  },
});
