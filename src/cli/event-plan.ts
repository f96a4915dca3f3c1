import path from 'node:path';
import { eventFileEnding } from '../event/event-file.ts';
import { planDigest } from '../event/record.ts';
import { type EventSource, planEvent, type RuleSets, recordHead } from '../event.ts';
import { filesIn, isFolder, limits, readFileSafely, refuseOutside } from '../files/index.ts';
import { Problem, problemsIn } from '../problem.ts';
import type { EventPlan } from '../types.ts';
import { EventFiles } from './event-disk.ts';
import type { Io } from './io.ts';
import { rulesGiven } from './rule-folder.ts';

/** An event as the user names it, ready to be run. */
export interface EventGiven {
  readonly files: EventFiles;
  readonly source: EventSource;
  /** The file or folder that was named, or the event file found in it. */
  readonly place: string;
  /** The folder from which the event's terms were named: that of the user, or one that stands for it. */
  readonly terms: string;
  readonly plan: EventPlan;
  /** Rules by folder; null: those of `--rules`, or the shipped ones. */
  readonly sets: RuleSets;
  readonly digest: string;
  /** What the organiser had better know, though the event can be audited. */
  readonly remarks: readonly string[];
}

export interface EventSettings {
  readonly rules?: string | undefined;
  readonly redact?: boolean;
  /** A folder that stands for the user's wherever the event file, results and rules are read. */
  readonly terms?: string | undefined;
}

/**
 * The event that a file or folder names: a folder with one event file is that event, any other folder is an
 * event whose files are matched by number.
 *
 * @throws AggregateError of Problems: everything that is wrong at once
 */
export async function eventGiven(io: Io, named: string, settings: EventSettings): Promise<EventGiven> {
  const terms = settings.terms ?? io.cwd;
  const { source, place, root } = await sourceOf(terms, named);
  const files = new EventFiles(path.resolve(io.cwd, path.relative(terms, root)), root);
  const { plan, problems, remarks } = await planEvent(source, files);
  const found = [...problems];
  const sets = await setsOf({ ...io, cwd: terms }, files, plan, settings.rules, found);
  if (plan === null || found.length > 0) throw new AggregateError(found);
  const digest = await planDigest(plan, recordHead(plan, sets), settings.redact === true);
  return { files, source, place, terms, plan, sets, digest, remarks };
}

async function sourceOf(
  cwd: string,
  named: string,
): Promise<{ source: EventSource; place: string; root: string }> {
  const place = path.resolve(cwd, named);
  if (!(await isFolder(place)))
    return { source: await fileSource(place, named), place, root: path.dirname(place) };
  const found = (await filesIn(place)).filter(({ name }) => name.endsWith(eventFileEnding));
  if (found.length > 1) {
    throw new Problem({
      code: 'usage',
      what: `this folder holds ${found.length} event files`,
      where: named,
      hint: `Name one of them: ${found.map(({ name }) => name).join(', ')}`,
    });
  }
  const only = found[0];
  if (only === undefined)
    return { source: { kind: 'folder', name: path.basename(place) }, place, root: place };
  return { source: await fileSource(only.path, path.join(named, only.name)), place: only.path, root: place };
}

/** Bytes of an event file: ten thousand riders with everything that may be said of them. */
const eventBytes = 32 * limits.factsBytes;

async function fileSource(place: string, shown: string): Promise<EventSource> {
  const { name, bytes } = await readFileSafely(place, { most: eventBytes, shown });
  return { kind: 'file', name, text: new TextDecoder().decode(bytes) };
}

async function setsOf(
  io: Io,
  files: EventFiles,
  plan: EventPlan | null,
  option: string | undefined,
  found: Problem[],
): Promise<RuleSets> {
  const folders = new Set<string | null>(plan?.entries.map(({ rules }) => rules) ?? []);
  const sets = new Map();
  for (const folder of folders) {
    try {
      sets.set(folder, await ruleSetOf(io, files, folder, option));
    } catch (error) {
      const problems = problemsIn(error);
      if (problems === null) throw error;
      found.push(...problems);
    }
  }
  return sets;
}

/** The rules of a folder of the event; for entries that name none, those that the user named. */
export async function ruleSetOf(
  io: Io,
  files: EventFiles,
  folder: string | null,
  option: string | undefined,
) {
  if (folder === null) return (await rulesGiven(io, option)).set;
  await refuseOutside(files.terms, folder);
  return (await rulesGiven({ ...io, cwd: files.terms }, folder)).set;
}
