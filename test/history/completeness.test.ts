import { describe, expect, it } from 'vitest';
import { completenessOf } from '../../src/history/completeness.ts';
import { settings } from '../../src/history/settings.ts';
import { completenessSaid } from '../../src/report/words/completeness.ts';
import type { PastRide, Profile } from '../../src/types.ts';

const day = 86_400;
const device = { maker: 'maker', product: 'head unit', serial: null };

/** A ride of an hour that began on this day, all of its bests this share of a rider's. */
function ride(on: number, share: number, more: Partial<PastRide> = {}): PastRide {
  return {
    sha256: `${on}`.padStart(64, '0'),
    from: on * day,
    to: on * day + 3600,
    device,
    indoors: true,
    bests: settings.durations.map((seconds) =>
      seconds > 3600 ? null : share * (300 + 20_000 / (seconds + 20)),
    ),
    ...more,
  };
}

const profileOf = (rides: readonly PastRide[]): Profile => ({
  profileVersion: 1,
  durations: settings.durations,
  rides,
  leftOut: [],
});

describe('completenessOf', () => {
  it('counts days, the longest pause, and what tells more of a ride', () => {
    const heartRates = settings.durations.map(() => 150);
    const unknown = settings.durations.map(() => null);
    const completeness = completenessOf(
      profileOf([
        ride(0, 1, { heartRates }),
        ride(30, 1, { heartRates: unknown }),
        ride(40, 1, { meter: device }),
      ]),
    );
    expect(completeness).toMatchObject({ rides: 3, days: 41, longestPause: 29, heartRate: 1, meters: 1 });
  });
  it('takes a best for confirmed when a second ride comes within 6 % of it', () => {
    const near = completenessOf(profileOf([ride(0, 1), ride(7, 0.945)]))!;
    expect(near.confirmed).toEqual(settings.effortDurations);
    expect(near.alone).toEqual([]);
    const far = completenessOf(profileOf([ride(0, 1), ride(7, 0.935)]))!;
    expect(far.confirmed).toEqual([]);
    expect(far.alone).toEqual(settings.effortDurations);
  });
  it('says nothing of what no ride is long enough for, and nothing of one ride', () => {
    const short = ride(0, 1).bests.map((watts, k) => (settings.durations[k]! > 1200 ? null : watts));
    const { confirmed, alone } = completenessOf(
      profileOf([ride(0, 1, { bests: short }), ride(1, 1, { bests: short })]),
    )!;
    expect([...confirmed, ...alone]).not.toContain(3600);
    expect(completenessOf(profileOf([ride(0, 1)]))).toBeNull();
  });
});

describe('completenessSaid', () => {
  const completeness = { rides: 12, days: 41, longestPause: 1, heartRate: 12, meters: 0 };
  const said = (confirmed: number[], alone: number[]) =>
    completenessSaid({ ...completeness, confirmed, alone }).replaceAll('\u00a0', ' ');
  it('names the durations at which the bests can be trusted, and those at which they cannot', () => {
    expect(said([5, 300, 1200], [3600])).toBe(
      'They lie within 41 days, the longest time without one being 1 day. With heart rate: 12 of 12; with a power sensor named in the file: 0 of 12. A second ride comes near the best over 5 s, 5 min and 20 min. Over 1 h the best stands alone: the rider may be able to do more.',
    );
  });
  it('says where none can', () => {
    expect(said([], [5, 300])).toMatch(/says little of what its rider can do\.$/);
  });
});
