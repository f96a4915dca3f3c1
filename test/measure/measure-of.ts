import { readFileSync } from 'node:fs';
import type { Measure } from '../../src/measure/measure.ts';
import type { Measured, Outcome, Rule, Series, Subjects } from '../../src/types.ts';

/** A shipped rule, read from its file. */
export function ruleOf(id: string): Rule {
  return JSON.parse(readFileSync(new URL(`../../rules/${id}.rule.json`, import.meta.url), 'utf8'));
}

/** Puts a measure to a recording with the options of its shipped rule. */
export function outcomeOf(
  measure: Measure<'recording'>,
  rule: string,
  all: Subjects,
  recording: Series = all.primary,
): Outcome {
  return measure.compute(all, recording, ruleOf(rule).options as never);
}

/** The same where it must come to a value. */
export function measuredOf(
  measure: Measure<'recording'>,
  rule: string,
  all: Subjects,
  recording: Series = all.primary,
): Measured {
  const outcome = outcomeOf(measure, rule, all, recording);
  if (outcome.state !== 'measured') throw new Error(`${measure.id}: ${JSON.stringify(outcome)}`);
  return outcome;
}
