import type { Unmatched } from '../types.ts';
import { sameNumber } from './event-file.ts';

/** The files of one rider, as their names say. */
export interface Matched {
  readonly number: string;
  readonly primary: string | null;
  readonly seconds: readonly string[];
  readonly history: string | null;
  readonly facts: string | null;
  /** Why there are recordings and none of them could be taken for the primary. */
  readonly doubt: string | null;
}

/** Whether a name ends as that of a recording does, also gzipped or packed. */
export const isRecordingName = (name: string) => /\.(fit|tcx|gpx|csv)(\.gz)?$|\.zip$/i.test(name);
const archive = /\.zip$/i;
/** A calendar day at the front of a name is no rider's number. */
const day = /^((19|20)\d\d[-_.]?\d\d[-_.]?\d\d|\d{1,2}[-_.]\d{1,2}[-_.](19|20)\d\d)/;

/**
 * Matches files with riders by names alone: a folder that begins with the rider's number, the nearest to the
 * file, or else the name of the ZIP or of the file. Of several recordings the names must say which is the
 * `primary` and which is a `second`; the only one that is no second is the primary. `history` (a folder or ZIP)
 * or `profile.json` is the rider's past, `rider.json` the facts. Whatever leaves a doubt is listed with its
 * reason and belongs to nobody, and so is what was handed in where a recording should be.
 *
 * @param files paths with `/`, a member of a ZIP as if the ZIP were a folder
 * @param known numbers of the start list; null without one, when any number counts
 * @param tables files that look like recordings by their name alone: passed over beside a recording
 */
export function matchFiles(
  files: readonly string[],
  known: readonly string[] | null,
  tables: ReadonlySet<string> = new Set(),
): { matched: readonly Matched[]; unmatched: readonly Unmatched[] } {
  const list = known === null ? null : new Map(known.map((number) => [sameNumber(number), number]));
  const byRider = new Map<string, Kept[]>();
  const unmatched: Unmatched[] = [];
  const refuse = (file: string, why: string, hint: string) => unmatched.push({ file, why, hint });
  for (const file of files) {
    const kept = keptAs(file);
    const found = numberIn(kept.named, list);
    if (typeof found === 'string') byRider.set(found, [...(byRider.get(found) ?? []), kept]);
    else if (kept.as !== 'other' && !tables.has(file)) refuse(file, found.why, found.hint);
  }
  const matched = [...byRider].map(([number, kept]) => settle(number, kept, tables, refuse));
  return {
    matched: matched.filter((one) => one !== null),
    unmatched: unmatched.sort((a, b) => (a.file < b.file ? -1 : 1)),
  };
}

/** A file, what it is by its name, and the part of its path that may name its rider. */
interface Kept {
  readonly file: string;
  readonly as: 'recording' | 'history' | 'facts' | 'other';
  /** Of a history, the folder or archive as a whole. */
  readonly whole: string;
  readonly named: readonly string[];
}

function keptAs(file: string): Kept {
  const parts = file.split('/');
  const past = parts.findIndex((part) => /^history(\.zip)?$/i.test(part));
  if (past >= 0) {
    const named = parts.slice(0, past);
    return { file, as: 'history', whole: parts.slice(0, past + 1).join('/'), named };
  }
  const last = parts.at(-1)!;
  if (/(^|[-_ .])profile\.json$/i.test(last)) return { file, as: 'history', whole: file, named: parts };
  if (/(^|[-_ .])rider\.json$/i.test(last)) return { file, as: 'facts', whole: file, named: parts };
  return { file, as: isRecordingName(last) ? 'recording' : 'other', whole: file, named: parts };
}

