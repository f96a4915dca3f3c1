import { describe, expect, it } from 'vitest';
import { averagedOver } from '../../../src/report/page/averaging.ts';
import { shipped } from '../../../src/rules.ts';

const rule = (id: string) => shipped.rules.find((one) => one.id === id)!;

describe('averagedOver', () => {
  it('is what the rule’s own options say', () => {
    // Its blocks are those of its chart; it judges windows.
    const unresponsive = rule('heart-rate-unresponsive');
    const averaging = shipped.rules.filter(
      (one) => one !== unresponsive && Object.hasOwn(one.options, 'blockSeconds'),
    );
    expect(averaging.length).toBeGreaterThan(5);
    for (const one of averaging) expect(averagedOver(one), one.id).toBe(one.options.blockSeconds);
    expect(averagedOver(unresponsive)).toBe(unresponsive.options.windowSeconds);
    const torque = rule('impossible-torque');
    expect(averagedOver(torque)).toBe(torque.options.holdSeconds);
    expect(averagedOver({ ...torque, options: { holdSeconds: 5 } })).toBe(5);
  });

  it('is nothing where seconds are looked at as recorded', () => {
    expect(averagedOver(rule('sprint-overshoot'))).toBeNull();
    expect(averagedOver(rule('coasting-power'))).toBeNull();
  });
});
