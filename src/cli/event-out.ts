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
  withoutMarks,
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
import { keepApart, type Output } from './outputs.ts';

/** Bytes of the record of an event of ten thousand. */
const recordBytes = 512 * MiB;

/** The record in a folder that `event` or `merge` wrote. */
export async function recordIn(io: Io, folder: string): Promise<EventRecord> {
  const shown = path.join(folder, recordFile);
  const { bytes } = await readFileSafely(path.resolve(io.cwd, shown), { most: recordBytes, shown });
  return parseRecord(new TextDecoder().decode(bytes), shown);
}

/**
 * Earlier events, each by its record, with the fingerprints beside it, or by these alone.
 *
 * @param outputs what will be written: none of it over those fingerprints, which nobody named
 */
export async function earlierGiven(
  io: Io,
  named: readonly string[],
  outputs: readonly Output[],
): Promise<readonly Earlier[]> {
  const earlier: Earlier[] = [];
  const read = async (file: string, root?: string) => {
    const place = path.resolve(io.cwd, file);
    const inside = root === undefined ? {} : { root: path.resolve(io.cwd, root) };
    const { bytes } = await readFileSafely(place, { most: recordBytes, shown: file, ...inside });
    return { text: new TextDecoder().decode(bytes), where: file };
  };
  for (const file of named) {
    // Nobody named it: it may be no link that leads elsewhere.
    const folder = path.dirname(file);
    const beside = async () => {
      await keepApart(io, [path.join(folder, marksFile)], outputs);
      return read(path.join(folder, marksFile), folder);
    };
    earlier.push(await parseEarlier(await read(file), beside));
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
  // Those of some submissions would be taken for those of all.
  const apart = record.selected === null;
  if (apart) await writeAnew(path.join(folder, marksFile), printMarks(marksOfEvent(record)));
  // Last: whoever finds the record finds the rest as well.
  await writeAnew(path.join(folder, recordFile), printRecord(apart ? withoutMarks(record) : record));
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
