import { quantileSorted } from 'simple-statistics';
import { deming } from '../math/deming.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { gate } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';

/** Standard errors in half a 95 % interval. */
const normalReach = 1.96;
/** N·m times rpm, in W. */
const wattsPerTorque = (2 * Math.PI) / 60;

/**
 * Constant torque between two meters, N·m, as a zero offset that was not done leaves it: torque of the
 * primary against torque of the second over blocks, a line through points that err in both (1 N·m is
 * 9.4 W at 90 rpm). Which meter errs more is not known, so the interval covers every error ratio given.
 */
export const torqueOffset = defineMeasure({
  id: 'torque-offset',
  of: 'pair',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that make a line'),
    leastRange: number('least ratio of high to low power: without a range a gain and an offset look alike'),
    errorRatios: numbers('ratios of the error variances of the two meters that are thought possible'),
    declaredSpread: number('honest offset of two meters within their claims, one standard deviation, N·m'),
    fieldSpread: number('honest offset of two meters as found in the field, one standard deviation, N·m'),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    if (blocks.count < options.leastBlocks) {
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
    }
    if (blocks.cadence.some((rpm) => !(rpm > 0))) return notApplicable('no-channel', { channel: 'cadence' });
    const sorted = Array.from(blocks.other).sort((a, b) => a - b);
    if (quantileSorted(sorted, 0.95) < options.leastRange * quantileSorted(sorted, 0.05)) {
      return notApplicable('narrow-range', { what: 'power' });
    }
    const torque = (watts: Float64Array) => watts.map((w, i) => w / (blocks.cadence[i]! * wattsPerTorque));
    const own = torque(blocks.own);
    const other = torque(blocks.other);
    const lines = options.errorRatios.map((errorRatio) => deming(other, own, errorRatio));
    if (lines.some((line) => line === null)) return notApplicable('narrow-range', { what: 'power' });
    const middle = lines[lines.length >> 1]!;
    const low = Math.min(...lines.map((line) => line!.interceptInterval[0]));
    const high = Math.max(...lines.map((line) => line!.interceptInterval[1]));
    const error = (middle.interceptInterval[1] - middle.interceptInterval[0]) / (2 * normalReach);
    const honest = (spread: number) => ({ centre: 0, spread: Math.hypot(spread, error) });
    const rpm = blocks.cadence.reduce((a, b) => a + b, 0) / blocks.count;
    return measured(middle.intercept, 'N·m', [low, high], blocks.count, {
      stretches: [all.window],
      expected: { declared: honest(options.declaredSpread), field: honest(options.fieldSpread) },
      details: {
        watts: { value: middle.intercept * rpm * wattsPerTorque, unit: 'W' },
        rpm: { value: rpm, unit: 'rpm' },
        gain: { value: 100 * (middle.slope - 1), unit: '%' },
      },
    });
  },
});
