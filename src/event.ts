/**
 * Submissions → event: plan, audit each by itself, compare them, keep a record. The third table of contents.
 */

import { auditRecordings, readSubmission, type Submission } from './audit.ts';
import { type DraftEntry, draftEntries, joinLists, termsOf, unaskable, withSecond } from './event/entries.ts';
import { eventFileEnding, eventFileFrom } from './event/event-file.ts';
import {
  type EarlierRows,
  fieldEffects,
  fieldRanges,
  repeatedDifferences,
  sharedDevices,
} from './event/field.ts';
import { marksOf } from './event/fingerprint.ts';
import { matchFiles } from './event/match.ts';
import { listed, reportFolder, roleAt } from './event/record.ts';
import { resultsFrom } from './event/results.ts';
import { sharedContent } from './event/shared.ts';
import { parseJson } from './json.ts';
import { raceFrom, riderFrom } from './judge/facts.ts';
import { verdictOf } from './judge/judge.ts';
import { meanMaximal } from './math/mean-maximal.ts';
import { normalise } from './normalise/index.ts';
import { Problem } from './problem.ts';
import { outline } from './report/outline.ts';
import { redact } from './report/redact.ts';
import { plain } from './report/words/sentence.ts';
import { tool } from './tool.ts';
import type {
  CrossChecks,
  Entry,
  EventFile,
  EventMarks,
  EventPlan,
  EventRecord,
  EventRecording,
  EventRow,
  Recording,
  Report,
  RiderFacts,
  RuleSet,
  SharedContent,
} from './types.ts';

/* ------------------------------------------------------------------- plan */

/** What the plan needs of the disk. Paths start at the event's folder, with `/`. */
export interface EventDisk {
  /** Text of a small file, with its checksum. @throws Problem */
  readText(path: string): Promise<{ readonly text: string; readonly sha256: string }>;
  /** The same of a file by which submissions are judged, not one of a submission's own. @throws Problem */
  readTerms(path: string): ReturnType<EventDisk['readText']>;
  /** Why nothing can be read there; null when something can. */
  whyNot(path: string): Promise<Problem | null>;
  /** Every file below a folder, members of a ZIP as if it were a folder. @throws Problem */
  filesBelow(path: string): Promise<readonly string[]>;
  /** Whether a table is one of another kind than a recording: results, a profile from an account's export. */
  isOtherTable(path: string): Promise<boolean>;
}

/** An event as it is named: by the text of its file, or a bare folder. */
export type EventSource =
  | { readonly kind: 'file'; readonly name: string; readonly text: string }
  | { readonly kind: 'folder'; readonly name: string };

/**
 * Everything that is known of an event before a recording is opened, with everything that is wrong and what
 * had better be known; no plan when nothing can be made of the event file itself.
 */
