import { describe, expect, it } from 'vitest';
import { optimumCadence, powerAt, powerOf, torqueAt, torqueLine, torqueOf } from './torque.ts';

describe('torque and cadence', () => {
  // Gardner et al. 2007, seven elite men: 266 N·m and -1.040 N·m/rpm in the laboratory, 266 and -1.035 in the
  // field; the line then gives 127.88 and 128.50 rpm, 1781.1 and 1789.7 W (published 128, 129, 1791, 1792).
  it.each([
    [1.04, 127.88, 1781.1],
    [1.035, 128.5, 1789.7],
  ])('a line of 266 N·m falling %f a turn peaks where it should', (slope, cadence, power) => {
    const line = { standstill: 266, slope };
    expect(optimumCadence(line)).toBeCloseTo(cadence, 2);
    expect(powerAt(line, optimumCadence(line))).toBeCloseTo(power, 1);
  });

  it.each([
    [60, 203.6, 1279.3],
    [90, 172.4, 1624.8],
    [120, 141.2, 1774.4],
    [150, 110, 1727.9],
  ])('at %i rpm it holds %f N·m, %f W', (cadence, torque, power) => {
    const line = { standstill: 266, slope: 1.04 };
    expect(torqueAt(line, cadence)).toBeCloseTo(torque, 6);
    expect(powerAt(line, cadence)).toBeCloseTo(power, 1);
  });

  it('a line made of peak power and its cadence has them', () => {
    const line = torqueLine(1200, 120);
    expect(optimumCadence(line)).toBeCloseTo(120, 9);
    expect(powerAt(line, 120)).toBeCloseTo(1200, 9);
    expect(powerAt(line, 100)).toBeLessThan(1200);
  });

  // P = T·ω: 400 W at 90 rpm are 42.44 N·m; 1 N·m is 6.3 W at 60 rpm, 9.4 W at 90 rpm.
  it('turns watts into torque and back', () => {
    expect(torqueOf(400, 90)).toBeCloseTo(42.44, 2);
    expect(powerOf(1, 60)).toBeCloseTo(6.283, 3);
    expect(powerOf(1, 90)).toBeCloseTo(9.425, 3);
    expect(torqueOf(300, 0)).toBeNaN();
  });
});
