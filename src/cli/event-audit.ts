import path from 'node:path';
import { deal, type Part } from '../event/parts.ts';
import { codeOf, marksFile, roleAt } from '../event/record.ts';
import { crossChecks, type Earlier, recordHead } from '../event.ts';
import { checksum } from '../files/index.ts';
import { Problem } from '../problem.ts';
import type { CrossChecks, Entry, EventRecord, SharedContent } from '../types.ts';
import { makeFolder, removeOthers, writtenInto } from './event-folders.ts';
import { decisionsIn, earlierGiven, recordIn, writeEvent, writePart } from './event-out.ts';
import type { EventGiven } from './event-plan.ts';
import { type Run, runEntries } from './event-run.ts';
import type { Io } from './io.ts';
import { tallyOn } from './progress.ts';
import { many, remark } from './say.ts';

/** How an event is audited; every door gives the same. */
export interface AuditSettings {
  readonly rules?: string | undefined;
  readonly earlier?: readonly string[] | undefined;
  /** The folder of an earlier run to compare with. */
  readonly since?: string | undefined;
  readonly jobs?: number | undefined;
  /** Seconds after which a submission is given up. */
  readonly patience?: number | undefined;
  /** The part of the submissions that is audited; null: all. */
  readonly part: Part | null;
  readonly redact: boolean;
  /** A calendar day: answers that were due before it are overdue. */
  readonly today: string;
  /** The riders whose submissions are audited; left out: all. */
  readonly only?: ReadonlySet<string> | undefined;
}

export interface Audited {
  readonly record: EventRecord;
  readonly before: EventRecord | null;
  /** How many were taken over unchanged from an earlier run. */
  readonly reused: number;
  /** How many reports of riders who are no longer in the event were taken away. */
  readonly gone: number;
  /** Whether there were fingerprints to compare the submissions of some with; null: nobody was left out. */
  readonly compared: boolean | null;
}

/**
 * Audits the submissions of an event, compares them, and writes everything into a folder.
 *
 * @param out as the user names it
 * @throws Problem when it cannot be run or nothing can be written
 */
export async function auditEvent(
  io: Io,
  event: EventGiven,
  settings: AuditSettings,
  out: string,
): Promise<Audited> {
  const { plan, sets, files } = event;
  const { part } = settings;
  const folder = path.resolve(io.cwd, out);
  const earlier = await earlierGiven(
    { ...io, cwd: event.terms },
    settings.earlier ?? [],
    writtenInto(folder),
  );
  const before = settings.since === undefined ? null : await recordIn(io, settings.since);
  const decisions = await decisionsIn(files.terms);
  await makeFolder(folder, out);
  const entries = await chosen(plan.entries, part, settings.only);
  const { rows, reused } = await audited(io, event, entries, settings, { out: folder, shown: out });
  const own = settings.only === undefined || part !== null ? null : await ownMarks(io, event);
  const record: EventRecord = {
    eventVersion: 1,
    ...recordHead(plan, sets),
    plan: event.digest,
    part,
    selected: settings.only === undefined ? null : { of: plan.entries.length },
    rows,
    unmatched: settings.redact ? [] : plan.unmatched,
    crossChecks:
      part !== null
        ? null
        : settings.only === undefined
          ? crossChecks(plan, rows, sets, earlier)
          : await checksOfSome(event, rows, [...(own === null ? [] : [own]), ...earlier]),
  };
  if (part === null) await writeEvent(folder, record, { decisions, before, today: settings.today });
  else await writePart(folder, record);
  const numbers = rows.map(({ number }) => number);
  const gone = await removeOthers(folder, numbers);
  return {
    record,
    before,
    reused,
    gone,
    compared: settings.only === undefined ? null : own !== null,
  };
}

async function chosen(
  entries: readonly Entry[],
  part: Part | null,
  only: ReadonlySet<string> | undefined,
): Promise<readonly Entry[]> {
  const numbers = entries.map(({ number }) => number);
  const dealt = part === null ? null : await deal(numbers, part);
  return entries.filter(({ number }) => (dealt?.has(number) ?? true) && (only?.has(number) ?? true));
}

