import type { Rule } from '../../src/types.ts';
import type { Fault } from '../make/faults/fault.ts';
import type { Cohort } from '../make/meters.ts';
import { type Share, shareOf } from './bounds.ts';
import budget from './budget.json' with { type: 'json' };
import type { Trial } from './dose.ts';
import { cohorts, faultNamed, strengthNames, strengthsOf } from './plan.ts';
import { faultGroup, type Group, type LevelCounts, rankOf, spreadRules, type Tally } from './tally.ts';
import { percent } from './text.ts';

export type TargetId =
  | 'claims refer'
  | 'claims query'
  | 'found refer'
  | 'found query'
  | 'clear-cut'
  | 'moderate'
  | 'lag';

/**
 * Met: the bound lies inside. Missed: the measured share itself lies outside. Not shown: the share lies
 * inside, but so few draws do not prove it.
 */
export type Outcome = 'met' | 'missed' | 'not shown';

/** One promise of the whole, and where it stands. */
export interface Target {
  readonly id: TargetId;
  readonly what: string;
  readonly share: Share;
  readonly limit: { readonly atMost: number } | { readonly atLeast: number };
  /** The worst kind or fault beside the mean of all. */
  readonly worst: string;
  readonly outcome: Outcome;
}

export function outcomeOf({ share, lower, upper }: Share, limit: Target['limit']): Outcome {
  const [proved, inside] =
    'atMost' in limit
      ? [upper <= limit.atMost, share <= limit.atMost]
      : [lower >= limit.atLeast, share >= limit.atLeast];
  return proved ? 'met' : inside ? 'not shown' : 'missed';
}

export function honestGroups(tally: Tally, cohort: Cohort): Group[] {
  return [...tally.groups.values()].filter(
    ({ lot, submissions }) => lot.sort === 'honest' && lot.cohort === cohort && submissions > 0,
  );
}

export function faultGroups(tally: Tally, strength: Group['strength']): Group[] {
  return [...tally.groups.values()].filter(
    (one) => one.lot.sort === 'fault' && one.strength === strength && one.submissions > 0,
  );
}

const sumOf = (groups: readonly Group[], value: (group: Group) => number) =>
  groups.reduce((sum, group) => sum + value(group), 0);
/** How many reached the level of this rank or a higher one. */
export const countFrom = (levels: LevelCounts, rank: number) => levels.slice(rank).reduce((a, b) => a + b, 0);

export function targetsOf(tally: Tally, rules: readonly Rule[]): Target[] {
  const known = (group: Group) => rules.some(({ id }) => id === faultOf(group).rules[0]);
  const [claims, found] = cohorts.map((cohort) => honestGroups(tally, cohort)) as [Group[], Group[]];
  return [
    ...promise('claims refer', 'honest, within claims: refer', claims, ({ any }) => any[3], {
      atMost: budget.refer,
    }),
    ...promise(
      'claims query',
      'honest, within claims: query or worse',
      claims,
      ({ any }) => countFrom(any, 2),
      { atMost: budget.query },
    ),
    ...promise('found refer', 'honest, as found: refer', found, ({ any }) => any[3], {
      atMost: budget.refer,
    }),
    ...promise(
      'found query',
      `honest, as found: query or worse by a rule other than ${spreadRules.join(', ')}`,
      found,
      ({ others }) => countFrom(others, 2),
      { atMost: budget.query },
    ),
    ...promise(
      'clear-cut',
      'clear-cut faults reach the rule’s highest level by a right rule',
      faultGroups(tally, 'clear').filter(known),
      ({ reached }) => reached,
      { atLeast: 0.97 },
    ),
    ...promise(
      'moderate',
      'moderate faults reach query (or the rule’s highest level) by a right rule',
      faultGroups(tally, 'moderate').filter(known),
      (group) => countFrom(group.right, askedRank(group, rules)),
      { atLeast: 0.92 },
    ),
    ...lagPromise(tally),
  ];
}

function promise(
  id: TargetId,
  what: string,
  groups: readonly Group[],
  value: (group: Group) => number,
  limit: Target['limit'],
): Target[] {
  if (groups.length === 0) return [];
  const share = shareOf(
    sumOf(groups, value),
    sumOf(groups, ({ submissions }) => submissions),
  );
  const rate = (group: Group) => value(group) / group.submissions;
  const sign = 'atMost' in limit ? 1 : -1;
  const worst = groups.reduce((a, b) => (sign * rate(b) > sign * rate(a) ? b : a));
  const none = 'atMost' in limit && value(worst) === 0;
  return [
    {
      id,
      what,
      share,
      limit,
      worst: none ? 'none' : `${nameOf(worst)}: ${percent(rate(worst))}`,
      outcome: outcomeOf(share, limit),
    },
  ];
}

function lagPromise({ pairs }: Tally): Target[] {
  if (pairs.secure === 0) return [];
  const share = shareOf(pairs.right, pairs.secure);
  const limit = { atLeast: 0.995 };
  return [
    {
      id: 'lag',
      what: 'lag within 1 s in every segment, pairs of one ride called secure',
      share,
      limit,
      worst: `farthest ${pairs.worst.toFixed(pairs.worst < 10 ? 1 : 0)} s off; ${percent(pairs.secure / pairs.total)} of all pairs called secure`,
      outcome: outcomeOf(share, limit),
    },
  ];
}

export function askedRank(group: Group, rules: readonly Rule[]): number {
  const rule = rules.find(({ id }) => id === faultOf(group).rules[0]);
  return rule === undefined ? 2 : Math.min(2, rankOf(rule.highest));
}

export function faultOf({ lot }: Group): Fault {
  if (lot.sort !== 'fault') throw new Error('a group of honest submissions has no fault');
  return faultNamed(lot.fault);
}

export function nameOf({ lot }: Group): string {
  return lot.sort === 'honest' ? lot.kind : lot.fault;
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
    sumOf(groups, ({ byRule }) => countFrom(byRule.get(rule)?.levels ?? [0, 0, 0, 0], rank));
  const worst = [...groups]
    .map((group) => ({ group, count: countFrom(group.byRule.get(rule)?.levels ?? [0, 0, 0, 0], 2) }))
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

/** Every draw of a fault with its dose, and whether a right rule asked. */
export function trialsOf(tally: Tally, { name }: Fault): Trial[] {
  return strengthNames.flatMap((strength) =>
    (faultGroup(tally, name, strength)?.doses ?? []).map(({ dose, asked }) => ({
      dose,
      found: asked,
    })),
  );
}

/**
 * The faults that a rule is meant for, their doses as multiples of what counts as moderate: so one strength
 * can be told at which the rule finds half.
 */
export function relativeTrials(tally: Tally, faults: readonly Fault[]): Trial[] {
  return faults
    .filter((fault) => strengthsOf(fault).length > 1)
    .flatMap((fault) =>
      trialsOf(tally, fault).map(({ dose, found }) => ({ dose: dose / fault.strengths.moderate, found })),
    );
}