export async function planEvent(
  source: EventSource,
  disk: EventDisk,
): Promise<{ plan: EventPlan | null; problems: readonly Problem[]; remarks: readonly string[] }> {
  const { file, problems } = await fileOf(source);
  if (file === null) return { plan: null, problems, remarks: [] };
  const found = [...problems, ...(await termProblems(file, source.name))];
  const attempt = collector(found);

  const results = await attempt(async () => {
    if (file.results === undefined) return [];
    const { text } = await disk.readTerms(file.results);
    const read = resultsFrom(text, file.results);
    found.push(...read.problems);
    return read.riders;
  });
  const riders = joinLists(file.riders ?? [], results ?? []);
  const hasList = file.riders !== undefined || file.results !== undefined;
  const folder = file.submissions ?? (source.kind === 'folder' || !hasList ? '.' : null);
  const named = new Set(riders.flatMap(({ primary, seconds = [] }) => [primary, ...seconds]));
  const below = folder === null ? [] : ((await attempt(() => disk.filesBelow(folder))) ?? []);
  const handedIn = below.filter(
    (path) => !named.has(path) && path !== file.results && !path.endsWith(eventFileEnding),
  );
  const { matched, unmatched } = matchFiles(
    handedIn,
    hasList ? riders.map(({ number }) => number) : null,
    await otherTables(handedIn, disk),
  );

  // What was found by looking is there; what was named may not be.
  const there = new Set([...below, ...matched.flatMap(({ history }) => history ?? [])]);
  const entries: Entry[] = [];
  const drafts = draftEntries(file, riders, matched);
  for (let at = 0; at < drafts.length; at += atOnce) {
    const made = await Promise.all(
      drafts.slice(at, at + atOnce).map((draft) => entryOf(draft, source.name, disk, there)),
    );
    for (const { entry, problems: wrong } of made) {
      entries.push(entry);
      found.push(...wrong);
    }
  }
  // Of a file that is wrong itself, what is left may well hold nobody.
  if (entries.length === 0 && problems.length === 0) found.push(nothingFound(source.name, below));
  const { start, finish, kind, required } = termsOf(file, undefined);
  const race = Object.fromEntries(
    Object.entries({ start, finish, kind, required }).filter(([, value]) => value !== undefined),
  );
  const plan = { name: file.name, race, entries, unmatched };
  return { plan, problems: found, remarks: unaskable(file, entries) };
}

/** Entries whose files are looked at together: disks answer several questions as fast as one. */
const atOnce = 16;

/** Tables are told from recordings by their headings: an account's export has several. */
async function otherTables(files: readonly string[], disk: EventDisk): Promise<ReadonlySet<string>> {
  const others = new Set<string>();
  for (const file of files) if (/\.csv$/i.test(file) && (await disk.isOtherTable(file))) others.add(file);
  return others;
}

async function entryOf(
  { facts, ...draft }: DraftEntry,
  where: string,
  disk: EventDisk,
  there: ReadonlySet<string>,
): Promise<{ entry: Entry; problems: readonly Problem[] }> {
  const problems: Problem[] = [];
  const rider = await collector(problems)(() => riderOf(facts, draft.number, where, disk));
  for (const path of [draft.primary, ...draft.seconds, draft.history]) {
    const why = path === null || there.has(path) ? null : await disk.whyNot(path);
    if (why !== null) problems.push(why);
  }
  const entry = { ...draft, rider: rider?.facts ?? {}, factInputs: rider?.inputs ?? [] };
  return { entry, problems };
}

async function fileOf(
  source: EventSource,
): Promise<{ file: EventFile | null; problems: readonly Problem[] }> {
  if (source.kind === 'folder') return { file: { name: source.name }, problems: [] };
  try {
    return await eventFileFrom(parseJson(source.text, 'facts-wrong', source.name), source.name);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { file: null, problems: [error] };
  }
}

/** Times that are on no calendar, or a finish before the start: of the event and of each category. */
async function termProblems(file: EventFile, where: string): Promise<Problem[]> {
  const found: Problem[] = [];
  const attempt = collector(found);
  for (const category of [undefined, ...Object.keys(file.categories ?? {})]) {
    const { rules: _, secondRecordings: __, ...race } = termsOf(file, category);
    const place = category === undefined ? where : `${where} › categories › ${category}`;
    await attempt(() => raceFrom(race, place));
  }
  return found;
}

/** Runs one step after another and keeps what each finds wrong, so that all of it is told at once. */
function collector(found: Problem[]) {
  return async <T>(step: () => Promise<T>): Promise<T | null> => {
    try {
      return await step();
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      found.push(error);
      return null;
    }
  };
}

async function riderOf(
  facts: string | RiderFacts | null | undefined,
  number: string,
  where: string,
  disk: EventDisk,
): Promise<{ facts: RiderFacts; inputs: Report['inputs'] }> {
  if (facts === null || facts === undefined) return { facts: {}, inputs: [] };
  if (typeof facts !== 'string') {
    return { facts: await riderFrom(facts, `${where} › rider ${number} › facts`), inputs: [] };
  }
  const { text, sha256 } = await disk.readText(facts);
  const inputs = [{ role: 'rider', name: facts, sha256 }];
  return { facts: await riderFrom(parseJson(text, 'facts-wrong', facts), facts), inputs };
}

