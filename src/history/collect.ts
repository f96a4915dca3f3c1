import type { LeftOutFile, PastRide, Profile } from '../types.ts';
import { withoutDuplicates } from './duplicates.ts';
import { byName } from './print.ts';
import { settings } from './settings.ts';

/** What became of one file: a ride of the history, or left out. */
export interface Taken {
  readonly name: string;
  readonly sha256: string;
  readonly outcome: { readonly ride: PastRide } | { readonly leftOut: Omit<LeftOutFile, 'name' | 'sha256'> };
}

export const emptyProfile: Profile = {
  profileVersion: 1,
  durations: settings.durations,
  rides: [],
  leftOut: [],
};

/**
 * What a previous profile knows of files by their digest, so that they need not be read again. A file that
 * could not be read is tried again: the program may have learned its format.
 */
export function knownBefore(previous: Profile): ReadonlyMap<string, Taken['outcome']> {
  const known = new Map<string, Taken['outcome']>();
  if (!sameDurations(previous.durations)) return known;
  for (const { sha256, why, flaw } of previous.leftOut) {
    if (sha256 === undefined || why === 'unreadable') continue;
    known.set(sha256, { leftOut: flaw === undefined ? { why } : { why, flaw } });
  }
  for (const ride of previous.rides) known.set(ride.sha256, { ride });
  return known;
}

/**
 * One profile out of what was known and the files of this run: each ride once, by date. Rides of the
 * previous profile whose files are not handed in again stay: a history can be kept up ride by ride.
 */
export function collect(previous: Profile, taken: readonly Taken[]): Profile {
  const rides = new Map(previous.rides.map((ride) => [ride.sha256, onto(ride, previous.durations)]));
  const leftOut = new Map(previous.leftOut.map((file) => [key(file), file]));
  const names = new Map<string, string>();
  for (const { name, sha256, outcome } of taken) {
    if ('ride' in outcome) {
      names.set(sha256, name);
      rides.set(sha256, outcome.ride);
      leftOut.delete(sha256);
    } else {
      const file = { name, sha256, ...outcome.leftOut };
      leftOut.set(key(file), file);
    }
  }
  const { kept, dropped } = withoutDuplicates([...rides.values()]);
  for (const { sha256 } of dropped) {
    const file = { name: names.get(sha256) ?? sha256.slice(0, 8), sha256, why: 'duplicate' } as const;
    leftOut.set(key(file), file);
  }
  return { ...emptyProfile, rides: kept, leftOut: [...leftOut.values()].sort(byName) };
}

/** Two files of one content are both worth naming; any other file stands under its digest once. */
const key = ({ name, sha256, why }: LeftOutFile) =>
  why === 'duplicate' || sha256 === undefined ? `${name} ${sha256 ?? ''}` : sha256;

const sameDurations = (durations: readonly number[]) =>
  durations.length === settings.durations.length && durations.every((d, k) => d === settings.durations[k]);

/** A ride's bests at today's durations; null at those that its profile did not keep. */
function onto(ride: PastRide, durations: readonly number[]): PastRide {
  if (sameDurations(durations)) return ride;
  const at = settings.durations.map((duration) => durations.indexOf(duration));
  const picked = (readings: readonly (number | null)[]) => at.map((k) => readings[k] ?? null);
  const { heartRates } = ride;
  return {
    ...ride,
    bests: picked(ride.bests),
    ...(heartRates === undefined ? {} : { heartRates: picked(heartRates) }),
  };
}
