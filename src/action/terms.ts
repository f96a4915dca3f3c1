import { mkdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { decisionsFile } from '../event/decisions.ts';
import { eventFileEnding, eventFileFrom } from '../event/event-file.ts';
import { marksFile } from '../event/record.ts';
import { parseJson } from '../json.ts';
import { Problem } from '../problem.ts';
import type { EventFile, TermsBecause } from '../types.ts';
import { type KeptFile, keptAt, layOut } from './kept.ts';
import { placeIn, type Repository } from './repository.ts';

/** What a user names that submissions are judged by. Paths from the workspace. */
export interface TermsNamed {
  readonly event: string;
  readonly rules: string | undefined;
  readonly earlier: readonly string[];
}

/** The event's terms as the base branch holds them. */
export interface Terms {
  /** Stands for the workspace: from here every name leads to the base branch's file. */
  readonly workspace: string;
  /** What was laid out, from the top of the repository. */
  readonly places: ReadonlySet<string>;
}

/**
 * Lays the base branch's event file, results, rules, decisions and fingerprints out in a folder of our own, so that
 * whoever proposes a change is not judged by rules that are part of it.
 *
 * @param into an empty folder of our own
 */
export async function termsAt(
  { git, top }: Repository,
  commit: string,
  workspace: string,
  named: TermsNamed,
  into: string,
): Promise<Terms | TermsBecause> {
  const at = (name: string) => placeIn(top, path.resolve(workspace, name));
  const place = at(named.event);
  const event = await keptAt(git, commit, place);
  if (event === null) return 'event new';
  const folder = event.kind === 'folder' ? place : folderOf(place);
  const beside = event.kind === 'folder' ? event : await keptAt(git, commit, folder);
  const eventFiles =
    event.kind === 'file' ? event.files : event.files.filter((one) => one.path.endsWith(eventFileEnding));
  const kept = (beside?.files ?? []).filter((one) =>
    [decisionsFile, marksFile].some((name) => one.path === path.posix.join(folder, name)),
  );
  const others: KeptFile[] = [];
  for (const name of [...(named.rules === undefined ? [] : [named.rules]), ...named.earlier]) {
    const found = await keptAt(git, commit, at(name));
    if (found === null) return 'rules new';
    others.push(...found.files);
  }
  for (const name of named.earlier) {
    // The record of an earlier event has its fingerprints beside it; where they are missing, that is told as it is read.
    const beside = await keptAt(git, commit, path.posix.join(folderOf(at(name)), marksFile));
    others.push(...(beside?.files ?? []));
  }

  // Everything lies to one another as in the checkout, the workspace wherever it is among it.
  const down = path.relative(workspace, top);
  const within = !down.startsWith('..');
  const root = within ? path.join(into, down) : into;
  await mkdir(path.join(root, ...folder.split('/')), { recursive: true });
  const all = [...eventFiles, ...kept, ...others];
  if (!(await layOut(git, all, root))) return 'too much';
  for (const { path: file } of eventFiles) {
    for (const name of await namesIn(path.join(root, ...file.split('/')))) {
      const found = await keptAt(git, commit, path.posix.join(folder, name));
      if (found === null) continue; // Told when it is read.
      if (!(await layOut(git, found.files, root))) return 'too much';
      all.push(...found.files);
    }
  }
  return {
    workspace: within ? into : path.join(into, path.relative(top, workspace)),
    places: new Set(all.map((one) => one.path)),
  };
}

const folderOf = (place: string) => {
  const folder = path.posix.dirname(place);
  return folder === '.' ? '' : folder;
};

/** Results and rules that an event file names; none in one that is wrong, which is told when it is read. */
async function namesIn(eventFile: string): Promise<readonly string[]> {
  const file = await eventFrom(await readFile(eventFile, 'utf8'), path.basename(eventFile));
  if (file === null) return [];
  const { results, rules, categories = {} } = file;
  const named = [results, rules, ...Object.values(categories).map((one) => one.rules)];
  return [...new Set(named.filter((name) => name !== undefined))];
}

async function eventFrom(text: string, where: string): Promise<EventFile | null> {
  try {
    const { file, problems } = await eventFileFrom(parseJson(text, 'facts-wrong', where), where);
    return problems.length === 0 ? file : null;
  } catch (error) {
    if (error instanceof Problem) return null;
    throw error;
  }
}
