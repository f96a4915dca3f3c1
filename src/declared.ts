import type { DeviceFacts, RiderFacts, Subjects } from './types.ts';

/**
 * The declaration that goes with a meter: one that bears the name of its file (or field), or its role.
 * Roles are "primary", "second", "second 2" …: recordings in the order in which they were handed in,
 * then further meters of the primary's own file, then those of the others.
 */
export function declaredFor(
  devices: readonly DeviceFacts[] | undefined,
  ownName: string,
  role: string,
): DeviceFacts | null {
  return devices?.find(({ name }) => name === ownName) ?? devices?.find(({ name }) => name === role) ?? null;
}

/**
 * What is claimed for a meter as a standard deviation, %: a tolerance of ±a is a rectangle, a/√3 (JCGM 100:2008).
 *
 * @param otherwise where nothing is claimed, %
 */
export function claimedSpread(device: DeviceFacts | null, otherwise: number): number {
  return device === null ? otherwise : device.tolerancePercent / Math.sqrt(3);
}

/** The role of the pair at a position of `all.seconds`. */
export function secondRole(position: number): string {
  return position === 0 ? 'second' : `second ${position + 1}`;
}

/** The declarations of the two meters of a pair. */
export function declaredPair(
  { rider, primary, seconds }: Subjects,
  subject: string,
): { own: DeviceFacts | null; other: DeviceFacts | null } {
  const position = seconds.findIndex((second) => second.subject === subject);
  return {
    own: declaredFor(rider.devices, primary.recording.name, 'primary'),
    other: declaredFor(rider.devices, seconds[position]!.name, secondRole(position)),
  };
}

/**
 * The rider's facts without declarations by position: where a recording could not be read, nobody knows
 * any more which of the others was meant, and a claim must not tighten the limits of the wrong meter.
 */
export function withoutPlaces(rider: RiderFacts): RiderFacts {
  const devices = rider.devices?.filter(({ name }) => !/^second( \d+)?$/.test(name));
  return devices === undefined ? rider : { ...rider, devices };
}
