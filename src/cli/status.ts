import { rank } from '../judge/judge.ts';
import type { Raised, Report } from '../types.ts';

/** What a program that runs this one is told. */
export const status = { done: 0, reached: 1, couldNotRun: 2 } as const;

export const failLevels = ['note', 'query', 'refer', 'never'] as const satisfies readonly (
  | Raised
  | 'never'
)[];
export type FailOn = (typeof failLevels)[number];

/**
 * The exit status of an audit, decided here and nowhere else. A submission that lacks something never
 * passes, also where a query hides that behind its grade: a further fault must not improve the outcome.
 */
export function statusOf(report: Report, failOn: FailOn): number {
  if (failOn === 'never') return status.done;
  const lacks =
    report.grade === 'incomplete' || report.missing.length > 0 || report.submission.unreadable.length > 0;
  const reached =
    rank(failOn) <= rank(report.grade === 'query' || report.grade === 'refer' ? report.grade : 'none') ||
    report.findings.some((finding) => rank(finding.level) >= rank(failOn));
  return lacks || reached ? status.reached : status.done;
}
