import { evidenceFor } from '../math/misfit.ts';
import type { AlignedSecond, RatioChart, Stretch, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number, type Reading } from './measure.ts';
import { type Blocks, blocksOf } from './pair/blocks.ts';
import { gate } from './pair/gate.ts';
import { effectOf, fitRatio, fitStep, halfInterval, type RatioFit, type StepFit } from './pair/ratio-fit.ts';
import { pairSamples, repeating, repeatsOf } from './pair/samples.ts';

/**
 * Growth of the difference between two meters over the part of the race that both told, in percent, with the
 * parts that power and cadence explain taken out in one fit. The ratio is fitted on its logarithm. Where one
 * change of level fits better than a line, the growth is that change, and it is argued from what follows it.
 */
export const differenceTrend = defineMeasure({
  id: 'difference-trend',
  of: 'pair',
  unit: '%',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks that make a trend'),
    mostInflation: number('variance inflation above which time cannot be told from power and cadence'),
    declaredSpread: number('honest growth between two meters within their claims, one standard deviation, %'),
    fieldSpread: number('honest growth between two meters as found in the field, one standard deviation, %'),
    stepBlocks: number('fewest blocks on either side of a step'),
    stepEvidence: number('n·log of the misfit of a line over that of a step, from which it counts as a step'),
  },
  circumstances: {
    ...repeating,
    'in one step':
      'the difference changed in one step, where the stretch named begins, as after a zero offset or when a pedal drops out, not by drifting',
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    if (blocks.count < options.leastBlocks) {
      return notApplicable('too-few-blocks', { blocks: blocks.count, needed: options.leastBlocks });
    }
    const line = fitRatio(blocks, 'time');
    if (line === null) return notApplicable('cannot-separate');
    const step = fitStep(blocks, options.stepBlocks, options.mostInflation);
    if (step !== null && isStep(line, step, options.stepEvidence))
      return describe(all, pair, blocks, step, options);
    if (effectOf(line, 'time')!.inflation > options.mostInflation) return notApplicable('cannot-separate');
    return describe(all, pair, blocks, line, options);
  },
});

/**
 * Whether one change of level fits the difference, the parts of power and cadence taken out, better than a
 * line in time does. Both have two numbers to fit; the step's place is a third, which the evidence pays for.
 */
function isStep(line: RatioFit, step: StepFit, evidence: number): boolean {
  return evidenceFor(step.fit.residuals, line.fit.residuals) >= evidence;
}

function describe(
  all: Subjects,
  pair: AlignedSecond,
  blocks: Blocks,
  found: RatioFit | StepFit,
  options: { blockSeconds: number; declaredSpread: number; fieldSpread: number },
): Reading {
  const [from, to] = toldIn(blocks, all.window, options.blockSeconds);
  const stepped = 'at' in found;
  const { coefficient, error, half } = effectOf(found, stepped ? 'step' : 'time')!;
  // Time runs from -1 to 1 over the blocks; the race is a little longer than its blocks' middles.
  const race = stepped ? 1 : (to - from) / found.halfSpan;
  const growth = (b: number) => 100 * Math.expm1(b * race);
  const sampling = 100 * race * error;
  return measured(
    growth(coefficient),
    [growth(coefficient - half), growth(coefficient + half)],
    blocks.count,
    {
      stretches: [[stepped ? Math.round(found.at) : from, to]],
      expected: {
        declared: { centre: 0, spread: Math.hypot(options.declaredSpread, sampling) },
        field: { centre: 0, spread: Math.hypot(options.fieldSpread, sampling) },
      },
      circumstances: [...repeatsOf(all, pair), ...(stepped ? ['in one step'] : [])],
      details: {
        early: { value: thirdDifference(blocks, from, from + (to - from) / 3), unit: '%' },
        late: { value: thirdDifference(blocks, to - (to - from) / 3, to), unit: '%' },
        minutes: { value: (to - from) / 60, unit: 'min' },
      },
      charts: [ratioChart(pair.subject, blocks, found)],
    },
  );
}

/** The part of the race that both meters told: of what lies before and after it a trend would only be guessed. */
function toldIn({ at }: Blocks, [from, to]: Stretch, seconds: number): Stretch {
  return [Math.max(from, at[0]! - seconds / 2), Math.min(to, at[at.length - 1]! + seconds / 2)];
}

/** Plain difference over a part of the race, %: a description, not what is judged. */
function thirdDifference(blocks: Blocks, from: number, to: number): number {
  let own = 0;
  let other = 0;
  blocks.at.forEach((at, i) => {
    if (at < from || at >= to) return;
    own += blocks.own[i]!;
    other += blocks.other[i]!;
  });
  return other > 0 ? 100 * (own / other - 1) : 0;
}

const trendPoints = 25;

function ratioChart(subject: string, blocks: Blocks, found: RatioFit | StepFit): RatioChart {
  const percent = (log: number) => 100 * Math.exp(log);
  const { fit, middle, halfSpan } = found;
  return {
    kind: 'ratio',
    id: `ratio ${subject}`,
    subject,
    blocks: Array.from(blocks.at, (at, i) => ({
      at,
      percent: (100 * blocks.own[i]!) / blocks.other[i]!,
      watts: (blocks.own[i]! + blocks.other[i]!) / 2,
    })),
    trend: trendTimes(found).map((time) => {
      const at = middle + halfSpan * time;
      const along = 'at' in found ? (at < found.at ? 0 : 1) - found.after : time;
      const level = fit.coefficients[0]! + fit.coefficients[1]! * along;
      const half = halfInterval(found, [
        [0, 1],
        [1, along],
      ]);
      return { at, percent: percent(level), low: percent(level - half), high: percent(level + half) };
    }),
  };
}

/** Where a trend is drawn, -1 to 1: evenly, and on either side of a step. */
function trendTimes(found: RatioFit | StepFit): number[] {
  const evenly = Array.from({ length: trendPoints }, (_, i) => (2 * i) / (trendPoints - 1) - 1);
  if (!('at' in found)) return evenly;
  const step = (found.at - found.middle) / found.halfSpan;
  return [...evenly, step - 1e-6, step + 1e-6].sort((a, b) => a - b);
}
