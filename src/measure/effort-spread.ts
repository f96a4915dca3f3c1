import { concordance, concordanceOf } from '../math/concordance.ts';
import { limitError, limitReach, limitsOfAgreement } from '../math/limits-of-agreement.ts';
import { mean } from '../math/mean.ts';
import { normalReach } from '../math/normal.ts';
import { medianEfficiency, robustSpread } from '../math/robust-spread.ts';
import { studentReach } from '../math/student.ts';
import type { AgreementChart, Subject, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { type Blocks, blocksOf } from './pair/blocks.ts';
import { expectedDifference } from './pair/expected.ts';
import { gate } from './pair/gate.ts';
import { fitRatio } from './pair/ratio-fit.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * How far apart two meters are in single efforts of half a minute: half the width of the limits of
 * agreement (Bland & Altman 1986, 1999) on the logarithm of their ratio, %, once drift and dependence on
 * power and cadence are taken out. The interval is that of a limit of agreement.
 */
export const effortSpread = defineMeasure({
  id: 'effort-spread',
  of: 'pair',
  unit: '%',
  options: {
    blockSeconds: number('length of an effort, s'),
    leastBlocks: number('fewest efforts'),
    honestCentre: number('half the width between honest meters in the middle, within claims or not, %'),
    honestSpread: number('one standard deviation of it from pair to pair, %'),
  },
  compute(all, pair, { blockSeconds, leastBlocks, honestCentre, honestSpread }) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), blockSeconds);
    const ratio = blocks.count < leastBlocks ? null : fitRatio(blocks, 'scatter');
    if (ratio === null) return notApplicable('too-few-blocks', { blocks: blocks.count, needed: leastBlocks });
    const { residuals } = ratio.fit;
    const n = residuals.length;
    // Median absolute deviation: a dropout or two is not how far efforts lie apart.
    const spread = robustSpread(residuals);
    const sampling = limitError(n, medianEfficiency);
    const half = (deviations: number) => 100 * Math.expm1(Math.max(0, deviations));
    const reach = studentReach(n - 1) * spread * sampling;
    // What so few efforts leave open, of meters that scatter as honest ones do.
    const honest = {
      centre: honestCentre,
      spread: Math.hypot(honestSpread, (honestCentre * sampling) / limitReach),
    };
    const limit = limitReach * spread;
    return measured(half(limit), [half(limit - reach), half(limit + reach)], n, {
      stretches: [all.window],
      expected: { declared: honest, field: honest },
      details: { seconds: { value: blockSeconds, unit: 's' } },
      charts: [agreementChart(all, pair.subject, blocks, honestCentre / 100 / limitReach)],
    });
  },
});

function agreementChart(all: Subjects, subject: Subject, blocks: Blocks, scatter: number): AgreementChart {
  const points = Array.from(blocks.own, (own, i) => ({
    watts: (own + blocks.other[i]!) / 2,
    percent: 100 * (own / blocks.other[i]! - 1),
  }));
  const { mean: centre, low, high, half } = limitsOfAgreement(points.map(({ percent }) => percent));
  // Of logarithms: a difference in percent is as far from the line at any power.
  const found = concordance(blocks.other.map(Math.log), blocks.own.map(Math.log));
  const { field } = expectedDifference(all, subject, mean(blocks.other), 0);
  const apart = (Math.abs(field.centre) + normalReach * field.spread) / 100;
  return {
    kind: 'agreement',
    id: `agreement ${subject}`,
    subject,
    points,
    mean: centre,
    low,
    high,
    half,
    concordance:
      found === null
        ? null
        : {
            value: found.value,
            low: found.low,
            high: found.high,
            honest: concordanceOf(Math.max(0, found.shared), apart, scatter),
          },
  };
}
