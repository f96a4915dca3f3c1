import { expect, it } from 'vitest';
import { torqueOffset } from '../../src/measure/torque-offset.ts';
import { covers, measuredOf, ridden } from './pair/make.ts';

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

it('tells watts at the cadence that was ridden: 1 N·m is 9.4 W at 90 rpm', () => {
  const { details, value } = measuredOf(
    torqueOffset,
    'zero-offset',
    ridden('watts', ride, [{ torqueOffset: 2 }]),
  );
  const rpm = (details.rpm as { value: number }).value;
  expect((details.watts as { value: number }).value).toBeCloseTo((value * rpm * 2 * Math.PI) / 60, 6);
});
