const KiB = 1024;
const MiB = 1024 * KiB;

/** How much is read from disk, and how far a folder is searched. */
export const limits = {
  /** Bytes of one recording, packed or not. */
  recordingBytes: 64 * MiB,
  /** Bytes of a ZIP that holds a rider's past rides. */
  archiveBytes: 512 * MiB,
  /** Bytes of a rule, rider, race or grades file. */
  factsBytes: 256 * KiB,
  /** Bytes of a compiled profile: ten thousand past rides. */
  profileBytes: 64 * MiB,
  /** Bytes of a report in any form. */
  reportBytes: 256 * MiB,
  /** Folders below the one named. */
  depth: 8,
  /** Entries seen in all folders together. */
  entries: 50_000,
} as const;
