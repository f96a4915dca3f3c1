/**
 * A corpus small enough for every run of the tests: a few draws of every fault and honest kind from a seed of
 * its own. It is far too small to say how often anything happens. What it shows today stands in slice.json, so
 * that a change which finds less, or asks more honest riders, cannot pass unseen.
 */
import type { RuleSet } from '../../src/types.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import { rowsOf } from './draw.ts';
import { cohorts, faultNamed, fullSize, type Plan, planOf } from './plan.ts';
import { askedRank, countFrom, honestGroups } from './results.ts';
import { count, faultGroup, newTally, type Tally } from './tally.ts';

/** Two halves, so that two of the tests' workers can share the work. */
export type Half = 'faults' | 'honest';

/** By rule or by cohort: what was counted, under names that say what. More of the first is better, of the second worse. */
export interface Slice {
  /** Draws of the faults that a rule is meant for in which a right rule did what it should. */
  readonly found: { readonly [rule: string]: { readonly moderate: number; readonly 'clear-cut': number } };
  /** Honest submissions that a rule brought to a level. */
  readonly asked: {
    readonly [cohort: string]: {
      readonly query: { readonly [rule: string]: number };
      readonly refer: { readonly [rule: string]: number };
    };
  };
}

/** Draws of each fault, and of each honest kind in each cohort. */
const draws = { faults: 2, honest: 2 } as const;

export function drawSlice(half: 'faults', rules: RuleSet): Pick<Slice, 'found'>;
export function drawSlice(half: 'honest', rules: RuleSet): Pick<Slice, 'asked'>;
export function drawSlice(half: Half, rules: RuleSet): Partial<Slice> {
  const plan = slicePlan(half);
  const tally = newTally(plan);
  plan.lots.forEach((lot, k) => {
    const put = lot.sort === 'fault' ? naming(lot.fault, rules) : rules;
    for (let draw = 0; draw < lot.count; draw++)
      for (const row of rowsOf(plan, k, draw, put)) count(tally, plan, row, rules.rules);
  });
  return half === 'faults' ? { found: foundIn(tally, rules) } : { asked: askedIn(tally) };
}

/** Only what a fault's right rules say of it is counted: nothing else is asked. */
function naming(fault: string, rules: RuleSet): RuleSet {
  const right = faultNamed(fault).rules;
  return { ...rules, rules: rules.rules.filter(({ id }) => right.includes(id)) };
}

function slicePlan(half: Half): Plan {
  return planOf({
    build: 'tuning',
    seed: 'slice',
    scale: {
      honest: (draws.honest * honestKinds.length) / fullSize.cohort,
      faults: draws.faults / fullSize.fault,
    },
    kinds: honestKinds.map(({ name }) => name),
    faults: half === 'faults' ? faults : [],
    strengths: ['moderate', 'clear'],
    cohorts: half === 'honest' ? cohorts : [],
    rides: [],
  });
}

function foundIn(tally: Tally, { rules }: RuleSet): Slice['found'] {
  return Object.fromEntries(
    rules.map(({ id }) => {
      const meant = faults.filter((fault) => fault.rules[0] === id);
      const groups = (strength: 'moderate' | 'clear') =>
        meant.map(({ name }) => faultGroup(tally, name, strength)).filter((group) => group !== null);
      const moderate = groups('moderate').map((group) => countFrom(group.right, askedRank(group, rules)));
      const clear = groups('clear').map(({ reached }) => reached);
      return [id, { moderate: sum(moderate), 'clear-cut': sum(clear) }];
    }),
  );
}

function askedIn(tally: Tally): Slice['asked'] {
  return Object.fromEntries(
    cohorts.map((cohort) => {
      const at = (rank: number) => {
        const counts: Record<string, number> = {};
        for (const { byRule } of honestGroups(tally, cohort)) {
          for (const [rule, { levels }] of byRule) {
            const reached = countFrom(levels, rank);
            if (reached > 0) counts[rule] = (counts[rule] ?? 0) + reached;
          }
        }
        return Object.fromEntries(Object.entries(counts).sort(([a], [b]) => (a < b ? -1 : 1)));
      };
      return [cohort, { query: at(2), refer: at(3) }];
    }),
  );
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** What differs from the record, a line each. */
export interface Difference {
  readonly worse: readonly string[];
  readonly better: readonly string[];
}

export function compareFound(recorded: Slice['found'], now: Slice['found']): Difference {
  return compared(
    counts(recorded, (rule, kind) => `${rule}: found in draws of ${kind} faults`),
    counts(now, (rule, kind) => `${rule}: found in draws of ${kind} faults`),
    'more is better',
  );
}

export function compareAsked(recorded: Slice['asked'], now: Slice['asked']): Difference {
  const all = (asked: Slice['asked']) =>
    new Map(
      Object.entries(asked).flatMap(([cohort, levels]) => [
        ...counts(levels, (level, rule) => `${rule}: honest submissions at ${level}, meters ${cohort}`),
      ]),
    );
  return compared(all(recorded), all(now), 'less is better');
}

function counts(
  of: { readonly [outer: string]: { readonly [inner: string]: number } },
  name: (outer: string, inner: string) => string,
): Map<string, number> {
  return new Map(
    Object.entries(of).flatMap(([outer, inner]) =>
      Object.entries(inner).map(([key, value]) => [name(outer, key), value] as const),
    ),
  );
}

function compared(
  recorded: ReadonlyMap<string, number>,
  now: ReadonlyMap<string, number>,
  wish: 'more is better' | 'less is better',
): Difference {
  const names = [...new Set([...recorded.keys(), ...now.keys()])];
  const changes = names.map((name) => {
    const [before, after] = [recorded.get(name) ?? 0, now.get(name) ?? 0];
    return {
      line: `${name}: ${before} → ${after}`,
      gain: wish === 'more is better' ? after - before : before - after,
    };
  });
  return {
    worse: changes.filter(({ gain }) => gain < 0).map(({ line }) => line),
    better: changes.filter(({ gain }) => gain > 0).map(({ line }) => line),
  };
}