async function audited(
  io: Io,
  { files, plan, terms }: EventGiven,
  entries: readonly Entry[],
  { rules, redact, jobs, patience }: AuditSettings,
  { out, shown }: { readonly out: string; readonly shown: string },
): Promise<Run> {
  const tally = tallyOn(io, entries.length);
  let kept = 0;
  const heard = io.whenStopped?.(() => {
    tally.clear();
    remark(io, stoppedSaid(kept, entries.length, shown));
  });
  try {
    return await runEntries(
      entries,
      {
        root: files.root,
        terms: files.terms,
        out,
        cwd: terms,
        rules: rules ?? null,
        event: plan.name,
        redacted: redact,
      },
      {
        jobs,
        patience,
        onRow: (_, done) => {
          kept = done;
          tally.now(done);
        },
      },
    );
  } finally {
    heard?.();
    tally.clear();
  }
}

const stoppedSaid = (kept: number, all: number, out: string) =>
  `Stopped: ${kept} of ${many(all, 'submission')} are done and kept in ${out}. The same command goes on from there, and writes the overview when all are done.`;

/** The fingerprints of this event that were kept beside it; null when there are none. */
async function ownMarks(io: Io, { files, plan }: EventGiven): Promise<Earlier | null> {
  try {
    const [found] = await earlierGiven({ ...io, cwd: files.terms }, [marksFile], []);
    return found?.marks.event === plan.name ? found : null;
  } catch (error) {
    if (error instanceof Problem && error.code === 'file-missing') return null;
    throw error;
  }
}

/**
 * What can be seen of some submissions beside all others, of which only fingerprints are there. What asks for the
 * whole field is left out: some are no field.
 */
async function checksOfSome(
  event: EventGiven,
  rows: EventRecord['rows'],
  earlier: readonly Earlier[],
): Promise<CrossChecks> {
  const { shared, repeated } = crossChecks(event.plan, rows, event.sets, earlier);
  return { shared: await placed(event, shared), devices: [], field: [], effects: [], repeated };
}

/**
 * Fingerprints of this event know recordings by the start of their checksum only: whose they are is told by the
 * files. A rider's own say nothing, nor do those of files that are no longer there.
 */
async function placed(
  { files, plan }: EventGiven,
  shared: readonly SharedContent[],
): Promise<readonly SharedContent[]> {
  const isOwn = ({ b }: SharedContent) => b.event === plan.name;
  if (!shared.some(isOwn)) return shared;
  const holders = await holdersOf(files, plan.entries);
  const known = new Set(shared.filter((one) => !isOwn(one)).map(pairOf));
  return shared.flatMap((one) => {
    if (!isOwn(one)) return one;
    const others = (holders.get(one.b.role) ?? []).filter(({ number }) => number !== one.a.number);
    return others.flatMap(({ number, role }) => {
      const found = { ...one, b: { event: null, number, role } };
      if (known.has(pairOf(found))) return [];
      known.add(pairOf(found));
      return found;
    });
  });
}

/** The same for a pair whichever of the two is named first. */
function pairOf({ a, b }: SharedContent): string {
  return [`${a.number} ${a.role}`, `${b.event ?? ''} ${b.number ?? ''} ${b.role}`.trim()].sort().join('\n');
}

interface Holder {
  readonly number: string;
  readonly role: string;
}

/** Who handed in what, by the start of its checksum. */
async function holdersOf(
  files: EventGiven['files'],
  entries: readonly Entry[],
): Promise<ReadonlyMap<string, readonly Holder[]>> {
  const holders = new Map<string, Holder[]>();
  for (const { number, primary, seconds } of entries) {
    for (const [at, place] of [primary, ...seconds].entries()) {
      const code = place === null ? null : await fileCode(files, place);
      if (code === null) continue;
      holders.set(code, [...(holders.get(code) ?? []), { number, role: roleAt(at) }]);
    }
  }
  return holders;
}

async function fileCode(files: EventGiven['files'], place: string): Promise<string | null> {
  try {
    return codeOf(checksum((await files.read(place)).bytes));
  } catch (error) {
    if (error instanceof Problem) return null; // Told when it is audited.
    throw error;
  }
}
