import { describe, expect, it } from 'vitest';
import { shippedRules } from '../../src/judge/shipped.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import budget from './budget.json' with { type: 'json' };
import { cohorts, fullSize, planOf, sizesOf, strengthNames, strengthsOf, tasksOf } from './plan.ts';

const kinds = honestKinds.map(({ name }) => name);
const plan = (honest: number, faulty: number) =>
  planOf({
    build: 'tuning',
    seed: '1',
    scale: { honest, faults: faulty },
    kinds,
    faults,
    strengths: strengthNames,
    cohorts,
    rides: [['bunch race', 30]],
  });

describe('the plan of a run', () => {
  it('reaches the sizes that can show the targets at scale 1, and as few as one of each', () => {
    const { honest, faulty } = sizesOf(plan(1, 1));
    expect(honest).toBeGreaterThanOrEqual(2 * fullSize.cohort);
    expect(honest).toBeLessThan(2 * (fullSize.cohort + kinds.length));
    expect(faulty).toBe(fullSize.fault * faults.reduce((sum, fault) => sum + strengthsOf(fault).length, 0));
    expect(plan(1e-9, 1e-9).lots.every(({ count }) => count === 1)).toBe(true);
  });

  it('sizes honest submissions and faults apart', () => {
    const { honest, faulty } = sizesOf(plan(1, 0.17));
    expect(honest).toBe(sizesOf(plan(1, 1)).honest);
    expect(faulty / sizesOf(plan(1, 1)).faulty).toBeCloseTo(60 / fullSize.fault, 10);
  });

  it('hands out every draw of every lot once', () => {
    const whole = plan(0.03, 0.05);
    const seen = whole.lots.map(({ count }) => new Array<number>(count).fill(0));
    for (const { lot, from, to } of tasksOf(whole, 4)) for (let k = from; k < to; k++) seen[lot]![k]!++;
    expect(seen.flat().every((times) => times === 1)).toBe(true);
  });

  it('mixes the lots: half of the tasks hold about half of each', () => {
    const whole = plan(0.5, 0.5);
    const tasks = tasksOf(whole);
    const half = tasks.slice(0, Math.ceil(tasks.length / 2));
    whole.lots.forEach((_, lot) => {
      const of = (list: typeof tasks) => list.filter((task) => task.lot === lot).length;
      expect(Math.abs(of(half) - of(tasks) / 2)).toBeLessThanOrEqual(1);
    });
  });

  it('has honest kinds and faults with names of their own', () => {
    expect(new Set(kinds).size).toBe(kinds.length);
    expect(new Set(faults.map(({ name }) => name)).size).toBe(faults.length);
  });
});

/** Faults of these rules are there or not: they have no strength. */
const thereOrNot = ['missing-channel', 'dead-cadence', 'estimated-power', 'machine-like', 'different-ride'];

describe('every rule', () => {
  it.each(shippedRules.map(({ id }) => id))('%s is tried by two unlike faults or more', (id) => {
    const meant = faults.filter((fault) => fault.rules[0] === id);
    expect(meant.length).toBeGreaterThanOrEqual(2);
    const graded = meant.filter((fault) => strengthsOf(fault).length === strengthNames.length);
    if (!thereOrNot.includes(id))
      expect(graded.length).toBeGreaterThanOrEqual(id === 'outside-race-window' ? 1 : 2);
    for (const { strengths } of graded) {
      expect(strengths.borderline).toBeLessThan(strengths.moderate);
      expect(strengths.moderate).toBeLessThan(strengths.clear);
    }
  });

  it('has a share of the budget, and all shares together keep it', () => {
    const shares = Object.entries(budget.rules);
    expect(shares.map(([rule]) => rule).sort()).toEqual(shippedRules.map(({ id }) => id).sort());
    const sum = (level: 'query' | 'refer') =>
      Math.round(1e6 * shares.reduce((total, [, share]) => total + share[level], 0)) / 1e6;
    expect(sum('query')).toBeLessThanOrEqual(budget.query);
    expect(sum('refer')).toBeLessThanOrEqual(budget.refer);
    for (const [, share] of shares) expect(share.refer).toBeLessThanOrEqual(share.query);
  });

  it('is named by faults that state where their strengths are from', () => {
    for (const { rules, source, measure } of faults) {
      expect(rules.every((rule) => shippedRules.some(({ id }) => id === rule))).toBe(true);
      expect(source).not.toBe('');
      expect(measure).not.toBe('');
    }
  });
});
