import { MiB, sizes } from '../sizes.ts';

/**
 * How much of a stranger's file reading agrees to take in. Each limit lies well above the largest honest
 * file and well below what would exhaust a small machine.
 */
export const limits = {
  fileBytes: sizes.recording,
  archiveBytes: sizes.archive,
  /** Bytes that all members of such a ZIP may unpack to, one after another. */
  archiveUnpackedBytes: 4096 * MiB,
  /** Members of a ZIP, recordings or not. */
  archiveMembers: 20_000,
  /** Wrappers around a recording: a ZIP of gzipped files is the deepest that exports make. */
  wrappers: 2,

  /** Recordings chained in one FIT file: one per stop and restart of a recorder. */
  fitParts: 64,
  /** FIT messages: a day has 86,400 records; heart beats and laps at most treble that. Each but a record may cost an object. */
  fitMessages: 300_000,
  /** Fields in all FIT messages together: a day of records with 40 fields each is 3.5 million. */
  fitFields: 4_000_000,
  /** Developer fields in a FIT file that may be meters of their own: each costs a column. */
  fitMeters: 32,

  /** Nesting of XML elements: a trackpoint's extensions lie nine deep. */
  xmlDepth: 64,
  /** Characters kept of one element's text: enough for any time or number. */
  xmlText: 256,

  /** Trackpoints of a TCX or GPX file: a day at five a second. */
  trackpoints: 500_000,

  /** Lines of a table: a day at ten rows a second. */
  csvLines: 1_000_000,
  /** Columns of a table. */
  csvColumns: 256,
  /** Values read from a table, missing ones among them: such a day with every channel has 8.6 million. */
  csvValues: 12_000_000,
  /** Lines that may stand above the headings. */
  csvPreamble: 50,

  /** Characters kept of a name that a file gives to a device or a field. */
  nameLength: 80,
  /** Columns named in the sentence that says which were found. */
  columnsNamed: 30,
} as const;
