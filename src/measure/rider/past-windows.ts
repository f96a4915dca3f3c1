import type { PastWindow } from '../../math/ability.ts';
import type { PastRide, Series } from '../../types.ts';
import { day } from '../../units.ts';
import { type Kinship, kinshipOf, sourceOf } from './meters.ts';

/** A ride's hardest window: ln(watts) at the duration asked about. */
export interface RideWindow extends PastWindow {
  /** How far its own duration is from the one asked about: |ln ratio|. */
  readonly distance: number;
}

/** Whether a past ride was ridden where the race was: indoors and outdoors are apart. */
export type Setting = 'same' | 'unknown' | 'other';

/** The hardest windows that one meter measured in one setting. */
export interface WindowGroup {
  /** Whether that is the meter of the race. */
  readonly meter: Kinship;
  readonly setting: Setting;
  readonly windows: readonly RideWindow[];
}

/** A duration whose windows are looked at, brought to the duration asked about. */
export interface Kin {
  /** Place of the duration in each ride's bests. */
  readonly at: number;
  /** Added to ln(watts): what all-out power typically gains or loses between the two durations. */
  readonly shift: number;
  /** How far the two are apart: |ln ratio|. */
  readonly distance: number;
  /** Mean heart rate (bpm) below which a window was not all-out; 0: not judged. */
  readonly heartRateFloor: number;
  /** Watts below which a window was not all-out; 0: not judged. */
  readonly wattsFloor: number;
}

/** Sorts past rides by meter and setting, each ride with its hardest window. */
export function windowGroups(
  rides: readonly PastRide[],
  race: Series,
  kin: readonly Kin[],
  controlledShare: number,
): WindowGroup[] {
  const groups = new Map<string, WindowGroup & { readonly windows: RideWindow[] }>();
  for (const ride of rides) {
    const window = hardest(ride, race.start, kin, controlledShare);
    if (window === null) continue;
    const setting = settingOf(ride, race);
    const key = `${setting} ${sourceOf(ride)}`;
    const group = groups.get(key) ?? { meter: kinshipOf(ride, race), setting, windows: [] };
    group.windows.push(window);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** The window of a ride that shows most of its rider: all-out before held back, then the highest. */
function hardest(
  ride: PastRide,
  raceFrom: number,
  kin: readonly Kin[],
  controlledShare: number,
): RideWindow | null {
  const age = Math.max(0, (raceFrom - ride.to) / day);
  const controlled = (ride.controlled ?? 0) >= controlledShare;
  let best: RideWindow | null = null;
  for (const { at, shift, distance, heartRateFloor, wattsFloor } of kin) {
    const watts = ride.bests[at] ?? null;
    if (watts === null || watts <= 0) continue;
    const bpm = ride.heartRates?.[at] ?? null;
    const heldBack = controlled || watts < wattsFloor || (bpm !== null && bpm < heartRateFloor);
    const value = Math.log(watts) + shift;
    const better =
      best === null || (heldBack === best.heldBack ? value > best.value : best.heldBack && !heldBack);
    if (better) best = { value, age, heldBack, distance };
  }
  return best;
}

function settingOf({ indoors }: PastRide, race: Series): Setting {
  if (indoors === null || race.recording.indoors === null) return 'unknown';
  return indoors === race.recording.indoors ? 'same' : 'other';
}

/** The highest reading that a history holds at one duration; 0 where it holds none. */
export function highest(
  rides: readonly PastRide[],
  at: number,
  readings: (ride: PastRide) => readonly (number | null)[] | undefined,
): number {
  return rides.reduce((top, ride) => Math.max(top, readings(ride)?.[at] ?? 0), 0);
}
