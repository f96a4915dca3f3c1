import { describe, expect, it } from 'vitest';
import { settings } from '../../src/history/settings.ts';
import { reserveShare } from '../../src/measure/reserve-share.ts';
import type { Measured, PastRide, Subjects } from '../../src/types.ts';
import { ruleOf } from './measure-of.ts';
import { device, historyOf } from './rider/make.ts';
import { alone, seriesOf, start } from './series.ts';

const { options } = ruleOf('reserve-overdrawn');
const outcome = (all: Subjects) => reserveShare.compute(all, null, options as never);
const measuredOf = (all: Subjects) => outcome(all) as Measured;

/** All-out efforts of a rider with CP 300 W and W′ 20 kJ: P = CP + W′/t. */
const pastRide: PastRide = {
  sha256: '1'.padStart(64, '0'),
  from: start - 86_400,
  to: start - 80_000,
  device,
  indoors: true,
  bests: settings.durations.map((t) => (t > 3600 ? null : 300 + 20_000 / t)),
  heartRates: settings.durations.map((t) => (t > 3600 ? null : 180)),
};

/** Ten minutes at these watts, easy riding around them. */
function race(watts: number, rides: readonly PastRide[] | null = [pastRide], heartRate = 178): Subjects {
  const power = Array.from({ length: 1800 }, (_, i) => (i >= 600 && i < 1200 ? watts : 150));
  const all = alone(seriesOf({ power, heartRate: power.map(() => heartRate) }));
  return { ...all, history: rides === null ? null : historyOf(rides) };
}

describe('reserveShare', () => {
  it('grants the upper ends of critical power and reserve at once', () => {
    const got = measuredOf(race(500));
    // CP 300·1.13 = 339 W, W′ 20·1.56 = 31.2 kJ: 600 s at 161 W above are 96.6 kJ.
    expect(got.details.critical).toEqual({ value: expect.closeTo(339, 1), unit: 'W' });
    expect(got.details.granted).toEqual({ value: expect.closeTo(31.2, 1), unit: 'kJ' });
    expect(got.value).toBeCloseTo((100 * 96.6) / 31.2, 0);
  });
  it('lets an honest all-out race pass, and a stronger one than that', () => {
    expect(measuredOf(race(300 + 20_000 / 600)).value).toBe(0);
    expect(measuredOf(race((300 + 20_000 / 600) * 1.1)).value).toBeLessThan(100);
  });
  it('has nothing to say where the heart was never as hard at work as in the race', () => {
    expect(outcome(race(400, [pastRide], 188))).toMatchObject({ reason: 'history-too-thin' });
    const unseen = { ...pastRide, heartRates: settings.durations.map(() => null) };
    expect(outcome(race(400, [unseen]))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(400, null))).toMatchObject({ reason: 'no-history' });
    expect(outcome({ ...alone(seriesOf({ power: [200] })), history: historyOf([]) })).toMatchObject({
      reason: 'no-channel',
    });
  });
});
