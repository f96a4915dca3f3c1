import type { Reading, Stretch, Subject } from '../../types.ts';
import type { Markup } from '../markup.ts';

/** What a chart needs to know of the report that it stands in. */
export interface Setting {
  /** Unique in the page; titles and clips are named after it. */
  readonly id: string;
  /** The seconds that findings argue from: marked on every time axis. */
  readonly marked: readonly Stretch[];
  readonly meter: (subject: Subject) => string;
  /** What its reader chose to see; without it the whole ride as recorded. */
  readonly view?: View;
}

/** A part of the ride, and over how many seconds readings are averaged; null: as recorded. */
export interface View {
  readonly within: Stretch;
  readonly averaging: number | null;
}

/** The numbers that a chart argues from, for reading and listening. */
export interface NumberTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The evidence in one row of characters. */
export interface Strip {
  readonly label: string;
  readonly values: readonly Reading[];
  readonly say: (value: number) => string;
}

/** A chart ready to be shown: in words, in numbers, and drawn at any width. */
export interface Picture {
  readonly title: string;
  readonly description: string;
  readonly table: NumberTable;
  readonly strip: Strip | null;
  /** An `<svg>` element `width` CSS pixels wide. */
  readonly draw: (width: number) => Markup;
}