/** The number that a path names, or why it names none. */
function numberIn(
  parts: readonly string[],
  list: ReadonlyMap<string, string> | null,
): string | { why: string; hint: string } {
  // Folders are the organiser's own; a ZIP was named by whoever sent it, and what lies in it by some program.
  const packed = parts.findIndex((part) => archive.test(part));
  const named = packed >= 0 ? packed : parts.length - (parts.at(-1)?.includes('.') ? 1 : 0);
  const inside = parts.slice(named);
  const trusted = [
    ...parts.slice(0, named).reverse(),
    ...inside.slice(0, 1),
    ...inside.slice(1, -1).reverse(),
    ...inside.slice(1).slice(-1),
  ];
  const [found, ...rest] = trusted.map((part) => numberOf(part, list)).filter((one) => one !== null);
  if (found === undefined) {
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
  const names = new Set(inside.map((part) => numberOf(part, list)));
  const other = rest.find((one) => names.has(one) && one !== found && list?.has(sameNumber(one)));
  if (other !== undefined) {
    const outer = named > 0 && !names.has(found) ? 'folder' : 'ZIP';
    return {
      why: `its ${outer} says rider ${found}, its name says rider ${other}`,
      hint: 'Move or rename the file so that both say the same',
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

/** Null where nothing but files of other kinds bears the number: that makes nobody a rider. */
function settle(
  number: string,
  kept: readonly Kept[],
  tables: ReadonlySet<string>,
  refuse: (file: string, why: string, hint: string) => void,
): Matched | null {
  const all = (as: Kept['as']) => [...new Set(kept.filter((one) => one.as === as).map((one) => one.whole))];
  const only = (as: Kept['as'], what: string): string | null => {
    const files = all(as);
    if (files.length < 2) return files[0] ?? null;
    for (const file of files)
      refuse(file, `rider ${number} has ${files.length} of ${what}`, 'Leave the one that counts');
    return null;
  };
  const candidates = all('recording');
  const read = candidates.filter((file) => !tables.has(file));
  const recordings = read.length > 0 ? read : candidates;
  const folders = foldersOf(number, recordings);
  if (folders.length > 0) {
    const more = folders.length > mostNamed ? ', and others' : '';
    const doubt = `${folders.length} folders bear the number ${number}: ${folders.slice(0, mostNamed).join(', ')}${more}`;
    for (const file of recordings) refuse(file, doubt, 'Put what is this rider’s into one folder');
    return { number, primary: null, seconds: [], doubt, history: null, facts: null };
  }
  if (recordings.length === 0) {
    for (const file of all('other')) {
      refuse(
        file,
        `rider ${number} has no recording, and this is none`,
        'Hand in the original FIT, TCX, GPX or CSV, alone or in a ZIP',
      );
    }
    if (kept.every(({ as }) => as === 'other')) return null;
  }
  return {
    number,
    ...rolesOf(number, recordings, refuse),
    history: only('history', 'histories'),
    facts: only('facts', 'files of facts'),
  };
}

/**
 * Folders side by side that bear one rider's number: two people may have filed one rider, or two riders one number.
 * None where there are fewer than two.
 */
function foldersOf(number: string, files: readonly string[]): readonly string[] {
  const folders = new Set(files.flatMap((file) => folderOf(number, file) ?? []));
  const above = (folder: string) => folder.slice(0, folder.lastIndexOf('/') + 1);
  const within = new Map<string, number>();
  for (const folder of folders) within.set(above(folder), (within.get(above(folder)) ?? 0) + 1);
  return [...folders].filter((folder) => within.get(above(folder))! > 1);
}

/** Folders that a sentence names: it stands beside each of their files. */
const mostNamed = 5;

/** The folder nearest to a file that begins with the rider's number; null where none does, or a ZIP lies between. */
function folderOf(number: string, file: string): string | null {
  const parts = file.split('/').slice(0, -1);
  const list = new Map([[sameNumber(number), number]]);
  const at = parts.findLastIndex((part) => numberOf(part, list) === number);
  return at < 0 || parts.some((part) => archive.test(part)) ? null : parts.slice(0, at + 1).join('/');
}

function doubtSaid(number: string, files: number, primaries: number): string {
  if (files === 1) return `the only recording of rider ${number} is called second`;
  if (primaries === 0) return `none of the ${files} recordings of rider ${number} is called primary`;
  return `${primaries} of the ${files} recordings of rider ${number} are called primary`;
}

type Role = 'primary' | 'second';
const words: Readonly<Record<Role, RegExp>> = {
  primary: /(^|[^a-z])primary([^a-z]|$)/i,
  second: /(^|[^a-z])seconds?([^a-z]|$)/i,
};
/** A folder says it by its whole name: “second round” is no role. */
const folders: Readonly<Record<Role, RegExp>> = { primary: /^primary$/i, second: /^seconds?$/i };

/** What a path says the recording is: the part nearest to it that says one of the two. */
function roleSaid(file: string): Role | null {
  const parts = file.split('/').reverse();
  for (const [at, part] of parts.entries()) {
    const said = at === 0 || archive.test(part) ? words : folders;
    const [primary, second] = [said.primary.test(part), said.second.test(part)];
    if (primary !== second) return primary ? 'primary' : 'second';
  }
  return null;
}

function rolesOf(
  number: string,
  files: readonly string[],
  refuse: (file: string, why: string, hint: string) => void,
): Pick<Matched, 'primary' | 'seconds' | 'doubt'> {
  const of = (role: Role | null) => files.filter((file) => roleSaid(file) === role);
  const [primaries, seconds, silent] = [of('primary'), of('second'), of(null)];
  if (primaries.length === 0 && silent.length === 1) return { primary: silent[0]!, seconds, doubt: null };
  const packed = files.some((file) =>
    file
      .split('/')
      .slice(0, -1)
      .some((part) => archive.test(part)),
  );
  const hint = `${packed ? 'Take them out of the ZIP and name' : 'Name'} one file “primary” and each other “second”, like “17-primary.fit” and “17-second.fit”`;
  if (primaries.length !== 1) {
    if (files.length === 0) return { primary: null, seconds: [], doubt: null };
    const doubt = doubtSaid(number, files.length, primaries.length);
    for (const file of files) refuse(file, doubt, hint);
    return { primary: null, seconds: [], doubt };
  }
  for (const file of silent) refuse(file, `its name does not say what it is to rider ${number}`, hint);
  return { primary: primaries[0]!, seconds, doubt: null };
}
