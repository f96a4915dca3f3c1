import { Problem } from '../problem.ts';
import { type Fault } from '../schema.ts';
import type { Grades, MeasureInfo, Rule, RuleSet } from '../types.ts';
/** A file of an event's own rules folder. Only its name counts, not the folders before it. */
export interface RuleFile {
    readonly name: string;
    readonly text: string;
}
/** What rules are made of before an event's folder is laid over. */
export interface Ground {
    readonly rules: readonly Rule[];
    readonly grades: Grades;
    readonly measures: readonly MeasureInfo[];
}
/** A rule set that may be used, or everything that is wrong with the files it was to be made of. */
export type Loaded = {
    readonly set: RuleSet;
    readonly problems: readonly [];
} | {
    readonly set: null;
    readonly problems: readonly Problem[];
};
/**
 * Lays the files of an event's folder over the ground rules. A file changes the rule of its id, switches
 * it off, or, under a new id, adds a complete rule; `grades.json` replaces the grades. The rules that a
 * file touched are checked in full; the ground stands as it is.
 */
export declare function loadRules(ground: Ground, files: readonly RuleFile[], name: string): Promise<Loaded>;
/**
 * Everything that is wrong with a complete rule, measured against what rules and measures there are.
 *
 * @param added ids of rules beside those: what the same folder adds
 */
export declare function ruleFaults(rule: unknown, { rules, measures }: Pick<Ground, 'rules' | 'measures'>, added?: readonly string[]): Promise<Fault[]>;
