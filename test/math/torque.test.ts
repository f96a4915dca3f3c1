import { expect, it } from 'vitest';
import { crankPower, crankTorque } from '../../src/math/torque.ts';

it('turns power into crank torque and back', () => {
  // Computed from P = T·ω.
  expect(crankTorque(400, 90)).toBeCloseTo(42.44, 2);
  expect(crankTorque(1200, 110)).toBeCloseTo(104.17, 2);
  expect(crankTorque(600, 60)).toBeCloseTo(95.49, 2);
  expect(crankPower(crankTorque(817, 93), 93)).toBeCloseTo(817, 9);
});

it('gives the power of the published torque line of elite sprinters', () => {
  // Gardner et al. 2007 (laboratory): 266 - 1.040·rpm; power computed at 60, 90, 120, 150 rpm.
  const line = (rpm: number) => 266 - 1.04 * rpm;
  expect([60, 90, 120, 150].map((rpm) => Math.round(line(rpm) * 10) / 10)).toEqual([
    203.6, 172.4, 141.2, 110,
  ]);
  const watts = [1279.3, 1624.8, 1774.4, 1727.9];
  [60, 90, 120, 150].forEach((rpm, k) => {
    expect(crankPower(line(rpm), rpm)).toBeCloseTo(watts[k]!, 1);
  });
  // Highest power, at half the cadence where torque ends: 127.88 rpm, 1781.1 W (published 128 rpm, 1791 W).
  const best = 266 / (2 * 1.04);
  expect(best).toBeCloseTo(127.88, 2);
  expect(crankPower(line(best), best)).toBeCloseTo(1781.1, 1);
});
