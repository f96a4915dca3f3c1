/**
 * Rule files → rule set: the shipped rules, and an event's own folder laid over them. The table of
 * contents that puts rules and measures together.
 */
import { type Ground, type Loaded, loadRules, type RuleFile } from './judge/load.ts';
import { shippedGrades, shippedRules } from './judge/shipped.ts';
import { measures } from './measure/index.ts';
import { Problem, sentence } from './problem.ts';
import type { RuleSet } from './types.ts';

/** What the program ships: rules, grades and the measures that they may name. */
export const shipped: Ground = { rules: shippedRules, grades: shippedGrades, measures };

/** The shipped rules with an event's files laid over, or everything that is wrong with those. */
export function layOver(files: readonly RuleFile[], name: string): Promise<Loaded> {
  return loadRules(shipped, files, name);
}

/**
 * The rule set to judge by.
 *
 * @param files of an event's own folder; none for the shipped rules alone
 * @param name what reports call the set
 * @throws Problem `rule-wrong` with a sentence for everything that is wrong
 */
export async function ruleSet(files: readonly RuleFile[] = [], name = 'shipped'): Promise<RuleSet> {
  const { set, problems } = await layOver(files, name);
  if (set === null) throw new Problem({ code: 'rule-wrong', what: problems.map(sentence).join(' ') });
  return set;
}
