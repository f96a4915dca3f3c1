import { describe, expect, it } from 'vitest';
import { shippedRules } from '../../src/judge/shipped.ts';
import { shareOf } from './bounds.ts';
import { answer, driftRun, row, silent, smallPlan } from './make.ts';
import { outcomeOf, rateOf, targetsOf } from './results.ts';
import { count, faultGroup, newTally } from './tally.ts';

describe('counting', () => {
  it('counts a submission once, by the highest level of any rule and subject', () => {
    const plan = smallPlan('late-drift', 4);
    const tally = newTally(plan);
    const answers = [answer('late-drift', 'note'), answer('late-drift', 'query', { subject: 'pair' })];
    count(tally, plan, row(0, 0, answers), shippedRules);
    count(tally, plan, row(0, 1, [answer('mean-bias', 'refer'), ...answers]), shippedRules);
    const group = [...tally.groups.values()][0]!;
    expect(group.submissions).toBe(2);
    expect(group.any).toEqual([0, 0, 1, 1]);
    // Without the rules that say no more than how far apart meters as found lie.
    expect(group.others).toEqual([0, 0, 2, 0]);
    expect(group.byRule.get('late-drift')!.levels).toEqual([0, 0, 2, 0]);
  });

  it('keeps those in the denominator that a rule could not be applied to', () => {
    const plan = smallPlan('odd-one-out', 4);
    const tally = newTally(plan);
    const lot = plan.lots.findIndex(({ sort }) => sort === 'fault');
    const more = { strength: 'moderate', dose: 0.12 } as const;
    count(tally, plan, row(lot, 0, [silent('odd-one-out')], more), shippedRules);
    count(tally, plan, row(lot, 1, [answer('odd-one-out', 'query')], more), shippedRules);
    const fault = plan.lots[lot]! as { fault: string };
    const group = faultGroup(tally, fault.fault, 'moderate')!;
    expect(group).toMatchObject({ submissions: 2, reached: 1, rightNotApplicable: 1 });
    expect(group.byRule.get('odd-one-out')!.reasons).toEqual(new Map([['no-second', 1]]));
  });

  it('lets every rule that names a fault find it, and no other', () => {
    const plan = smallPlan('late-drift', 2);
    const tally = newTally(plan);
    const lot = plan.lots.findIndex((one) => one.sort === 'fault' && one.fault === 'pedalDropsOut');
    const named = plan.lots.findIndex(
      (one) => one.sort === 'fault' && one.fault === 'one pedal of the second drops out',
    );
    expect(lot).toBe(-1);
    const more = { strength: 'clear', dose: 1 } as const;
    count(tally, plan, row(named, 0, [answer('wide-spread', 'query')], more), shippedRules);
    count(tally, plan, row(named, 1, [answer('frozen-value', 'query')], more), shippedRules);
    expect(faultGroup(tally, 'one pedal of the second drops out', 'clear')!.right).toEqual([1, 0, 1, 0]);
  });

  it('sums up to what was drawn', () => {
    const { tally, plan } = driftRun(20);
    const expected = plan.lots.reduce(
      (sum, lot) => sum + lot.count * (lot.sort === 'fault' ? lot.strengths.length : 1),
      0,
    );
    expect(tally.rows).toBe(expected);
    for (const group of tally.groups.values()) {
      expect(group.any.reduce((a, b) => a + b, 0)).toBe(group.submissions);
    }
  });
});

describe('targets', () => {
  it('are met, not shown or missed', () => {
    const limit = { atMost: 0.02 };
    expect(outcomeOf(shareOf(100, 8500), limit)).toBe('met');
    expect(outcomeOf(shareOf(1, 100), limit)).toBe('not shown');
    expect(outcomeOf(shareOf(3, 100), limit)).toBe('missed');
    expect(outcomeOf(shareOf(350, 350), { atLeast: 0.97 })).toBe('met');
    expect(outcomeOf(shareOf(10, 10), { atLeast: 0.97 })).toBe('not shown');
    expect(outcomeOf(shareOf(340, 360), { atLeast: 0.97 })).toBe('missed');
  });

  it('are taken from the counts', () => {
    const { tally } = driftRun(20);
    const shares = Object.fromEntries(
      targetsOf(tally, shippedRules).map(({ id, share }) => [id, [share.count, share.of]]),
    );
    expect(shares['claims query']).toEqual([0, 40]);
    expect(shares['found refer']).toEqual([2, 40]);
    expect(shares['found query']).toEqual([4, 40]);
    // Eighty pairs, four of them not secure, four that lie 3.5 s off.
    expect(shares.lag).toEqual([72, 76]);
    const [count, of] = shares.moderate!;
    expect(count).toBe(of);
  });

  it('give a rule its false alarms by cohort, the worst kind beside them', () => {
    const { tally } = driftRun(20);
    const rate = rateOf(tally, 'as found', 'late-drift');
    expect(rate.query).toMatchObject({ count: 4, of: 40 });
    expect(rate.refer).toMatchObject({ count: 2, of: 40 });
    expect(rate.worst).toMatch(/\(2 of 20\)/);
    expect(rateOf(tally, 'as found', 'odd-one-out').applied).toBe(0);
  });
});
