import type { Completeness, PastRide, Profile } from '../types.ts';
import { day } from '../units.ts';
import { settings } from './settings.ts';

/** Null for a profile of fewer than two rides: nothing can confirm its bests. */
export function completenessOf({ rides, durations }: Profile): Completeness | null {
  if (rides.length < 2) return null;
  const byStart = [...rides].sort((a, b) => a.from - b.from);
  const pauses = byStart.slice(1).map((ride, k) => ride.from - byStart[k]!.to);
  const lastEnd = rides.reduce((last, { to }) => Math.max(last, to), -Infinity);
  const ridden = settings.effortDurations.filter(
    (duration) => bestsAt(rides, durations, duration).length > 0,
  );
  const confirmed = ridden.filter((duration) => {
    const bests = bestsAt(rides, durations, duration);
    const near = (1 - settings.effortNear) * bests.reduce((a, b) => Math.max(a, b));
    return bests.filter((watts) => watts >= near).length >= 2;
  });
  return {
    rides: rides.length,
    days: 1 + Math.floor((lastEnd - byStart[0]!.from) / day),
    longestPause: Math.floor(pauses.reduce((a, b) => Math.max(a, b), 0) / day),
    heartRate: rides.filter(({ heartRates }) => heartRates?.some((bpm) => bpm !== null)).length,
    meters: rides.filter(({ meter }) => meter !== undefined).length,
    confirmed,
    alone: ridden.filter((duration) => !confirmed.includes(duration)),
  };
}

function bestsAt(rides: readonly PastRide[], durations: readonly number[], duration: number): number[] {
  const at = durations.indexOf(duration);
  return rides.flatMap(({ bests }) => bests[at] ?? []);
}
