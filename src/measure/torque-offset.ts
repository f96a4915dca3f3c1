import { medianSorted, quantileSorted } from 'simple-statistics';
import { deming, type Line } from '../math/deming.ts';
import { mean } from '../math/mean.ts';
import { evidenceFor } from '../math/misfit.ts';
import { normalReach } from '../math/normal.ts';
import { bendOf, passingBablok, type RankedLine } from '../math/passing-bablok.ts';
import { robustFit } from '../math/robust-fit.ts';
import { robustSpread } from '../math/robust-spread.ts';
import { crankPower, crankTorque } from '../math/torque.ts';
import type { Quantity, Values } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { type Blocks, blocksOf } from './pair/blocks.ts';
import { gate } from './pair/gate.ts';
import { pairSamples, pedallingSamples } from './pair/samples.ts';
import { pairWander, varianceByWander } from './pair/wander.ts';

/**
 * Constant torque between two meters, N·m, as a zero offset that was not done leaves it: torque of the
 * primary against torque of the second over blocks of pedalling, a line through points that err in both by a share
 * of what they tell (1 N·m is 9.4 W at 90 rpm). Which meter errs more is not known, so the interval covers every
 * error ratio given; slow wander of a gain, which looks like an offset where hard stretches lie together, is in it. A
 * second line, which neither stray blocks nor that ratio move far, stands beside it: where it finds another offset, or
 * the blocks lie along no one line at all, there is no constant torque.
 */
export const torqueOffset = defineMeasure({
  id: 'torque-offset',
  of: 'pair',
  unit: 'N·m',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that make a line'),
    leastRange: number('least ratio of high to low power: without a range a gain and an offset look alike'),
    errorRatios: numbers('ratios of the error variances of the two meters that are thought possible'),
    mostBend: number(
      'greatest running sum of the sides of the line that blocks of one line show, over what chance makes',
    ),
    riseEvidence: number(
      'n·log of the misfit of a constant torque over that of a rise above the median power, from which it is a rise',
    ),
    declaredSpread: number('honest offset of two meters within their claims, one standard deviation, N·m'),
    fieldSpread: number('honest offset of two meters as found in the field, one standard deviation, N·m'),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const ridden = blocksOf(pairSamples(all, pair), options.blockSeconds);
    const blocks = blocksOf(pedallingSamples(all, pair), options.blockSeconds);
    if (!ridden.cadence.some((rpm) => rpm > 0)) return notApplicable('no-channel', { channel: 'cadence' });
    if (blocks.count < options.leastBlocks) {
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
    }
    const sorted = Array.from(ridden.other).sort((a, b) => a - b);
    if (quantileSorted(sorted, 0.95) < options.leastRange * quantileSorted(sorted, 0.05)) {
      return notApplicable('narrow-range', { what: 'power' });
    }
    const torque = (watts: Float64Array) => watts.map((w, i) => crankTorque(w, blocks.cadence[i]!));
    const own = torque(blocks.own);
    const other = torque(blocks.other);
    const weights = own.map((newtonMetres, i) => 4 / (newtonMetres + other[i]!) ** 2);
    const lines = options.errorRatios.map((errorRatio) => deming(other, own, errorRatio, weights));
    if (lines.some((line) => line === null)) return notApplicable('narrow-range', { what: 'power' });
    const middle = lines[lines.length >> 1]!;
    const slow = normalReach * errorByWander({ x: other, y: own, weights, at: blocks.at }, middle);
    const ends = lines.flatMap((line) => {
      const { intercept, interceptError, reach } = line!;
      const half = Math.hypot(reach * interceptError, slow);
      return [intercept - half, intercept + half];
    });
    const [low, high] = [Math.min(...ends), Math.max(...ends)];
    // The dear one, with a slope for every two blocks: where the interval holds none, there is nothing to try.
    const apart = low > 0 || high < 0;
    const ranked = apart ? passingBablok(other, own) : null;
    if (apart) {
      if (ranked === null || !(low <= ranked.intercept && ranked.intercept <= high))
        return notApplicable('no-one-line');
      if (bendOf(other, own, ranked) > options.mostBend) return notApplicable('no-one-line');
      if (riseOverOffset(blocks, own, other) >= options.riseEvidence)
        return notApplicable('rises-with-power');
    }
    const honest = (spread: number) => ({ centre: 0, spread: Math.hypot(spread, middle.interceptError) });
    const rpm = mean(blocks.cadence);
    return measured(middle.intercept, [low, high], blocks.count, {
      stretches: [all.window],
      expected: { declared: honest(options.declaredSpread), field: honest(options.fieldSpread) },
      details: {
        watts: { value: crankPower(middle.intercept, rpm), unit: 'W' },
        rpm: { value: rpm, unit: 'rpm' },
        gain: { value: 100 * (middle.slope - 1), unit: '%' },
        ...(ranked === null ? {} : rankedOffset(ranked, slow)),
      },
    });
  },
});

/**
 * How much better a rise above the median power tells the logarithm of the ratio than a constant torque does, which
 * shows most where torque is least; 0 where either cannot be fitted.
 */
function riseOverOffset(blocks: Blocks, own: Float64Array, other: Float64Array): number {
  const ratio = blocks.own.map((watts, i) => Math.log(watts / blocks.other[i]!));
  const power = blocks.own.map((watts, i) => (watts + blocks.other[i]!) / 2);
  const median = medianSorted(Array.from(power).sort((a, b) => a - b));
  const offset = robustFit([own.map((torque, i) => 2 / (torque + other[i]!))], ratio);
  const rise = robustFit([power.map((watts) => Math.max(0, Math.log(watts / median)))], ratio);
  return offset === null || rise === null ? 0 : evidenceFor(rise.residuals, offset.residuals);
}

/** The offset by the second line, N·m, and the ends of its interval: what is quick by its ranks, and slow wander. */
function rankedOffset({ intercept, flattest, steepest }: RankedLine, slow: number): Values {
  const of = (value: number): Quantity => ({ value, unit: 'N·m' });
  return {
    ranked: of(intercept),
    rankedFrom: of(intercept - Math.hypot(intercept - steepest.intercept, slow)),
    rankedTo: of(intercept + Math.hypot(flattest.intercept - intercept, slow)),
  };
}

interface Points {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weights: Float64Array;
  /** s */
  readonly at: Float64Array;
}

/**
 * Standard error that slow wander of the gain gives to the intercept, N·m: a torque off by a share of itself moves
 * it by its part in a line of least squares, from which Deming's hardly differs for meters that agree.
 */
function errorByWander({ x, y, weights, at }: Points, line: Line): number {
  const all = total(weights);
  const centre = total(weights.map((weight, i) => weight * x[i]!)) / all;
  const squares = total(weights.map((weight, i) => weight * (x[i]! - centre) ** 2));
  const parts = weights.map(
    (weight, i) => line.slope * x[i]! * weight * (1 / all - (centre * (x[i]! - centre)) / squares),
  );
  const shares = x.map((value, i) => (y[i]! - line.intercept) / (line.slope * value) - 1);
  const wild = wildFrom * robustSpread(shares);
  const tamed = shares.map((share) => Math.max(-wild, Math.min(wild, share)));
  return Math.sqrt(varianceByWander(pairWander(tamed, at), parts, at));
}

function total(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Robust standard deviations from which a block counts as no more than that. */
const wildFrom = 3;
