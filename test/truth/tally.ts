import { type Level, levels, type Rule } from '../../src/types.ts';
import { faultNamed, type Lot, type Plan, type StrengthName } from './plan.ts';
import type { Answer, Row } from './row.ts';

/** How often each level was the highest: none, note, query, refer. */
export type LevelCounts = [none: number, note: number, query: number, refer: number];

/** What one rule did in a group of submissions, each counted once by its highest level. */
export interface RuleCounts {
  readonly levels: LevelCounts;
  /** Submissions in which it could not be applied to any subject, and those in which it broke. */
  notApplicable: number;
  failed: number;
  readonly reasons: Map<string, number>;
}

/** Submissions of one honest kind, or of one fault at one strength. */
export interface Group {
  readonly lot: Exclude<Lot, { sort: 'coverage' }>;
  readonly strength: StrengthName | null;
  submissions: number;
  /** By the highest level of any rule. */
  readonly any: LevelCounts;
  /** The same without the rules that answer to how far honest meters as found lie apart. */
  readonly others: LevelCounts;
  readonly byRule: Map<string, RuleCounts>;
  /** Faults: by the highest level of a rule that names the fault. */
  readonly right: LevelCounts;
  /** Faults: the first of its rules could not be applied. */
  rightNotApplicable: number;
  /** Faults: a right rule reached the highest level that the first of them has. */
  reached: number;
  readonly doses: { readonly dose: number; readonly asked: boolean; readonly reached: boolean }[];
}

export interface Tally {
  /** In the order of the plan. */
  readonly groups: ReadonlyMap<string, Group>;
  readonly pairs: { total: number; secure: number; right: number; worst: number };
  rows: number;
}

/** Honest meters as found in the field may ask for a query by these: they say no more than how far apart. */
export const spreadRules: readonly string[] = ['mean-bias', 'zero-offset', 'wide-spread'];

export function newTally({ lots }: Pick<Plan, 'lots'>): Tally {
  const groups = lots.flatMap((lot) => {
    if (lot.sort === 'coverage') return [];
    const strengths = lot.sort === 'honest' ? [null] : lot.strengths;
    return strengths.map((strength) => newGroup(lot, strength));
  });
  return {
    groups: new Map(groups.map((group) => [groupKey(group.lot, group.strength), group])),
    pairs: { total: 0, secure: 0, right: 0, worst: 0 },
    rows: 0,
  };
}

function newGroup(lot: Group['lot'], strength: Group['strength']): Group {
  return {
    lot,
    strength,
    submissions: 0,
    any: [0, 0, 0, 0],
    others: [0, 0, 0, 0],
    byRule: new Map(),
    right: [0, 0, 0, 0],
    rightNotApplicable: 0,
    reached: 0,
    doses: [],
  };
}

export function groupKey(lot: Group['lot'], strength: StrengthName | null): string {
  return lot.sort === 'honest' ? `${lot.cohort}: ${lot.kind}` : `${lot.fault}: ${strength}`;
}

/** The group of a fault at a strength; null where the run drew none. */
export function faultGroup({ groups }: Tally, fault: string, strength: StrengthName): Group | null {
  const group = groups.get(groupKey({ sort: 'fault', fault, strengths: [], count: 0 }, strength));
  return group === undefined || group.submissions === 0 ? null : group;
}

export function count(tally: Tally, plan: Plan, row: Row, rules: readonly Rule[]): void {
  const lot = plan.lots[row.lot]! as Group['lot'];
  const group = tally.groups.get(groupKey(lot, row.strength))!;
  tally.rows++;
  group.submissions++;
  const byRule = new Map<string, Answer[]>();
  for (const answer of row.answers) byRule.set(answer.rule, [...(byRule.get(answer.rule) ?? []), answer]);
  const reachedBy = new Map<string, number>();
  for (const [rule, answers] of byRule) {
    const level = highest(answers);
    reachedBy.set(rule, level);
    countRule(group.byRule, rule, answers, level);
  }
  const most = (keep: (rule: string) => boolean) =>
    Math.max(0, ...[...reachedBy].map(([rule, level]) => (keep(rule) ? level : 0)));
  group.any[most(() => true)]!++;
  group.others[most((rule) => !spreadRules.includes(rule))]!++;
  if (lot.sort === 'fault') countFault(group, row, rules, most, byRule);
  for (const pair of lot.sort === 'honest' ? row.pairs : []) {
    tally.pairs.total++;
    if (!pair.secure || pair.off === null) continue;
    tally.pairs.secure++;
    if (pair.off <= 1) tally.pairs.right++;
    tally.pairs.worst = Math.max(tally.pairs.worst, pair.off);
  }
}

function countRule(
  byRule: Map<string, RuleCounts>,
  rule: string,
  answers: readonly Answer[],
  level: number,
): void {
  const counts = byRule.get(rule) ?? {
    levels: [0, 0, 0, 0],
    notApplicable: 0,
    failed: 0,
    reasons: new Map<string, number>(),
  };
  byRule.set(rule, counts);
  counts.levels[level as 0 | 1 | 2 | 3]++;
  if (answers.some(({ state }) => state === 'failed')) counts.failed++;
  if (answers.some(({ state }) => state !== 'not applicable')) return;
  counts.notApplicable++;
  const reason = answers[0]!.reason ?? 'failed';
  counts.reasons.set(reason, (counts.reasons.get(reason) ?? 0) + 1);
}

function countFault(
  group: Group,
  row: Row,
  rules: readonly Rule[],
  most: (keep: (rule: string) => boolean) => number,
  byRule: ReadonlyMap<string, readonly Answer[]>,
): void {
  const { fault } = group.lot as Extract<Lot, { sort: 'fault' }>;
  const { rules: right, most: held } = faultNamed(fault);
  const level = most((rule) => right.includes(rule));
  group.right[level]!++;
  const first = byRule.get(right[0]!);
  if (first === undefined || first.every(({ state }) => state === 'not applicable'))
    group.rightNotApplicable++;
  const rule = rules.find(({ id }) => id === right[0]);
  const reached = rule !== undefined && level >= rankOf(held ?? rule.highest);
  if (reached) group.reached++;
  if (row.dose !== null) group.doses.push({ dose: row.dose, asked: level >= askedFrom(rule), reached });
}

/** A rule that makes a submission incomplete makes no more than a note of its finding. */
export function rankOf(level: Level | Rule['highest']): number {
  return level === 'incomplete' ? 1 : levels.indexOf(level);
}

/** `query`, or the rule's highest level where that is lower. */
function askedFrom(rule: Rule | undefined): number {
  return rule === undefined ? 2 : Math.min(2, rankOf(rule.highest));
}

function highest(answers: readonly Answer[]): number {
  return Math.max(0, ...answers.map(({ level }) => levels.indexOf(level)));
}
