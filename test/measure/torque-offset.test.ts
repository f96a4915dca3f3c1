import { expect, it } from 'vitest';
import { verdictOf } from '../../src/judge/judge.ts';
import { torqueOffset } from '../../src/measure/torque-offset.ts';
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
  const { details, circumstances, interval } = measuredOf(
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
  expect(circumstances).toEqual([]);
});

// From the middle on half of the power is gone from the second: two clouds of blocks, and a line through both.
it('takes blocks of a pedal that drops out for no constant torque', () => {
  const halved = (power: Float64Array) => {
    for (let i = power.length >> 1; i < power.length; i++) power[i]! *= 0.5;
  };
  const found = ['5', '6', '7', '8', '9', '10'].map((seed) =>
    measuredOf(
      torqueOffset,
      'zero-offset',
      ridden(`pedal ${seed}`, { kind: 'bunch race', minutes: 60 }, [{}, { twist: halved }]),
    ),
  );
  const rule = ruleOf('zero-offset');
  const apart = found.filter((one) => verdictOf(rule, { ...one, circumstances: [] }).level === 'query');
  expect(apart.length).toBeGreaterThan(0);
  for (const one of apart) expect(one.circumstances).toContain('no one line');
});

// Four minutes in which the second lost three tenths of its power: three spreads of the other blocks is all that they
// count for as slow wander. Counted whole, they would make the range 2.4 times as wide; cut at one spread, 1.6 times.
it('takes a few blocks that stray far for no slow wander of that size', () => {
  const weak = (power: Float64Array) => {
    const from = Math.floor(0.4 * power.length);
    for (let i = from; i < from + (power.length * 4) / 90; i++) power[i]! *= 0.7;
  };
  const width = (twist?: (power: Float64Array) => void) => {
    const { interval } = measuredOf(
      torqueOffset,
      'zero-offset',
      ridden('wild a', ride, [{}, twist ? { twist } : {}]),
    );
    return interval[1] - interval[0];
  };
  const wider = width(weak) / width();
  expect(wider).toBeGreaterThan(1.75);
  expect(wider).toBeLessThan(2.1);
});

// Above 350 W the primary reads eight watts high for each ten: the line through its blocks cuts the axis below zero.
it('leaves a rise above 350 W to the rule that asks about power', () => {
  const rising = (power: Float64Array) => {
    for (let i = 0; i < power.length; i++) power[i]! += 0.8 * Math.max(0, power[i]! - 350);
  };
  const wish = {
    kind: 'bunch race',
    minutes: 50,
    rider: { recordClass: 'open', standard: 'elite' },
  } as const;
  const found = ['3', '5', '7'].flatMap((seed) => {
    const all = subjectsOf(ridden(`rise ${seed}`, wish, [{ twist: rising }]));
    const outcome = outcomeOf(torqueOffset, 'zero-offset', all);
    return outcome.state === 'measured' ? [outcome] : [];
  });
  const rule = ruleOf('zero-offset');
  const apart = found.filter((one) => verdictOf(rule, { ...one, circumstances: [] }).level === 'query');
  expect(apart.length).toBeGreaterThan(0);
  for (const one of apart) {
    expect(one.circumstances).toContain('rises with power');
    expect(verdictOf(rule, one).level).toBe('note');
  }
});
