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

/** The same done again: what no other ride comes near may have been far from all-out. */
const twice = (ride: PastRide): PastRide[] => [ride, { ...ride, sha256: '2'.padStart(64, '0') }];

/** Ten minutes at these watts, easy riding around them. */
function race(watts: number, rides: readonly PastRide[] | null = twice(pastRide), heartRate = 178): Subjects {
  const power = Array.from({ length: 1800 }, (_, i) => (i >= 600 && i < 1200 ? watts : 150));
  const all = alone(seriesOf({ power, heartRate: power.map(() => heartRate) }));
  return { ...all, history: rides === null ? null : historyOf(rides) };
}

describe('reserveShare', () => {
  it('grants the upper end of power between the efforts, and the pair of critical power and reserve that lets most pass', () => {
    const got = measuredOf(race(500));
    // Between 180 and 1800 s lie 569 s: 300 + 20 000/569 = 335.1 W, 13 % more are 378.7 W. Of W′ from 8.8 to
    // 31.2 kJ around it the highest grants most: CP 378.7 - 31 200/569 = 323.9 W, 600 s at 176.1 W are 105.7 kJ.
    expect(got.details.critical).toEqual({ value: expect.closeTo(323.9, 1), unit: 'W' });
    expect(got.details.granted).toEqual({ value: expect.closeTo(31.2, 1), unit: 'kJ' });
    expect(got.value).toBeCloseTo((100 * 105.7) / 31.2, 0);
  });
  it('grants a long, even ride a higher critical power for a smaller reserve', () => {
    const all = race(385);
    const { power } = all.primary.channels;
    power!.fill(374, 0);
    const got = measuredOf(all);
    expect(got.details.critical).toMatchObject({ value: expect.closeTo(363.2, 0) });
    expect(got.details.granted).toMatchObject({ value: expect.closeTo(8.8, 1) });
  });
  it('lets an honest all-out race pass, and a stronger one than that', () => {
    expect(measuredOf(race(300 + 20_000 / 600)).value).toBe(0);
    expect(measuredOf(race((300 + 20_000 / 600) * 1.1)).value).toBeLessThan(100);
  });
  it('does not take an effort that stands alone for all the rider has', () => {
    const weaker = { ...pastRide, bests: pastRide.bests.map((watts) => watts && watts * 0.9) };
    expect(outcome(race(500, [pastRide]))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(500, [pastRide, weaker]))).toMatchObject({ reason: 'history-too-thin' });
  });
  it('has nothing to say where the heart was never as hard at work as in the race', () => {
    expect(outcome(race(400, twice(pastRide), 188))).toMatchObject({ reason: 'history-too-thin' });
    const unseen = { ...pastRide, heartRates: settings.durations.map(() => null) };
    expect(outcome(race(400, twice(unseen)))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(400, null))).toMatchObject({ reason: 'no-history' });
    expect(outcome({ ...alone(seriesOf({ power: [200] })), history: historyOf([]) })).toMatchObject({
      reason: 'no-channel',
    });
  });
});
