/**
 * What a file's own words say of sport and place. Recorders use the words of their format ("Biking",
 * "indoor_cycling", "virtual_activity") and their own ("Indoor Ride").
 */
const sports: readonly (readonly [string, RegExp])[] = [
  // Before cycling: e_biking, and cycling whose sub-sport is e_bike_fitness or e_bike_mountain (FIT Profile).
  ['e-biking', /\be[_ -]?(?:bik|mtb|mountain)|electric|pedelec/],
  ['motorcycling', /motor/],
  ['cycling', /cycl|bik|\bride|virtual_?ride|spin/],
  ['running', /run|treadmill/],
  ['walking', /walk|hik/],
  ['swimming', /swim/],
  ['rowing', /row/],
];
const inside = /indoor|virtual|treadmill|spin|trainer|elliptical|stair|lap_swim/;
const outside = /outdoor|road|street|trail|mountain|gravel|downhill|cyclocross|open_water|commut/;

/** "cycling", "running" …; the word itself (lower case) when it is another; null when nothing is said. */
export function sportOf(words: string | null): string | null {
  const said = words?.trim().toLowerCase() ?? '';
  if (said === '' || said === 'other' || said === 'generic') return null;
  return sports.find(([, pattern]) => pattern.test(said))?.[0] ?? said;
}

/**
 * Indoors as stated; else outdoors when there are positions; else unknown. A statement outweighs positions,
 * for virtual rides carry positions of places that the rider never left home for.
 */
export function indoorsOf(words: string | null, hasPositions: boolean): boolean | null {
  const said = words?.toLowerCase() ?? '';
  if (inside.test(said)) return true;
  return outside.test(said) || hasPositions ? false : null;
}
