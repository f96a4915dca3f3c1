/** Small runs made up by hand, for the tests of what is made of runs. */
import { shippedRules } from '../../src/judge/shipped.ts';
import type { Level } from '../../src/types.ts';
import { faults } from '../make/faults/index.ts';
import type { Counted } from './counts.ts';
import { cohorts, type Plan, planOf, strengthNames } from './plan.ts';
import { targetsOf } from './results.ts';
import type { Answer, Row } from './row.ts';
import { runRecord } from './runs.ts';
import { count, newTally } from './tally.ts';

export function answer(rule: string, level: Level, more: Partial<Answer> = {}): Answer {
  return {
    rule,
    subject: 'primary',
    state: 'measured',
    level,
    value: 1,
    interval: [1, 1],
    count: 1,
    declared: null,
    field: null,
    reason: null,
    held: false,
    ...more,
  };
}

export const silent = (rule: string): Answer =>
  answer(rule, 'none', { state: 'not applicable', value: null, interval: null, reason: 'no-second' });

export function row(lot: number, draw: number, answers: readonly Answer[], more: Partial<Row> = {}): Row {
  return {
    lot,
    draw,
    strength: null,
    dose: null,
    ride: 'bunch race',
    minutes: 40,
    evidence: { seconds: 1, history: 0, heartRate: true, cadence: true },
    grade: 'clear',
    answers,
    pairs: [],
    ...more,
  };
}

/** Two honest kinds in both cohorts, and the faults of one rule. */
export function smallPlan(rule: string, draws: number): Plan {
  return planOf({
    build: 'tuning',
    seed: '1',
    scale: { honest: (2 * draws) / 8500, faults: draws / 350 },
    kinds: ['even', 'odd'],
    faults: faults.filter((fault) => fault.rules[0] === rule),
    strengths: strengthNames,
    cohorts,
    rides: [],
  });
}

/** The run of a plan in which every draw was answered so. */
export function countedOf(plan: Plan, rowOf: (lot: number, draw: number) => readonly Row[]): Counted {
  const tally = newTally(plan);
  plan.lots.forEach((lot, k) => {
    for (let draw = 0; draw < lot.count; draw++)
      for (const one of rowOf(k, draw)) count(tally, plan, one, shippedRules);
  });
  const options = {
    build: plan.build,
    seed: plan.seed,
    scale: { honest: 1, faults: 0.5 },
    date: '2026-03-14',
  };
  const cost = { workers: 2, seconds: 60.4, memory: 4e8, broken: 0 };
  const totals = { rules: shippedRules.length, submissions: tally.rows, cost };
  return { plan, tally, run: runRecord(options, 'all', totals, targetsOf(tally, shippedRules)) };
}

/** Drift, found from its moderate strength on; every tenth honest draw as found queried, one in twenty referred. */
export function driftRun(draws = 20): Counted {
  const plan = smallPlan('late-drift', draws);
  return countedOf(plan, (lot, draw) => {
    const what = plan.lots[lot]!;
    if (what.sort === 'fault') {
      return what.strengths.map((strength) => {
        const dose = { borderline: 0.04, moderate: 0.08, clear: 0.16, any: 0.01 * 1.15 ** draw }[strength];
        const level = dose >= 0.12 ? 'refer' : dose >= 0.06 ? 'query' : 'none';
        return row(lot, draw, [answer('late-drift', level), answer('mean-bias', 'note')], { strength, dose });
      });
    }
    if (what.sort === 'coverage') return [];
    const level =
      what.cohort === 'within claims' || draw % 10 > 0 ? 'none' : draw % 20 > 0 ? 'query' : 'refer';
    const pairs = [{ secure: draw > 0, origin: 'independent', segments: 1, off: draw === 1 ? 3.5 : 0.2 }];
    return [row(lot, draw, [answer('late-drift', level), silent('odd-one-out')], { pairs })];
  });
}
