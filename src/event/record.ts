import { digestOf, parseJson } from '../json.ts';
import { Problem } from '../problem.ts';
import { fitting, type Schema } from '../schema.ts';
import type { Entry, EventMarks, EventPlan, EventRecord, EventRow } from '../types.ts';
import marksSchema from './marks.schema.json' with { type: 'json' };
import recordSchema from './record.schema.json' with { type: 'json' };

/** Names of what an event writes into its folder. */
export const recordFile = 'event.json';
export const marksFile = 'fingerprints.json';
export const reportFolder = (number: string) => `reports/rider-${number}`;

/** What a recording is to its rider, by its place among theirs. */
export const roleAt = (index: number) =>
  index === 0 ? 'primary' : index === 1 ? 'second' : `second ${index}`;
/** How fingerprints name a recording: the start of its checksum. */
export const codeOf = (digest: string) => digest.slice(0, 8);

/** What an entry says of its rider, apart from any recording. */
export function listed({ number, name, id, category, place }: Entry) {
  return { number, name, id, category, place };
}

/** The row of a submission that could not be audited, or that was never handed in. */
export function emptyRow(entry: Entry, why: string): EventRow {
  return {
    ...listed(entry),
    state: 'not audited',
    why,
    grade: 'incomplete',
    reach: { judged: 0, notApplicable: 0, failed: 0 },
    missing: entry.race.required ?? [],
    findings: [],
    numbers: [],
    recordings: [],
    report: null,
  };
}

/** Digest of all that the parts of one event must have in common. */
export function planDigest(
  plan: EventPlan,
  { tool, rules }: Pick<EventRecord, 'tool' | 'rules'>,
  redacted: boolean,
): Promise<string> {
  return digestOf({ plan, tool, rules, redacted });
}

/** The record as text: one row a line, so that a change of one submission changes one line. */
export function printRecord(record: EventRecord): string {
  return printed(record, 'rows');
}

/**
 * An object as text: a key a line, and an item a line of the one list that is long. Put together in one step: the
 * record of thousands has tens of megabytes, and every text on the way to it would be there at once.
 */
function printed(value: object, long: string): string {
  const lines = Object.entries(value).flatMap(([name, held]) => {
    const key = `  ${JSON.stringify(name)}: `;
    if (name !== long || held.length === 0) return key + JSON.stringify(held);
    const items = held.map((item: unknown) => `    ${JSON.stringify(item)}`);
    return enclosed(items, `${key}[\n`, '\n  ]');
  });
  return enclosed(lines, '{\n', '\n}\n').join(',\n');
}

/** Lines with something before the first and behind the last. */
function enclosed(lines: readonly string[], before: string, behind: string): readonly string[] {
  const last = lines.length - 1;
  return lines.map((line, at) => (at === 0 ? before : '') + line + (at === last ? behind : ''));
}

/** @throws Problem `report-wrong` */
export function parseRecord(text: string, where: string): Promise<EventRecord> {
  return parseWith<EventRecord>(recordSchema, text, where);
}

/**
 * The record without the marks that are written beside it: they would be three quarters of it, twice on the disk and
 * in a repository. Parts keep theirs, for the whole is put together from them.
 */
export function withoutMarks(record: EventRecord): EventRecord {
  const rows = record.rows.map((row) => ({
    ...row,
    recordings: row.recordings.map((one) => ({ ...one, marks: '' })),
  }));
  return { ...record, rows };
}

/** What tells this event's recordings from those of a later one, and nothing of what they hold. */
export function marksOfEvent({ event, rows }: EventRecord): EventMarks {
  const recordings = rows.flatMap((row) =>
    row.recordings
      .filter(({ marks }) => marks !== '')
      .map(({ sha256: digest, marks }) => ({ code: codeOf(digest), marks })),
  );
  // In order of the codes: the order of the start list would say whose they are.
  recordings.sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));
  return { marksVersion: 1, event: event.name, recordings };
}

export function printMarks(marks: EventMarks): string {
  return printed(marks, 'recordings');
}

/** A file of an earlier event: its record, or the marks kept of it. */
export interface EarlierText {
  readonly text: string;
  readonly where: string;
}

/**
 * An earlier event from its record, or from the marks kept of it.
 *
 * @param beside reads the marks that were written beside the record of a whole event
 * @throws Problem `report-wrong`
 */
export async function parseEarlier(
  { text, where }: EarlierText,
  beside: () => Promise<EarlierText>,
): Promise<{ readonly marks: EventMarks; readonly rows: readonly EventRow[] }> {
  const value = parseJson(text, 'report-wrong', where);
  if (typeof value === 'object' && value !== null && 'marksVersion' in value) {
    return { marks: await marksIn(value, where), rows: [] };
  }
  const record = await fitting<EventRecord>(recordSchema, value, 'report-wrong', where);
  const own = marksOfEvent(record);
  if (own.recordings.length > 0) return { marks: own, rows: record.rows };
  const kept = await beside();
  const marks = await marksIn(parseJson(kept.text, 'report-wrong', kept.where), kept.where);
  if (marks.event === record.event.name) return { marks, rows: record.rows };
  throw new Problem({
    code: 'report-wrong',
    what: `these are the fingerprints of “${marks.event}”, and the record beside them is that of “${record.event.name}”`,
    where: kept.where,
    hint: 'Keep the event.json and the fingerprints.json of an event together, apart from those of others',
  });
}

const marksIn = (value: unknown, where: string) =>
  fitting<EventMarks>(marksSchema, value, 'report-wrong', where);

async function parseWith<T extends { readonly tool?: unknown }>(
  schema: Schema,
  text: string,
  where: string,
): Promise<T> {
  try {
    return await fitting<T>(schema, parseJson(text, 'report-wrong', where), 'report-wrong', where);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new Problem({
      code: 'report-wrong',
      what: `this is no record of an event that this version can read: ${error.message}`,
      ...(error.where === undefined ? {} : { where: error.where }),
      hint: 'Run `wattassay event` again',
    });
  }
}
