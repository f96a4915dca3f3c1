import { type Finding, levels, type Rule } from '../types.ts';

/**
 * Marks findings that another finding about the same subject accounts for, so that one fault is not told
 * five times: a rule names what it explains, and does so only where it reaches at least the same level.
 * Levels and grade stay as they are.
 */
export function explain(findings: readonly Finding[], rules: ReadonlyMap<string, Rule>): Finding[] {
  const weight = ({ level }: Finding) => levels.indexOf(level);
  return findings.map((finding) => {
    const leading = findings.find(
      (other) =>
        other.subject === finding.subject &&
        weight(finding) > 0 &&
        weight(other) >= weight(finding) &&
        rules.get(other.rule)?.explains?.includes(finding.rule) === true,
    );
    return leading === undefined ? finding : { ...finding, explainedBy: leading.rule };
  });
}
