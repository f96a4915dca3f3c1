import { defineMeasure, number } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { dependence, dependenceOptions } from './pair/dependence.ts';
import { zeroWatts } from './pair/expected.ts';
import { gate } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * How much more the primary reads above the second at high power than at the median power of the race,
 * in percent; what a lag and unlike averaging leave at the edges of blocks is taken out in the same fit, and sprints
 * have a rule of their own. A zero offset is a larger share of low power, and so a part of where honest meters lie.
 *
 * Honest slopes and noise, 0.8 % each in a race, bound what can be found: where a limit lets 0.05 % of 12,229 simulated
 * honest submissions with meters as found be asked, this finds 65 % of slopes of 0.2 above 350 W at most and 92 % of
 * 0.4, whether the slope begins at the median or at another quantile from 30 to 80 %.
 */
export const powerDependence = defineMeasure({
  id: 'power-dependence',
  of: 'pair',
  unit: '%',
  options: {
    ...dependenceOptions,
    leastRange: number('least range of power, as a logarithm of the ratio of its ends'),
    declaredSpread: number(
      'honest change between two meters within their claims, zero offsets apart, one standard deviation, %',
    ),
    fieldSpread: number(
      'honest change between two meters as found in the field, zero offsets apart, one standard deviation, %',
    ),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    return dependence(
      pair.subject,
      blocks,
      {
        effect: 'power',
        unit: 'W',
        column: blocks.own.map((watts, i) => (watts + blocks.other[i]!) / 2),
        distance: (from, to) => Math.log(to / from),
        leastRange: options.leastRange,
        honest: (from, to) => ({
          declared: Math.hypot(options.declaredSpread, byZeroOffsets(zeroWatts.declared, from, to)),
          field: Math.hypot(options.fieldSpread, byZeroOffsets(zeroWatts.field, from, to)),
        }),
      },
      options,
    );
  },
});

/** What the zero offsets of two meters, W each, change in their ratio from one power to a higher one, %. */
function byZeroOffsets(watts: number, from: number, to: number): number {
  return 100 * Math.SQRT2 * watts * (1 / from - 1 / to);
}
