import { day } from './units.ts';

/** Bytes in a kibibyte and a mebibyte (IEC 80000-13), which sentences call kB and MB. */
export const KiB = 1024;
export const MiB = 1024 * KiB;

/** Largest files that are taken in, bytes: what opens a file and what reads it in a page agree on them. */
export const sizes = {
  /** One recording, packed or not: a whole day at one record a second is about 5 MB as FIT, 40 MB as TCX. */
  recording: 64 * MiB,
  /** A ZIP that holds a rider's past rides: a few thousand of them. */
  archive: 512 * MiB,
  /** A compiled profile: ten thousand past rides. */
  profile: 32 * MiB,
} as const;

/** No ride lasts longer than this, seconds: a clock that jumps to 2085 must not allocate a century. */
export const longestRide = 2 * day;
