import { KiB, MiB, sizes } from '../sizes.ts';

/** How much is read from disk, and how far a folder is searched. */
export const limits = {
  recordingBytes: sizes.recording,
  archiveBytes: sizes.archive,
  profileBytes: sizes.profile,
  /** Bytes of a rule, rider, race or grades file. */
  factsBytes: 256 * KiB,
  /** Bytes of a report in any form. */
  reportBytes: 256 * MiB,
  /** Folders below the one named. */
  depth: 8,
  /** Entries seen in all folders together. */
  entries: 50_000,
} as const;
