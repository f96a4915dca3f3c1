import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { gate } from './pair/gate.ts';
import { effectOf, fitRatio } from './pair/ratio-fit.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * When a drifting primary passed the second, minutes into the race, by the fitted trend: a unit that reads
 * low while cold and high once warm crosses on the way, which dates its last zero or spin-down.
 */
export const crossingTime = defineMeasure({
  id: 'crossing-time',
  of: 'pair',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that make a trend'),
    mostInflation: number('variance inflation above which time cannot be told from power and cadence'),
    leastGrowth: number('least change over the race that counts as a drift, at its cautious end, %'),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    const ratio = blocks.count < options.leastBlocks ? null : fitRatio(blocks, 'time');
    if (ratio === null)
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
    const time = effectOf(ratio, 'time');
    if (time === null || time.inflation > options.mostInflation) return notApplicable('cannot-separate');
    const cautious = Math.abs(time.coefficient) - time.reach;
    if (100 * Math.expm1(2 * cautious) < options.leastGrowth) return notApplicable('no-drift');
    const level = ratio.fit.coefficients[0]!;
    const crossing = -level / time.coefficient;
    if (Math.abs(crossing) >= 1) return notApplicable('no-crossing');
    const minutes = (at: number) => (ratio.middle + ratio.halfSpan * at - all.window[0]) / 60;
    // Delta method for the ratio of two estimates that the centred fit tells apart.
    const error = Math.hypot(ratio.fit.errors[0]!, crossing * time.error) / Math.abs(time.coefficient);
    const half = ratio.fit.reach * error;
    const value = minutes(crossing);
    const race = (all.window[1] - all.window[0]) / 60;
    const within = (at: number) => Math.max(0, Math.min(race, minutes(at)));
    return measured(value, 'min', [within(crossing - half), within(crossing + half)], blocks.count, {
      stretches: [all.window],
      details: { direction: time.coefficient > 0 ? 'below to above' : 'above to below' },
    });
  },
});
