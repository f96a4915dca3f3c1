import { mean } from '../math/mean.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { type Blocks, blocksOf } from './pair/blocks.ts';
import { gate } from './pair/gate.ts';
import { bendAt, effectOf, fitRatio, halfInterval, type RatioFit } from './pair/ratio-fit.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * When a drifting primary passed the second, minutes into the race, by a trend that may bend: a unit that reads
 * low while cold and high once warm crosses on the way, fast at first and then ever slower, which dates its
 * last zero or spin-down.
 */
export const crossingTime = defineMeasure({
  id: 'crossing-time',
  of: 'pair',
  unit: 'min',
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
    const line = blocks.count < options.leastBlocks ? null : fitRatio(blocks, 'time');
    if (line === null)
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
    const time = effectOf(line, 'time');
    if (time === null || time.inflation > options.mostInflation) return notApplicable('cannot-separate');
    const cautious = Math.abs(time.coefficient) - time.quick;
    if (100 * Math.expm1(2 * cautious) < options.leastGrowth) return notApplicable('no-drift');
    const curve = fitRatio(blocks, 'bend');
    const crossing = curve === null ? null : crossingOf(curve, blocks, time.coefficient > 0);
    if (curve === null || crossing === null) return notApplicable('no-crossing');
    const race = (all.window[1] - all.window[0]) / 60;
    const minutes = (at: number) => (curve.middle + curve.halfSpan * at - all.window[0]) / 60;
    const within = (at: number) => Math.max(0, Math.min(race, minutes(at)));
    const { at, half } = crossing;
    return measured(minutes(at), [within(at - half), within(at + half)], blocks.count, {
      stretches: [all.window],
      details: { direction: time.coefficient > 0 ? 'below to above' : 'above to below' },
    });
  },
});

/**
 * Where the curve of the difference passes zero in the direction of the drift, from -1 to 1, and half a 95 %
 * interval of it: the error of the curve there over its slope (delta method).
 */
function crossingOf(curve: RatioFit, blocks: Blocks, rising: boolean): { at: number; half: number } | null {
  const { coefficients } = curve.fit;
  const [level, line, bend] = [coefficients[0]!, coefficients[1]!, coefficients[2]!];
  const place = (at: number) => (at - curve.middle) / curve.halfSpan;
  // The fit takes the mean out of every effect.
  const meanTime = mean(blocks.at.map(place));
  const meanBend = mean(blocks.at.map((at) => bendAt(place(at))));
  const constant = level - line * meanTime - bend * meanBend - bend / 2;
  const at = roots(constant, line, 1.5 * bend).find(
    (root) => Math.abs(root) < 1 && line + 3 * bend * root > 0 === rising,
  );
  if (at === undefined) return null;
  const half = halfInterval(curve, [
    [0, 1],
    [1, at - meanTime],
    [2, bendAt(at) - meanBend],
  ]);
  return { at, half: half / Math.abs(line + 3 * bend * at) };
}

/** Real roots of a + bx + cx², without the cancellation of the usual formula. */
function roots(a: number, b: number, c: number): number[] {
  const squared = b * b - 4 * a * c;
  if (squared < 0) return [];
  const q = -(b + Math.sign(b || 1) * Math.sqrt(squared)) / 2;
  return [a / q, q / c].filter(Number.isFinite);
}
