import { describe, expect, it } from 'vitest';
import { crankPower } from '../../src/math/torque.ts';
import { torqueShare } from '../../src/measure/torque-share.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, seriesOf } from './series.ts';

const id = 'impossible-torque';
/** Steady riding, with an effort of some seconds at a torque (N·m) and cadence. */
function riding(
  torque: number,
  rpm: number,
  seconds: number,
  change: (cadence: number[]) => void = () => {},
) {
  const power = Array.from({ length: 600 }, () => 200);
  const cadence = Array.from({ length: 600 }, () => 90);
  power.fill(crankPower(torque, rpm), 300, 300 + seconds);
  cadence.fill(rpm, 300, 300 + seconds);
  change(cadence);
  return alone(seriesOf({ power, cadence }));
}

describe('torqueShare', () => {
  it('is the share of the line of mean + 3 SD of elite sprinters', () => {
    // 326 - 1.04·60 = 263.6 N·m at 60 rpm.
    const got = measuredOf(torqueShare, id, riding(263.6, 60, 4));
    expect(got.value).toBeCloseTo(100, 6);
    expect(got.stretches).toEqual([[300, 303]]);
  });
  it('allows heavier riders more', () => {
    const all = riding(263.6, 60, 4);
    expect(measuredOf(torqueShare, id, { ...all, rider: { massKg: 100 } }).value).toBeCloseTo(86, 6);
    expect(measuredOf(torqueShare, id, { ...all, rider: { massKg: 60 } }).value).toBeCloseTo(100, 6);
  });
  it('wants it held at a steady cadence that is not too low', () => {
    for (const all of [
      riding(400, 60, 2),
      riding(560, 6, 5),
      riding(400, 60, 3, (cadence) => {
        cadence[301] = 75;
      }),
    ])
      expect(measuredOf(torqueShare, id, all).value).toBeLessThan(40);
  });
  it('has nothing to say without cadence, or with a dead one', () => {
    expect(outcomeOf(torqueShare, id, alone(seriesOf({ power: [200] })))).toMatchObject({
      reason: 'no-channel',
    });
    const dead = seriesOf({ power: Array(600).fill(200), cadence: Array(600).fill(0) });
    expect(outcomeOf(torqueShare, id, alone(dead))).toMatchObject({ reason: 'no-power-flow' });
  });
});
