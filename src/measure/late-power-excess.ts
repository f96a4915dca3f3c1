import { firstOrder } from '../math/first-order.ts';
import { leastSquares } from '../math/least-squares.ts';
import { meanMaximal } from '../math/mean-maximal.ts';
import { type RobustFit, robustFit } from '../math/robust-fit.ts';
import type { Chart, Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, numbers } from './measure.ts';
import { subjectOf } from './recording/subject.ts';
import { type HeartBlocks, heartBlocks, sharedPower } from './rider/heart-blocks.ts';
import { cleanHeartRate, heartRateFaults } from './rider/heart-rate.ts';

/**
 * How many more watts the meter shows at the end of the race than at its start for the same heart rate,
 * in percent of the mean power: heart rate is fitted on power as the heart follows it (first order) and on
 * time. Honest riders drift the other way: heart rate rises at equal power (Coyle & González-Alonso 2001).
 */
export const latePowerExcess = defineMeasure({
  id: 'late-power-excess',
  of: 'recording',
  options: {
    leadSeconds: number('beginning of the race that is left out, s'),
    finalSeconds: number('end of the race that is left out, with its sprint, s'),
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks'),
    timeConstants: numbers('time constants tried for the answer of the heart, s'),
    capShare: number(
      'power above this many times the best of the cap’s duration does not show in heart rate',
    ),
    capSeconds: number('that duration, s'),
    usualPerHour: number('what honest riders show for each hour of the race, %'),
    usualSpread: number('SD of that, %'),
    otherSpread: number('SD of what does not grow with time, %'),
    leastGain: number('answer of the heart to power below which it cannot be judged, standard errors'),
    mostInflation: number('variance inflation above which time cannot be told from power'),
    leastShared: number('share of late blocks whose power must occur early as well'),
    stuckSeconds: number('one heart rate for this long counts as stuck, s'),
    cadenceBeats: number('heart rate this close to the cadence … (bpm)'),
    cadenceSeconds: number('… for this long counts as the cadence, s'),
  },
  compute(all, series, options) {
    const { power, heartRate } = series.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (heartRate === undefined) return notApplicable('no-channel', { channel: 'heartRate' });
    const stretch: Stretch = [all.window[0] + options.leadSeconds, all.window[1] - options.finalSeconds];
    const needed = options.leastBlocks;
    const clean = cleanHeartRate(series, heartRateFaults(series, options));
    const felt = capped(power, all.window, options);
    const tried = options.timeConstants.map((tau) =>
      heartBlocks(power, firstOrder(felt, tau), clean, stretch, options.blockSeconds),
    );
    const count = tried[0]?.at.length ?? 0;
    if (count < needed) return notApplicable('too-few-blocks', { blocks: count, needed });
    const best = closest(tried);
    if (best === null) return notApplicable('cannot-separate');
    const { fit, blocks } = best;
    const gain = fit.coefficients[1]!;
    if (gain < options.leastGain * fit.errors[1]!) return notApplicable('no-heart-rate-range');
    if (sharedPower(blocks) < options.leastShared) return notApplicable('no-overlap-of-power');
    if (fit.inflation[1]! > options.mostInflation) return notApplicable('cannot-separate');
    return describe(blocks, fit, all.window, options, `late-power:${subjectOf(all, series)}`);
  },
});

/** Power without what the heart does not answer to: sprints are ridden on other reserves. */
function capped(
  power: Float64Array,
  window: Stretch,
  { capShare, capSeconds }: { capShare: number; capSeconds: number },
): Float64Array {
  const best = meanMaximal(power, [Math.min(capSeconds, window[1] - window[0])], ...window).watts[0]!;
  return power.map((watts) => Math.min(watts, capShare * best));
}

/** The time constant whose plain fit leaves least over, fitted again so that single bad blocks cannot turn it. */
function closest(tried: readonly HeartBlocks[]): { blocks: HeartBlocks; fit: RobustFit } | null {
  let best: HeartBlocks | null = null;
  let least = Infinity;
  for (const blocks of tried) {
    const fit = leastSquares([ones(blocks), ...regressors(blocks)], blocks.heartRate);
    if (fit === null) continue;
    const left = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0);
    if (left < least) {
      least = left;
      best = blocks;
    }
  }
  const fit = best === null ? null : robustFit(regressors(best), best.heartRate);
  return best === null || fit === null ? null : { blocks: best, fit };
}

const ones = ({ at }: HeartBlocks) => new Float64Array(at.length).fill(1);
const regressors = ({ followed, at }: HeartBlocks) => [followed, at];

interface Usual {
  readonly usualPerHour: number;
  readonly usualSpread: number;
  readonly otherSpread: number;
}

function describe(blocks: HeartBlocks, fit: RobustFit, [from, to]: Stretch, usual: Usual, id: string) {
  const [, gain, slope] = fit.coefficients as unknown as [number, number, number];
  const [, gainError, slopeError] = fit.errors as unknown as [number, number, number];
  const mean = blocks.watts.reduce((a, b) => a + b, 0) / blocks.watts.length;
  // Equal heart rate: gain · more watts = -slope · time.
  const watts = (-slope * (to - from)) / gain;
  const error = Math.hypot((slopeError * (to - from)) / gain, (watts * gainError) / gain);
  const percent = (value: number) => (100 * value) / mean;
  const hours = (to - from) / 3600;
  const honest = {
    centre: usual.usualPerHour * hours,
    spread: Math.hypot(percent(error), usual.usualSpread * hours, usual.otherSpread),
  };
  return measured(
    percent(watts),
    '%',
    [percent(watts - fit.reach * error), percent(watts + fit.reach * error)],
    blocks.at.length,
    {
      stretches: [[from, to]],
      expected: { declared: honest, field: honest },
      details: {
        watts: { value: watts, unit: 'W' },
        mean: { value: mean, unit: 'W' },
        minutes: { value: (to - from) / 60, unit: 'min' },
        usual: { value: honest.centre, unit: '%' },
      },
      charts: [response(id, blocks, fit, (from + to) / 2)],
    },
  );
}

function response(id: string, blocks: HeartBlocks, { coefficients }: RobustFit, middle: number): Chart {
  const [start, gain, slope] = coefficients as unknown as [number, number, number];
  return {
    kind: 'response',
    id,
    blocks: Array.from(blocks.at, (at, i) => ({
      at,
      watts: blocks.watts[i]!,
      heartRate: blocks.heartRate[i]!,
      // What the heart answers to this power at the middle of the race: the gap to it shows the change.
      predicted: start + gain * blocks.followed[i]! + slope * middle,
    })),
  };
}
