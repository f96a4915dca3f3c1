import type { Device, LeftOutFile, PastRide, Profile } from '../types.ts';
import { inOrder } from './duplicates.ts';

/**
 * A profile as text for a file that lives in a repository: rides by date, one a line with its fields in
 * one order, so that a new ride is one added line. The same profile always gives the same bytes.
 */
export function printProfile(profile: Profile): string {
  const rides = [...profile.rides].sort(inOrder).map((ride) => JSON.stringify(rideFields(ride)));
  const leftOut = [...profile.leftOut].sort(byName).map((file) => JSON.stringify(leftOutFields(file)));
  return [
    '{',
    `  "profileVersion": ${profile.profileVersion},`,
    `  "durations": ${JSON.stringify(profile.durations)},`,
    `  "rides": ${block(rides)},`,
    `  "leftOut": ${block(leftOut)}`,
    '}',
    '',
  ].join('\n');
}

const block = (lines: readonly string[]) =>
  lines.length === 0 ? '[]' : `[\n${lines.map((line) => `    ${line}`).join(',\n')}\n  ]`;

/** One order of fields, whatever order the object was made in. */
function rideFields(ride: PastRide) {
  const { sha256, from, to, device, meter, place, indoors, bests, heartRates, controlled, climbed } = ride;
  return {
    from,
    to,
    sha256,
    device: deviceFields(device),
    meter: meter && deviceFields(meter),
    place,
    indoors,
    controlled,
    climbed: climbed && { kg: climbed.kg, stretches: climbed.stretches, scatter: climbed.scatter },
    bests,
    heartRates,
  };
}

const deviceFields = ({ maker, product, serial }: Device) => ({ maker, product, serial });

const leftOutFields = ({ name, why, flaw, sha256 }: LeftOutFile) => ({ name, why, flaw, sha256 });

export function byName(a: LeftOutFile, b: LeftOutFile): number {
  return compare(a.name, b.name) || compare(a.sha256 ?? '', b.sha256 ?? '') || compare(a.why, b.why);
}
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
