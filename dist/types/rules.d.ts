/**
 * Rule files → rule set: the shipped rules, and an event's own folder laid over them. The table of
 * contents that puts rules and measures together.
 */
import { type Ground, type Loaded, type RuleFile } from './judge/load.ts';
import type { RuleSet } from './types.ts';
/** What the program ships: rules, grades and the measures that they may name. */
export declare const shipped: Ground;
/** The shipped rules with an event's files laid over, or everything that is wrong with those. */
export declare function layOver(files: readonly RuleFile[], name: string): Promise<Loaded>;
/**
 * The rule set to judge by.
 *
 * @param files of an event's own folder; none for the shipped rules alone
 * @param name what reports call the set
 * @throws Problem `rule-wrong` with a sentence for everything that is wrong
 */
export declare function ruleSet(files?: readonly RuleFile[], name?: string): Promise<RuleSet>;
