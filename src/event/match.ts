import type { Unmatched } from '../types.ts';
import { sameNumber } from './event-file.ts';

/** The files of one rider, as their names say. */
export interface Matched {
  readonly number: string;
  readonly primary: string | null;
  readonly seconds: readonly string[];
  readonly history: string | null;
  readonly facts: string | null;
}

/** Endings of what is read as a recording, also gzipped or packed. */
const recording = /\.(fit|tcx|gpx|csv)(\.gz)?$|\.zip$/i;
/** A calendar day at the front of a name is no rider's number. */
const day = /^(19|20)\d\d[-_.]?\d\d[-_.]?\d\d/;

/**
 * Matches files with riders by names alone: a folder that begins with the rider's number, the nearest to the
 * file, or else the file's own name. Of several recordings the names must say which is the `primary` and which
 * is a `second`; one alone is the primary. `history` (a folder or ZIP) or `profile.json` is the rider's past,
 * `rider.json` the facts. Whatever leaves a doubt is listed with its reason and belongs to nobody.
 *
 * @param files paths with `/`, a member of a ZIP as if the ZIP were a folder
 * @param known numbers of the start list; null without one, when any number counts
 */
export function matchFiles(
  files: readonly string[],
  known: readonly string[] | null,
): { matched: readonly Matched[]; unmatched: readonly Unmatched[] } {
  const list = known === null ? null : new Map(known.map((number) => [sameNumber(number), number]));
  const byRider = new Map<string, Kept[]>();
  const unmatched: Unmatched[] = [];
  const refuse = (file: string, why: string, hint: string) => unmatched.push({ file, why, hint });
  for (const file of files) {
    const kept = roleOf(file);
    if (kept === null) continue;
    const found = numberIn(kept.named, list);
    if (typeof found !== 'string') refuse(file, found.why, found.hint);
    else byRider.set(found, [...(byRider.get(found) ?? []), kept]);
  }
  const matched = [...byRider].map(([number, kept]) => settle(number, kept, refuse));
  return { matched, unmatched: unmatched.sort((a, b) => (a.file < b.file ? -1 : 1)) };
}

/** A file that counts, and the part of its path that may name its rider. */
interface Kept {
  readonly file: string;
  readonly as: 'recording' | 'history' | 'facts';
  /** Of a history, the folder or archive as a whole. */
  readonly whole: string;
  readonly named: readonly string[];
}

function roleOf(file: string): Kept | null {
  const parts = file.split('/');
  const past = parts.findIndex((part) => /^history(\.zip)?$/i.test(part));
  if (past >= 0) {
    const named = parts.slice(0, past);
    return { file, as: 'history', whole: parts.slice(0, past + 1).join('/'), named };
  }
  const last = parts.at(-1)!;
  if (/(^|[-_ .])profile\.json$/i.test(last)) return { file, as: 'history', whole: file, named: parts };
  if (/(^|[-_ .])rider\.json$/i.test(last)) return { file, as: 'facts', whole: file, named: parts };
  return recording.test(last) ? { file, as: 'recording', whole: file, named: parts } : null;
}

/** The number that a path names, or why it names none. */
function numberIn(
  parts: readonly string[],
  list: ReadonlyMap<string, string> | null,
): string | { why: string; hint: string } {
  const folders = parts.slice(0, -1);
  const own = parts.at(-1) ?? '';
  const fromFolder = [...folders, ...(own.includes('.') ? [] : [own])]
    .map((part) => numberOf(part, list))
    .filter((one) => one !== null)
    .at(-1);
  const fromName = own.includes('.') ? numberOf(own, list) : null;
  if (
    fromFolder !== undefined &&
    fromName !== null &&
    list?.has(sameNumber(fromName)) &&
    fromFolder !== fromName
  ) {
    return {
      why: `its folder says rider ${fromFolder}, its name says rider ${fromName}`,
      hint: 'Move or rename the file so that both say the same',
    };
  }
  const found = fromFolder ?? fromName;
  if (found === null) {
    return {
      why: "no rider's number is at the start of its name or of its folder",
      hint: 'Put the number first, like “17-primary.fit”, or the file into the folder “17”',
    };
  }
  if (list !== null && !list.has(sameNumber(found))) {
    return {
      why: `no rider of the start list bears the number ${found}`,
      hint: 'Add the rider, or rename the file',
    };
  }
  return list?.get(sameNumber(found)) ?? found;
}

/** The number at the front of a name: one of the list as it stands, or up to five digits. */
function numberOf(part: string, list: ReadonlyMap<string, string> | null): string | null {
  const token = /^[A-Za-z0-9]+/.exec(part)?.[0] ?? '';
  const listed = list?.get(sameNumber(token));
  if (listed !== undefined) return listed;
  if (day.test(part)) return null;
  const digits = /^0*(\d{1,5})(?![A-Za-z0-9])/.exec(part)?.[1];
  if (digits === undefined) return null;
  return list?.get(digits) ?? digits;
}

function settle(
  number: string,
  kept: readonly Kept[],
  refuse: (file: string, why: string, hint: string) => void,
): Matched {
  const only = (as: Kept['as'], what: string): string | null => {
    const all = [...new Set(kept.filter((one) => one.as === as).map((one) => one.whole))];
    if (all.length < 2) return all[0] ?? null;
    for (const file of all)
      refuse(file, `rider ${number} has ${all.length} of ${what}`, 'Leave the one that counts');
    return null;
  };
  const recordings = kept.filter((one) => one.as === 'recording').map(({ file }) => file);
  return {
    number,
    ...rolesOf(number, recordings, refuse),
    history: only('history', 'histories'),
    facts: only('facts', 'files of facts'),
  };
}

const says = (word: string) => (file: string) =>
  new RegExp(`(^|[^a-z])${word}s?([^a-z]|$)`, 'i').test(file.split('/').at(-1)!);

function rolesOf(
  number: string,
  files: readonly string[],
  refuse: (file: string, why: string, hint: string) => void,
): Pick<Matched, 'primary' | 'seconds'> {
  if (files.length === 1 && !says('second')(files[0]!)) return { primary: files[0]!, seconds: [] };
  const primaries = files.filter(says('primary'));
  const seconds = files.filter((file) => says('second')(file) && !says('primary')(file));
  const others = files.filter((file) => !primaries.includes(file) && !seconds.includes(file));
  const hint = 'Name one file “primary” and each other “second”, like “17-primary.fit” and “17-second.fit”';
  if (primaries.length !== 1) {
    const many = primaries.length === 0 ? 'none of' : `${primaries.length} of`;
    for (const file of files) {
      refuse(file, `${many} the ${files.length} recordings of rider ${number} is called primary`, hint);
    }
    return { primary: null, seconds: [] };
  }
  for (const file of others) refuse(file, `its name does not say what it is to rider ${number}`, hint);
  return { primary: primaries[0]!, seconds };
}
