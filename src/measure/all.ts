import type {
  AlignedSecond,
  Measurement,
  Outcome,
  ReasonId,
  Rule,
  Series,
  Subject,
  Subjects,
} from '../types.ts';
import { measures } from './index.ts';
import { type Measure, notApplicable } from './measure.ts';

/**
 * Puts every rule's measure to its subjects, in the order of the rules. A measure that throws has
 * failed: that is a fault of this program, it is reported as such, and the other measures still run.
 * `withoutSecond` is why no measure of a pair can be made where there is no second recording.
 */
export function measureAll(
  all: Subjects,
  rules: readonly Rule[],
  withoutSecond: ReasonId = 'no-second',
): Measurement[] {
  return rules.flatMap((rule) => {
    const measure = measures.find(({ id }) => id === rule.measure);
    if (measure === undefined) throw new Error(`rule ${rule.id} names an unknown measure: ${rule.measure}`);
    return targets(all, rule).map(([subject, target]) => {
      const outcome =
        rule.off === undefined
          ? outcomeOf(measure, all, target, rule, withoutSecond)
          : notApplicable('switched-off', { why: rule.off });
      const found = outcome.state === 'measured' ? outcome.circumstances : [];
      const remarks = found.map((circumstance) => measure.circumstances[circumstance] ?? circumstance);
      return { measure: measure.id, rule: rule.id, subject, options: rule.options, outcome, remarks };
    });
  });
}

type Target = Series | AlignedSecond | null;

function targets(all: Subjects, { subjects }: Rule): readonly (readonly [Subject, Target])[] {
  switch (subjects) {
    case 'primary':
      return [['primary', all.primary]];
    case 'recordings':
      return [['primary', all.primary], ...otherRecordings(all)];
    case 'pairs':
      return all.seconds.length === 0 ? [['pair', null]] : all.seconds.map((pair) => [pair.subject, pair]);
    default:
      return [[subjects, null]];
  }
}

/** Second recordings on the primary's clock; a further meter of a file is not one. */
function otherRecordings({ seconds }: Subjects): (readonly [Subject, Target])[] {
  return seconds
    .filter(({ further }) => !further)
    .map(({ subject, series }) => [subject.replace('pair:', 'second:'), series]);
}

function outcomeOf(
  measure: Measure,
  all: Subjects,
  target: Target,
  rule: Rule,
  withoutSecond: ReasonId,
): Outcome {
  if (measure.of === 'pair' && target === null) return notApplicable(withoutSecond);
  try {
    return measure.compute(all, target as never, rule.options as never);
  } catch (error) {
    return { state: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}
