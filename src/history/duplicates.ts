import { longestRide } from '../sizes.ts';
import type { PastRide } from '../types.ts';
import { settings } from './settings.ts';

/**
 * Rides that were recorded or exported twice: they overlap in time and their bests agree. Which of the two
 * stays does not depend on the order of the files: the one that names its device, then the smaller digest.
 * Two meters on one ride disagree by more and both stay.
 */
export function withoutDuplicates(rides: readonly PastRide[]): { kept: PastRide[]; dropped: PastRide[] } {
  const kept: PastRide[] = [];
  const dropped: PastRide[] = [];
  const byTime = [...rides].sort(inOrder);
  // Only the few that began shortly before can overlap.
  for (const ride of byTime) {
    let earlier = kept.length - 1;
    while (earlier >= 0 && kept[earlier]!.from >= ride.from - longestRide) {
      if (sameRide(kept[earlier]!, ride)) break;
      earlier--;
    }
    const twin = kept[earlier];
    if (twin === undefined || !sameRide(twin, ride)) {
      kept.push(ride);
    } else if (preferred(ride, twin)) {
      kept.splice(earlier, 1);
      dropped.push(twin);
      kept.push(ride);
    } else {
      dropped.push(ride);
    }
  }
  return { kept: kept.sort(inOrder), dropped };
}

/** By date, then by digest: the one order of rides in a profile. */
export function inOrder(a: PastRide, b: PastRide): number {
  return a.from - b.from || a.to - b.to || (a.sha256 < b.sha256 ? -1 : a.sha256 > b.sha256 ? 1 : 0);
}

function sameRide(a: PastRide, b: PastRide): boolean {
  const overlap = Math.min(a.to, b.to) - Math.max(a.from, b.from);
  const shorter = Math.min(a.to - a.from, b.to - b.from);
  if (overlap < settings.duplicateOverlap * shorter || overlap <= 0) return false;
  return a.bests.every((watts, k) => {
    const other = b.bests[k] ?? null;
    if (watts === null || other === null) return true;
    return Math.abs(watts - other) <= settings.duplicateAgreement * Math.max(watts, other) + 1;
  });
}

function preferred(a: PastRide, b: PastRide): boolean {
  const named = (ride: PastRide) => Number(ride.device.maker !== null) + Number(ride.device.serial !== null);
  return named(a) - named(b) > 0 || (named(a) === named(b) && a.sha256 < b.sha256);
}
