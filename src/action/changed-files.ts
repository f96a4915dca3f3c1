import { type Git, partsOf } from './git.ts';

/** A file that is not as it was. */
export interface FileChange {
  /** From the top folder of the repository, with `/`. */
  readonly path: string;
  /** The object that held it before; null: it was not there, or was no ordinary file. */
  readonly before: string | null;
  /** What lies there now. */
  readonly now: 'file' | 'link' | 'nothing' | 'other';
}

const ordinary = /^100/;
const link = '120000';

/**
 * Every file that differs between a commit and what lies in the checkout now, also what other steps of the job
 * put there; a file that was renamed is one that went and one that came. Null when git cannot tell.
 *
 * @param git in the top folder of the repository
 * @param folders from there: where files that were never committed count
 */
export async function filesChangedSince(
  git: Git,
  commit: string,
  folders: readonly string[],
): Promise<readonly FileChange[] | null> {
  const plainly = ['--no-renames', '--no-ext-diff', '--no-textconv', '--ignore-submodules=dirty'];
  const known = await git.ask('diff', '--raw', '-z', '--no-abbrev', ...plainly, commit, '--');
  const others = await git.ask('ls-files', '--others', '-z', '--', ...folders);
  return known === null || others === null ? null : [...changesIn(known), ...newIn(others)];
}

/** `:mode mode object object letter`, then the name. */
function changesIn(answer: Buffer): FileChange[] {
  const parts = partsOf(answer);
  return parts.flatMap((part, at) => {
    if (at % 2 === 1) return [];
    const [before = '', now = '', object = ''] = part.slice(1).split(' ');
    return {
      path: parts[at + 1]!,
      before: ordinary.test(before) ? object : null,
      now: kindOf(now),
    };
  });
}

function kindOf(mode: string): FileChange['now'] {
  if (ordinary.test(mode)) return 'file';
  if (mode === link) return 'link';
  return /^0+$/.test(mode) ? 'nothing' : 'other';
}

function newIn(answer: Buffer): FileChange[] {
  // A repository inside this one is named as a folder.
  return partsOf(answer).map((path) => ({ path: path.replace(/\/$/, ''), before: null, now: 'file' }));
}
