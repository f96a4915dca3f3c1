import type { Finding, Grade, Grades, Measurement, Report, Requirement, Rule, RuleSet } from '../types.ts';

/** What a submission lacks, apart from anything its findings say. */
export interface Lacks {
  /** Requirements of the event that are not met. */
  readonly missing: readonly Requirement[];
  /** Files handed in that could not be read. */
  readonly unreadable: number;
}

/**
 * The grade of a submission: `refer` if any finding is, else `query`, else `incomplete`, else `clear`.
 * Several queries add up only where the rules say so, and only across families: findings of one family
 * share their evidence, so ten of them are no better than one.
 */
export function gradeOf(
  findings: readonly Finding[],
  { rules, grades }: Pick<RuleSet, 'rules' | 'grades'>,
  lacks: Lacks,
): Grade {
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  if (findings.some((finding) => finding.level === 'refer')) return 'refer';
  const queries = findings.filter((finding) => finding.level === 'query');
  if (addUp(queries, byId, grades)) return 'refer';
  if (queries.length > 0) return 'query';
  const incomplete =
    lacks.missing.length > 0 ||
    lacks.unreadable > 0 ||
    findings.some((finding) => finding.level !== 'none' && byId.get(finding.rule)?.highest === 'incomplete');
  return incomplete ? 'incomplete' : 'clear';
}

function addUp(queries: readonly Finding[], byId: ReadonlyMap<string, Rule>, grades: Grades): boolean {
  if (grades.queriesThatRefer === null) return false;
  const families = new Set(queries.map((finding) => byId.get(finding.rule)?.family));
  return families.size >= grades.queriesThatRefer;
}

/** How far a grade reaches: how many checks could be made, how many not, and why not. */
export function reachOf(measurements: readonly Measurement[]): Report['reach'] {
  const count = (state: Measurement['outcome']['state']) =>
    measurements.filter((measurement) => measurement.outcome.state === state).length;
  const reasons = new Map<Report['reach']['because'][number]['id'], number>();
  for (const { outcome } of measurements) {
    if (outcome.state === 'measured') continue;
    const id = outcome.state === 'failed' ? 'failed' : outcome.reason;
    reasons.set(id, (reasons.get(id) ?? 0) + 1);
  }
  return {
    judged: count('measured'),
    notApplicable: count('not applicable'),
    failed: count('failed'),
    because: [...reasons]
      .map(([id, count]) => ({ id, count }))
      .sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1)),
  };
}
