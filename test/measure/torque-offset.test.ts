import { expect, it } from 'vitest';
import { verdictOf } from '../../src/judge/judge.ts';
import { torqueOffset } from '../../src/measure/torque-offset.ts';
import type { Outcome } from '../../src/types.ts';
import type { MeterSpec, SubmissionWish } from '../make/index.ts';
import { ruleOf } from './measure-of.ts';
import { covers, measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'outdoor ride', minutes: 90 } as const;

it.each([-3, 0, 2.1])('recovers a constant torque of %f N·m, beside a gain', (torque) => {
  const found = measuredOf(
    torqueOffset,
    'zero-offset',
    ridden(`torque ${torque}`, ride, [{ torqueOffset: torque, gain: 1.03 }]),
  );
  expect(Math.abs(found.value - torque)).toBeLessThan(0.6);
  expect(covers(found, torque)).toBe(true);
});

// While cranks come to rest cadence is told as it was: a torque told over such seconds is too small by one in twenty.
it('tells all of a torque where the cranks stand still now and then', () => {
  const shares = [1, 2, 3, 4].map((draw) => {
    const name = `coasting ${draw}`;
    return measuredOf(torqueOffset, 'zero-offset', ridden(name, ride, [{ torqueOffset: 6 }])).value / 6;
  });
  expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) / shares.length - 1)).toBeLessThan(0.04);
});

it('tells watts at the cadence that was ridden: 1 N·m is 9.4 W at 90 rpm', () => {
  const { details, value } = measuredOf(
    torqueOffset,
    'zero-offset',
    ridden('watts', ride, [{ torqueOffset: 2 }]),
  );
  const rpm = (details.rpm as { value: number }).value;
  expect((details.watts as { value: number }).value).toBeCloseTo((value * rpm * 2 * Math.PI) / 60, 6);
});

it.each([-3, 2.1])('finds %f N·m by a line that stray blocks hardly move as well', (torque) => {
  const { details, interval } = measuredOf(
    torqueOffset,
    'zero-offset',
    ridden(`torque ${torque}`, ride, [{ torqueOffset: torque, gain: 1.03 }]),
  );
  const [ranked, from, to] = [details.ranked, details.rankedFrom, details.rankedTo].map(
    (quantity) => (quantity as { value: number }).value,
  ) as [number, number, number];
  expect(from).toBeLessThan(torque);
  expect(to).toBeGreaterThan(torque);
  expect(ranked).toBeGreaterThan(interval[0]);
  expect(ranked).toBeLessThan(interval[1]);
});

/** What the measure makes of five rides in which the meters have these faults. */
function outcomesOf(name: string, wish: SubmissionWish, changes: readonly Partial<MeterSpec>[]): Outcome[] {
  return ['1', '2', '3', '4', '5'].map((seed) =>
    outcomeOf(torqueOffset, 'zero-offset', subjectsOf(ridden(`${name} ${seed}`, wish, changes))),
  );
}

const asked = (outcome: Outcome) =>
  outcome.state === 'measured' && verdictOf(ruleOf('zero-offset'), outcome).level === 'query';

// From the middle on half of the power is gone from the second: two clouds of blocks, with nothing but the step
// between them to make a range of power, and a line through both.
it('takes blocks of a pedal that drops out for no constant torque', () => {
  const halved = (power: Float64Array) => {
    for (let i = power.length >> 1; i < power.length; i++) power[i]! *= 0.5;
  };
  const outcomes = outcomesOf('pedal', { kind: 'time trial', minutes: 45 }, [{}, { twist: halved }]);
  expect(outcomes.filter(asked)).toEqual([]);
  expect(outcomes).toContainEqual(expect.objectContaining({ reason: 'no-one-line' }));
});

// Above 350 W the primary reads four watts high for each ten: the line through its blocks cuts the axis below zero.
it('leaves a rise above 350 W to the rule that asks about power', () => {
  const rising = (power: Float64Array) => {
    for (let i = 0; i < power.length; i++) power[i]! += 0.4 * Math.max(0, power[i]! - 350);
  };
  const rider = { recordClass: 'open', standard: 'elite' } as const;
  const outcomes = outcomesOf('rise', { kind: 'bunch race', minutes: 50, rider }, [{ twist: rising }]);
  expect(outcomes.filter(asked)).toEqual([]);
  expect(outcomes).toContainEqual(expect.objectContaining({ reason: 'rises-with-power' }));
});
