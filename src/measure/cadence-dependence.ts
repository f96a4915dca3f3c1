import { defineMeasure, notApplicable, number } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { dependence } from './pair/dependence.ts';
import { gate } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * How much the difference between two meters changes from slow to fast cadence, in percent, at equal power
 * and time. In one gear, cadence is flywheel speed.
 */
export const cadenceDependence = defineMeasure({
  id: 'cadence-dependence',
  of: 'pair',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that make a slope'),
    mostInflation: number('variance inflation above which cadence cannot be told from time and power'),
    lowQuantile: number('quantile of block cadence where the range begins'),
    highQuantile: number('quantile of block cadence where the range ends'),
    leastRange: number('least range of cadence, rpm'),
    declaredSpread: number('honest change between two meters within their claims, one standard deviation, %'),
    fieldSpread: number('honest change between two meters as found in the field, one standard deviation, %'),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    const column = blocks.cadence;
    if (column.some(Number.isNaN)) return notApplicable('no-channel', { channel: 'cadence' });
    const distance = (from: number, to: number) => to - from;
    return dependence(pair.subject, blocks, { effect: 'cadence', unit: 'rpm', column, distance }, options);
  },
});
