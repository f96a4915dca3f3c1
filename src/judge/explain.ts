import { type Finding, levels, type Rule } from '../types.ts';

/**
 * Marks findings that another finding about the same subject accounts for, so that one fault is not told
 * five times: a rule names what it explains, and does so only where it reaches at least the same level.
 * Levels and grade stay as they are. Of findings that would account for each other, as an event's own rules may
 * have it, one stands alone: a fault is told once, and not left out.
 */
export function explain(findings: readonly Finding[], rules: ReadonlyMap<string, Rule>): Finding[] {
  const weight = ({ level }: Finding) => levels.indexOf(level);
  const leaders = new Map<Finding, Finding>();
  const leadsBack = (from: Finding, to: Finding) => {
    for (let one: Finding | undefined = from; one !== undefined; one = leaders.get(one)) {
      if (one === to) return true;
    }
    return false;
  };
  for (const finding of findings) {
    const leading = findings.find(
      (other) =>
        other.subject === finding.subject &&
        weight(finding) > 0 &&
        weight(other) >= weight(finding) &&
        rules.get(other.rule)?.explains?.includes(finding.rule) === true &&
        !leadsBack(other, finding),
    );
    if (leading !== undefined) leaders.set(finding, leading);
  }
  return findings.map((finding) => ({ ...finding, explainedBy: leaders.get(finding)?.rule ?? null }));
}
