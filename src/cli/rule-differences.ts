import { differences } from '../differences.ts';
import { shipped } from '../rules.ts';
import type { RuleSet } from '../types.ts';

/** What differs from the shipped rules, a line for each field. Holds strangers' words. */
export function ruleDifferences({ rules, grades }: RuleSet): readonly string[] {
  const lines = rules.flatMap((rule) => {
    const before = shipped.rules.find(({ id }) => id === rule.id);
    if (before === undefined) return [`${rule.id}: a new rule`];
    if (rule.off !== undefined) return [`${rule.id}: switched off: ${rule.off}`];
    return fields(rule.id, before, rule);
  });
  return [...lines, ...fields('grades', shipped.grades, grades)];
}

/** Rates that were forgotten because a limit differs are no change of anybody's: the limit is listed. */
function fields(name: string, before: unknown, after: unknown): string[] {
  const json = (value: unknown) => (value === undefined ? 'none' : JSON.stringify(value));
  return differences(before, after)
    .filter(({ path, after }) => !(path.at(-1) === 'falseAlarm' && after === undefined))
    .map(({ path, before, after }) => `${name} › ${path.join(' › ')}: ${json(before)} → ${json(after)}`);
}
