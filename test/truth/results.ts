import type { Rule } from '../../src/types.ts';
import { faults } from '../make/faults/index.ts';
import type { Cohort } from '../make/meters.ts';
import { type Share, shareOf } from './bounds.ts';
import budget from './budget.json' with { type: 'json' };
import { doseCurve } from './dose.ts';
import { type Group, type LevelCounts, rankOf, type Tally } from './tally.ts';

/** One promise of the whole, and where it stands. */
export interface Target {
  readonly what: string;
  readonly share: Share;
  readonly atMost?: number;
  readonly atLeast?: number;
  readonly worst: string;
  readonly met: boolean;
}

export const cohorts: readonly Cohort[] = ['within claims', 'as found'];

export function honestGroups(tally: Tally, cohort: Cohort): Group[] {
  return [...tally.groups.values()].filter(({ lot }) => lot.sort === 'honest' && lot.cohort === cohort);
}

export function faultGroups(tally: Tally, strength: Group['strength']): Group[] {
  return [...tally.groups.values()].filter((one) => one.lot.sort === 'fault' && one.strength === strength);
}

const sumOf = (groups: readonly Group[], value: (group: Group) => number) =>
  groups.reduce((sum, group) => sum + value(group), 0);
const atLeast = (levels: LevelCounts, rank: number) => levels.slice(rank).reduce((a, b) => a + b, 0);

export function targetsOf(tally: Tally, rules: readonly Rule[]): Target[] {
  const out: Target[] = [];
  const promise = (
    what: string,
    groups: readonly Group[],
    value: (group: Group) => number,
    limit: { readonly atMost: number } | { readonly atLeast: number },
  ) => {
    if (groups.length === 0) return;
    const share = shareOf(
      sumOf(groups, value),
      sumOf(groups, ({ submissions }) => submissions),
    );
    const most = 'atMost' in limit;
    const sorted = [...groups].sort((a, b) => value(a) / a.submissions - value(b) / b.submissions);
    const worst = most ? sorted.at(-1)! : sorted[0]!;
    out.push({
      what,
      share,
      ...limit,
      worst: `${nameOf(worst)} ${percent(value(worst) / worst.submissions)}`,
      met: most ? share.upper <= limit.atMost : share.lower >= limit.atLeast,
    });
  };
  for (const cohort of cohorts) {
    const groups = honestGroups(tally, cohort);
    promise(`honest, ${cohort}: refer`, groups, ({ any }) => any[3], { atMost: budget.refer });
    if (cohort === 'within claims') {
      promise('honest, within claims: query or worse', groups, ({ any }) => atLeast(any, 2), {
        atMost: budget.query,
      });
    } else {
      promise(
        'honest, as found: query or worse by a rule other than mean-bias, zero-offset, wide-spread',
        groups,
        ({ others }) => atLeast(others, 2),
        { atMost: budget.query },
      );
    }
  }
  const known = (group: Group) => rules.some(({ id }) => id === faultOf(group).rules[0]);
  promise(
    'clear-cut faults reach the rule’s highest level by a right rule',
    faultGroups(tally, 'clear').filter(known),
    ({ reached }) => reached,
    { atLeast: 0.97 },
  );
  promise(
    'moderate faults reach query by a right rule',
    faultGroups(tally, 'moderate').filter(known),
    (group) => atLeast(group.right, askedRank(group, rules)),
    { atLeast: 0.92 },
  );
  const { pairs } = tally;
  if (pairs.secure > 0) {
    const share = shareOf(pairs.right, pairs.secure);
    out.push({
      what: 'lag within 1 s on pairs of one ride called secure, every segment',
      share,
      atLeast: 0.995,
      worst: `${pairs.worst.toFixed(1)} s; ${percent(pairs.secure / pairs.total)} of ${pairs.total} pairs secure`,
      met: share.lower >= 0.995,
    });
  }
  return out;
}

export function askedRank(group: Group, rules: readonly Rule[]): number {
  const rule = rules.find(({ id }) => id === faultOf(group).rules[0]);
  return rule === undefined ? 2 : Math.min(2, rankOf(rule.highest));
}

export function faultOf({ lot }: Group) {
  return faults.find(({ name }) => lot.sort === 'fault' && name === lot.fault)!;
}

function nameOf({ lot }: Group): string {
  return lot.sort === 'honest' ? lot.kind : lot.fault;
}

export function percent(share: number, digits = 1): string {
  return Number.isNaN(share) ? '–' : `${(100 * share).toFixed(digits)} %`;
}

/** A rule's false alarms over a cohort. */
export interface RuleRate {
  readonly rule: string;
  readonly query: Share;
  readonly refer: Share;
  readonly note: Share;
  readonly applied: number;
  readonly failed: number;
  readonly worst: string;
}

export function rateOf(tally: Tally, cohort: Cohort, rule: string): RuleRate {
  const groups = honestGroups(tally, cohort);
  const all = sumOf(groups, ({ submissions }) => submissions);
  const reached = (rank: number) =>
    sumOf(groups, ({ byRule }) => atLeast(byRule.get(rule)?.levels ?? [0, 0, 0, 0], rank));
  const worst = [...groups]
    .map((group) => ({ group, count: atLeast(group.byRule.get(rule)?.levels ?? [0, 0, 0, 0], 2) }))
    .sort((a, b) => b.count / b.group.submissions - a.count / a.group.submissions)[0];
  return {
    rule,
    note: shareOf(reached(1), all),
    query: shareOf(reached(2), all),
    refer: shareOf(reached(3), all),
    applied:
      1 - sumOf(groups, ({ byRule, submissions }) => byRule.get(rule)?.notApplicable ?? submissions) / all,
    failed: sumOf(groups, ({ byRule }) => byRule.get(rule)?.failed ?? 0),
    worst:
      worst === undefined || worst.count === 0
        ? ''
        : `${nameOf(worst.group)} (${worst.count} of ${worst.group.submissions})`,
  };
}

/** Dose at which half of the draws are found by a right rule. */
export function halfFound(group: Group): number | null {
  return doseCurve(group.doses.map(({ dose, asked }) => ({ dose, found: asked }))).half;
}
