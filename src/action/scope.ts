import path from 'node:path';
import type { EventGiven } from '../cli/event-plan.ts';
import { eventFileEnding, sameNumber } from '../event/event-file.ts';
import { type EventSource, planEvent } from '../event.ts';
import { Problem } from '../problem.ts';
import type { AllBecause, Entry, EventPlan } from '../types.ts';
import { FilesBefore } from './before.ts';
import type { FileChange } from './changed-files.ts';
import { layOut } from './kept.ts';
import { PlaceSet } from './places.ts';
import { placeIn, type Repository } from './repository.ts';

/** Whose submission is another than it was. */
export interface Touched {
  readonly numbers: ReadonlySet<string>;
  /** Riders who are no longer in the event. */
  readonly gone: readonly string[];
  /** Links that came: they are never followed. */
  readonly links: number;
}

/** Files that planning an event looks into; of all others it knows the name alone. */
const lookedInto = /\.(json|csv|zip)$/i;
/** What runs the audit, and so which version of it. */
const machinery = /^\.github\/(workflows|actions)\//;

/**
 * Whose submissions a change touches: the event is planned as it is and as it was, and what differs counts, as does
 * every file that a submission rests on. Why that cannot be told, where it cannot.
 *
 * @param rules folder of rules that the user named, from the top of the repository
 * @param into an empty folder of our own
 */
export async function touchedBy(
  changes: readonly FileChange[],
  { git, top }: Repository,
  event: EventGiven,
  rules: string | null,
  into: string,
): Promise<Touched | AllBecause> {
  if (changes.some(({ path: place }) => machinery.test(place))) return 'workflow';
  const here = placeIn(top, event.files.root);
  const everywhere = new PlaceSet(changes.map((one) => one.path));
  if (here !== '' && everywhere.holds(here)) return 'event new';
  const inside = changes.flatMap((one) => {
    const place = below(here, one.path);
    return place === null ? [] : { ...one, place };
  });
  const changed = new PlaceSet(inside.map(({ place }) => place));

  const kept = inside.flatMap(({ path: file, before }) =>
    before === null ? [] : { path: file, object: before },
  );
  if (!(await layOut(git, kept, into, (file) => lookedInto.test(file)))) return 'too much';
  const before = new FilesBefore(event.files, path.join(into, ...here.split('/')), changed);
  const source = await sourceBefore(event, before, changed);
  if (source === null) return 'event new';
  const { plan: was, problems } = await planEvent(source, before);
  if (was === null || problems.length > 0) return 'event was wrong';

  const judgedByChange = ({ rules: folder }: Entry) => {
    if (event.files.terms !== event.files.root) return false; // The change does not judge itself.
    const place = folder === null ? rules : path.posix.join(here, folder);
    return place !== null && everywhere.touches(place);
  };
  const rests = (entry: Entry) => filesOf(entry).some((file) => changed.touches(file));
  return {
    ...compared(event.plan, was, (entry) => rests(entry) || judgedByChange(entry)),
    links: inside.filter(({ now }) => now === 'link').length,
  };
}

/** Whether a change would alter what submissions are judged by. */
export function altersTerms(
  changes: readonly FileChange[],
  { top }: Repository,
  event: EventGiven,
  terms: ReadonlySet<string>,
): boolean {
  const here = placeIn(top, event.files.root);
  return changes.some(({ path: place }) => {
    const name = below(here, place);
    return terms.has(place) || (name !== null && !name.includes('/') && name.endsWith(eventFileEnding));
  });
}

/** A path from the event's folder; null for one that does not lie in it. */
function below(here: string, place: string): string | null {
  if (here === '') return place;
  return place.startsWith(`${here}/`) ? place.slice(here.length + 1) : null;
}

/** The event as it was named; null where there was none, or where which one it was is a matter of doubt. */
async function sourceBefore(
  { source, files }: EventGiven,
  before: FilesBefore,
  changed: PlaceSet,
): Promise<EventSource | null> {
  if (files.terms !== files.root) return source;
  if (source.kind === 'file' && !changed.holds(source.name)) return source;
  try {
    const names = await before.filesBelow('.');
    const eventFiles = names.filter((name) => !name.includes('/') && name.endsWith(eventFileEnding));
    if (source.kind === 'folder') return eventFiles.length === 0 ? source : null;
    if (!eventFiles.includes(source.name)) return null;
    return { ...source, text: (await before.readText(source.name)).text };
  } catch (error) {
    if (error instanceof Problem) return null;
    throw error;
  }
}

/** Files that an entry rests on. */
function filesOf({ primary, seconds, history, factInputs }: Entry): readonly string[] {
  const named = [primary, ...seconds, history, ...factInputs.map(({ name }) => name)];
  return named.filter((file) => file !== null);
}

function compared(
  now: EventPlan,
  was: EventPlan,
  isTouched: (entry: Entry) => boolean,
): Pick<Touched, 'numbers' | 'gone'> {
  const then = new Map(was.entries.map((entry) => [sameNumber(entry.number), said(entry)]));
  const numbers = new Set<string>();
  for (const entry of now.entries) {
    const key = sameNumber(entry.number);
    if (then.get(key) !== said(entry) || isTouched(entry)) numbers.add(entry.number);
    then.delete(key);
  }
  const gone = was.entries.filter(({ number }) => then.has(sameNumber(number)));
  return { numbers, gone: gone.map(({ number }) => number) };
}

/** Everything that the plan says of an entry, in whatever order its files were found. */
const said = (entry: Entry) => JSON.stringify({ ...entry, seconds: [...entry.seconds].sort() });