function nothingFound(where: string, below: readonly string[]): Problem {
  const events = below.filter((path) => path.includes('/') && path.endsWith(eventFileEnding));
  return new Problem({
    code: 'facts-wrong',
    what: 'no submission was found',
    where,
    hint:
      events.length > 0
        ? `Name the event meant: ${events.slice(0, mostNamed).join(', ')}`
        : 'List the riders, or put each rider’s files into a folder that begins with the rider’s number',
  });
}

/** Event files that are named where none of them was meant for sure. */
const mostNamed = 5;

/* ------------------------------------------------------------------ audit */

/** An entry's files, opened. */
export type HandedIn = Pick<Submission, 'primary' | 'seconds' | 'unopened' | 'profile' | 'otherInputs'>;

/**
 * Audits one entry: its report, fit to publish where `redacted`, and its row in the record.
 *
 * @throws Problem when the primary cannot be read
 */
export async function auditEntry(
  entry: Entry,
  handedIn: HandedIn,
  rules: RuleSet,
  redacted: boolean,
): Promise<{ report: Report; row: EventRow }> {
  const submission = await readSubmission({ ...handedIn, rider: entry.rider, race: entry.race });
  const race = isAboveLine(entry, submission.primary) ? withSecond(entry.race) : entry.race;
  const whole = auditRecordings({ ...submission, race }, rules);
  const report = redacted ? redact(whole) : whole;
  const recordings = [submission.primary, ...submission.seconds];
  return { report, row: rowOf(entry, report, recordings) };
}

/** Whether the rider held the power from which the event asks for a second recording. */
function isAboveLine({ secondsAbove, rider, race }: Entry, primary: Recording): boolean {
  const { massKg } = rider;
  if (secondsAbove === null || massKg === undefined) return false;
  const { series } = normalise(primary, 'primary');
  const { power } = series.channels;
  if (power === undefined) return false;
  const at = (instant: string | undefined, otherwise: number) =>
    instant === undefined ? otherwise : Math.round(Date.parse(instant) / 1000) - series.start;
  const duration = Math.round(secondsAbove.minutes * 60);
  const { watts } = meanMaximal(power, [duration], at(race.start, 0), at(race.finish, series.length));
  return watts[0]! / massKg >= secondsAbove.wattsPerKg;
}

function rowOf(entry: Entry, report: Report, recordings: readonly Recording[]): EventRow {
  const { redacted } = report.settings;
  const subject = subjectNames(report);
  const { judged, notApplicable, failed } = report.reach;
  const told = outline(report).raised.flatMap(({ findings }) => findings);
  return {
    ...listed(entry),
    ...(redacted ? { name: null, id: null } : {}),
    state: 'audited',
    why: null,
    grade: report.grade,
    reach: { judged, notApplicable, failed },
    missing: report.missing,
    findings: told.flatMap(({ finding, claim }) => {
      const { rule, level, value, unit, interval, limits, expected, explainedBy } = finding;
      if (level === 'none') return [];
      return {
        rule,
        subject: subject(finding.subject),
        level,
        value,
        unit,
        interval,
        limits,
        expected: expected?.field ?? null,
        explainedBy,
        claim: plain(claim),
      };
    }),
    numbers: report.measurements.flatMap(({ rule, subject: about, value, unit, interval }) =>
      value === null || unit === null || interval === null
        ? []
        : { rule, subject: subject(about), value, unit, interval },
    ),
    recordings: recordings.map((one, i) => keptOf(one, i, entry, redacted)),
    report: reportFolder(entry.number),
  };
}

