import type { History, PastRide, Profile } from '../types.ts';

/**
 * The part of a profile that may speak about a race: rides that ended before it began. A ride that
 * overlaps the race may be the race itself, one that follows it may have been ridden to explain it:
 * both are left out and counted.
 *
 * @param raceFrom clock time of the race's first second
 * @param raceTo clock time at which it ends
 */
export function historyFor(profile: Profile, raceFrom: number, raceTo: number): History {
  const before = (ride: PastRide) => ride.to < raceFrom;
  const rides = profile.rides.filter(before);
  const overlapping = profile.rides.filter((ride) => !before(ride) && ride.from < raceTo).length;
  return { profile, rides, notBefore: profile.rides.length - rides.length, overlapping };
}
