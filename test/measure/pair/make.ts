import { align } from '../../../src/align/index.ts';
import type { Measure } from '../../../src/measure/measure.ts';
import { normalise } from '../../../src/normalise/index.ts';
import { findSections } from '../../../src/sections/index.ts';
import { raceWindow } from '../../../src/sections/window.ts';
import type { AlignedSecond, Measured, Outcome, Subjects } from '../../../src/types.ts';
import { type Draft, drawDraft, realise, type Submission, type SubmissionWish } from '../../make/index.ts';
import { ruleOf } from '../measure-of.ts';

type Meter = Draft['meters'][number];

/** A meter without error of its own, so that what is planted is all there is. */
export const clean: Partial<Meter> = {
  gain: 1,
  sides: 2,
  drivetrainLoss: 0,
  torqueOffset: 0,
  driftPerHour: 0,
  powerSlope: 0,
  cadenceSlope: 0,
  sprint: null,
  overshoot: 0,
  ripple: null,
  wander: { spread: 0, tau: 600, ramps: false },
  temperature: { perDegree: 0, warming: 0, tau: 600 },
};

/** A ride on two meters, each with the changes given on top of `clean`. */
export function ridden(seed: string, wish: SubmissionWish, changes: readonly Partial<Meter>[]): Submission {
  const draft = drawDraft(seed, { places: ['crank', 'pedal', 'hub'], ...wish });
  const meters = draft.meters.map((meter, k) => ({ ...meter, ...clean, ...changes[k] }));
  return realise({ ...draft, meters });
}

export function subjectsOf(submission: Submission): Subjects {
  const primary = normalise(submission.primary, 'primary').series;
  const window = raceWindow(primary, submission.race).stretch;
  const seconds = submission.seconds.map((second, k) =>
    align(primary, normalise(second, `second ${k}`).series, `pair:${k}`, window),
  );
  const { rider, race } = submission;
  const sections = findSections({ primary, seconds }, window);
  return { primary, seconds, sections, window, rider, race, history: null };
}

/** Puts a pair measure to the first second, with the options of its shipped rule. */
export function outcomeOf(
  measure: Measure<'pair'>,
  rule: string,
  all: Subjects,
  pair?: AlignedSecond,
): Outcome {
  return measure.compute(all, pair ?? all.seconds[0]!, ruleOf(rule).options as never);
}

/** The same where it must come to a value. */
export function measuredOf(measure: Measure<'pair'>, rule: string, submission: Submission): Measured {
  const outcome = outcomeOf(measure, rule, subjectsOf(submission));
  if (outcome.state !== 'measured') throw new Error(`${measure.id}: ${JSON.stringify(outcome)}`);
  return outcome;
}

export function covers({ interval }: Measured, truth: number): boolean {
  return interval[0] <= truth && truth <= interval[1];
}