/** "pair:1f2e3d4c" says nothing across riders; "pair", the first, does. */
function subjectNames({ submission }: Report): (subject: string) => string {
  const order = submission.seconds.map(({ subject }) => subject.slice(subject.indexOf(':') + 1));
  return (subject) => {
    const [kind, code] = subject.split(':') as [string, string?];
    const at = code === undefined ? 0 : order.indexOf(code);
    return at > 0 ? `${kind} ${at + 1}` : kind;
  };
}

function keptOf(
  recording: Recording,
  index: number,
  { primary, seconds }: Entry,
  redacted: boolean,
): EventRecording {
  const { time, device, sha256 } = recording;
  const role = roleAt(index);
  const path = index === 0 ? primary : seconds.find((one) => one.split('/').at(-1) === recording.name);
  const { maker, product, serial } = device;
  return {
    role,
    file: redacted ? role : (path ?? recording.name),
    sha256,
    from: Math.round(time.reduce((a, b) => Math.min(a, b), Infinity)),
    to: Math.round(time.reduce((a, b) => Math.max(a, b), -Infinity)),
    device: serial === null || redacted ? null : [maker, product, serial].filter(Boolean).join(' '),
    marks: marksOf(recording),
  };
}

/* ---------------------------------------------------------------- compare */

/** Earlier events to compare with: their marks, and their rows where the whole record was given. */
export interface Earlier {
  readonly marks: EventMarks;
  readonly rows: readonly EventRow[];
}

/** The rule set of a folder, as its submissions were judged by it; null is the shipped one. */
export type RuleSets = ReadonlyMap<string | null, RuleSet>;

/** What is common to all submissions, part or whole. */
export function recordHead(
  plan: EventPlan,
  sets: RuleSets,
): Pick<EventRecord, 'tool' | 'event' | 'rules' | 'titles'> {
  const titles = new Map<string, EventRecord['titles'][string]>();
  for (const { rules } of sets.values()) {
    for (const { id, title, family } of rules) titles.set(id, { title, family });
  }
  return {
    tool,
    event: { name: plan.name, race: plan.race },
    rules: [...sets]
      .map(([folder, { name, sha256 }]) => ({ folder, name, sha256 }))
      .sort((a, b) => ((a.folder ?? '') < (b.folder ?? '') ? -1 : 1)),
    titles: Object.fromEntries([...titles].sort(([a], [b]) => (a < b ? -1 : 1))),
  };
}

/** What only the submissions together can show. */
export function crossChecks(
  plan: EventPlan,
  rows: readonly EventRow[],
  sets: RuleSets,
  earlier: readonly Earlier[],
): CrossChecks {
  const folders = new Map(plan.entries.map(({ number, rules }) => [number, rules]));
  const ruleOf = (number: string | null) =>
    sets.get(folders.get(number ?? '') ?? null)?.rules.find(({ measure }) => measure === 'shared-seconds');
  const marks = earlier.map((one) => one.marks);
  const shared = sharedContent(rows, marks).flatMap(({ a, b, seconds, alike }): SharedContent[] => {
    const rule = ruleOf(a.number);
    if (rule === undefined || rule.off !== undefined) return [];
    const { level } = verdictOf(rule, { value: seconds, interval: [seconds, seconds], unit: 's' });
    if (level === 'none') return [];
    return [{ rule: rule.id, level, seconds, alike, a: { number: a.number!, role: a.role }, b }];
  });
  const differences = [...sets.values()]
    .flatMap(({ rules }) => rules)
    .filter(({ measure }) => measure === 'overall-difference')
    .map(({ id }) => id);
  const before: EarlierRows[] = earlier.map((one) => ({ event: one.marks.event, rows: one.rows }));
  return {
    shared,
    devices: sharedDevices(rows),
    field: fieldRanges(rows),
    effects: fieldEffects(rows),
    repeated: repeatedDifferences(rows, before, [...new Set(differences)]),
  };
}
