import type { Device, PastRide, Series } from '../../types.ts';

/**
 * Whether the meter of a past ride is the race's own. Certain only where both files list the number of their power
 * sensor: many apps list none, and a recorder says nothing of what it listened to. Where neither file lists a
 * sensor, the same recorder most likely heard the same meter; where they list its model alone, it most likely is.
 */
export type Kinship = 'own' | 'likely own' | 'unknown' | 'other';

export function kinshipOf(ride: PastRide, { recording }: Series): Kinship {
  const [past, race] = [nameOf(ride.meter), nameOf(recording.meter)];
  if (past === null && race === null)
    return sameDevice(ride.device, recording.device) ? 'likely own' : 'unknown';
  if (past === null || race === null) return 'unknown';
  if (past === race && ride.meter?.serial != null) return 'own';
  // Of one model, and the number is missing from one file or both.
  return sameDevice(ride.meter!, recording.meter!) ? 'likely own' : 'other';
}

/** One name for what measured a ride: its meter where the file lists it, else what recorded it. */
export function sourceOf({ meter, device }: PastRide): string {
  return nameOf(meter) ?? `recorder ${JSON.stringify([device.maker, device.product, device.serial])}`;
}

/** A meter's number, or its maker and model; null where the file lists no meter. */
function nameOf(meter: Device | undefined): string | null {
  if (meter === undefined) return null;
  const { maker, product, serial } = meter;
  return serial ?? (maker === null && product === null ? null : JSON.stringify([maker, product]));
}

/** Of one model, and of one number where both state it. */
function sameDevice(a: Device, b: Device): boolean {
  if (a.maker === null && a.product === null) return false;
  const numbers = a.serial === null || b.serial === null || a.serial === b.serial;
  return a.maker === b.maker && a.product === b.product && numbers;
}
