import path from 'node:path';
import { decisionsFile, decisionsFrom, viewOf } from '../event/decisions.ts';
import {
  marksFile,
  marksOfEvent,
  parseEarlier,
  parseRecord,
  printMarks,
  printRecord,
  recordFile,
} from '../event/record.ts';
import { changesSince } from '../event/since.ts';
import type { Earlier } from '../event.ts';
import { holdsSafely, limits, readFileSafely, writeWhole } from '../files/index.ts';
import { parseJson } from '../json.ts';
import { Problem } from '../problem.ts';
import { renderOverview, renderSummaryCsv, renderSummaryMarkdown } from '../report/event/index.ts';
import { MiB } from '../sizes.ts';
import type { Decision, EventRecord } from '../types.ts';
import type { Io } from './io.ts';

/** Bytes of the record of an event of ten thousand. */
const recordBytes = 512 * MiB;

/** The record in a folder that `event` or `merge` wrote. */
export async function recordIn(io: Io, folder: string): Promise<EventRecord> {
  const shown = path.join(folder, recordFile);
  const { bytes } = await readFileSafely(path.resolve(io.cwd, shown), { most: recordBytes, shown });
  return parseRecord(new TextDecoder().decode(bytes), shown);
}

/** Earlier events, each by its record or its fingerprints. */
export async function earlierGiven(io: Io, named: readonly string[]): Promise<readonly Earlier[]> {
  const earlier: Earlier[] = [];
  for (const file of named) {
    const { bytes } = await readFileSafely(path.resolve(io.cwd, file), { most: recordBytes, shown: file });
    earlier.push(await parseEarlier(new TextDecoder().decode(bytes), file));
  }
  return earlier;
}

/** Decisions beside the event file; none when there is no such file. */
export async function decisionsIn(root: string): Promise<readonly Decision[]> {
  let bytes: Uint8Array;
  try {
    ({ bytes } = await readFileSafely(path.join(root, decisionsFile), {
      most: 64 * limits.factsBytes,
      root,
      shown: decisionsFile,
    }));
  } catch (error) {
    if (error instanceof Problem && error.code === 'file-missing') return [];
    throw error;
  }
  return decisionsFrom(
    parseJson(new TextDecoder().decode(bytes), 'facts-wrong', decisionsFile),
    decisionsFile,
  );
}

/** Writes the record of a part: what it shows is shown by the whole. */
export async function writePart(folder: string, record: EventRecord): Promise<void> {
  await writeAnew(path.join(folder, recordFile), printRecord(record));
}

/** What an overview shows beside the record. */
export interface Seen {
  readonly decisions: readonly Decision[];
  /** The earlier run that it is compared with. */
  readonly before: EventRecord | null;
  readonly today: string;
}

/** Writes the record and everything that is made from it. */
export async function writeEvent(folder: string, record: EventRecord, seen: Seen): Promise<void> {
  await writeViews(folder, record, seen);
  // Of some submissions they would be taken for those of all.
  if (record.selected === null) {
    await writeAnew(path.join(folder, marksFile), printMarks(marksOfEvent(record)));
  }
  // Last: whoever finds the record finds the rest as well.
  await writeAnew(path.join(folder, recordFile), printRecord(record));
}

/** What stands there already is left alone: a folder that is copied elsewhere has nothing new to copy then. */
async function writeAnew(file: string, text: string): Promise<void> {
  const bytes = new TextEncoder().encode(text);
  const same = await holdsSafely(file, bytes, { most: recordBytes }).catch(() => false);
  if (!same) await writeWhole(file, bytes);
}

/** Writes anew what shows decisions, and nothing else. */
export async function writeViews(folder: string, record: EventRecord, seen: Seen): Promise<void> {
  for (const [name, text] of Object.entries(await viewFiles(record, seen))) {
    await writeAnew(path.join(folder, name), text);
  }
}

async function viewFiles(
  record: EventRecord,
  { decisions, before, today }: Seen,
): Promise<Record<string, string>> {
  const view = viewOf(record, decisions, before === null ? null : changesSince(before, record), today);
  return {
    'overview.html': await renderOverview(view),
    'summary.csv': renderSummaryCsv(view),
    'summary.md': renderSummaryMarkdown(view),
  };
}
