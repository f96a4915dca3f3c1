import { limits, readFileSafely } from '../files/index.ts';
import type { AllBecause } from '../types.ts';
import { type Git, lineFrom } from './git.ts';

/** What the run is compared with. */
export interface Base {
  /** The commit whose files the checkout's are compared with. */
  readonly commit: string;
  /** The tip of the branch that the change is meant for; null where the change is there already, as on a push. */
  readonly target: string | null;
}

type Env = Readonly<Record<string, string | undefined>>;

/** What a workflow was started with; everything in it is a stranger's. */
interface Payload {
  readonly before?: unknown;
  readonly pull_request?: { readonly base?: { readonly sha?: unknown } };
  readonly merge_group?: { readonly base_sha?: unknown };
}

/** Bytes of a payload: GitHub sends none of more than 25 MB. */
const payloadBytes = 100 * limits.factsBytes;

/**
 * The commit that a run is to be compared with, from what started it and from the checkout alone. Nothing is
 * fetched: where the commit is not there, nothing is known.
 */
export async function baseOf(git: Git, env: Env): Promise<Base | AllBecause> {
  const line = await lineFrom(git, 'rev-list', '--parents', '--max-count=1', 'HEAD', '--');
  if (line === null) return 'no repository';
  const [head = '', ...parents] = line.split(' ');
  const payload = await payloadOf(env);
  switch (env.GITHUB_EVENT_NAME) {
    case 'pull_request':
      return ofMerge(head, parents, env) ?? (await ofBranch(git, payload.pull_request?.base?.sha));
    case 'push':
      return ofPush(git, payload.before);
    case 'merge_group': {
      const base = await known(git, payload.merge_group?.base_sha);
      return base === null ? 'no base' : { commit: base, target: base };
    }
    default:
      return 'no change';
  }
}

/**
 * The commit that GitHub makes of a pull request and its base: the first parent is the base branch. In a shallow
 * checkout, a commit whose parents are not there has none.
 */
function ofMerge(
  head: string,
  parents: readonly string[],
  { GITHUB_SHA: sha, GITHUB_REF: ref }: Env,
): Base | null {
  const isMerge = sha === head && /^refs\/pull\/\d+\/merge$/.test(ref ?? '');
  return isMerge && parents.length === 2 ? { commit: parents[0]!, target: parents[0]! } : null;
}

/** The tip of the pull request itself: what it changes is told from where it left its base. */
async function ofBranch(git: Git, sha: unknown): Promise<Base | AllBecause> {
  const target = await known(git, sha);
  const fork = target === null ? null : await lineFrom(git, 'merge-base', target, 'HEAD');
  return target === null || fork === null ? 'no base' : { commit: fork, target };
}

async function ofPush(git: Git, before: unknown): Promise<Base | AllBecause> {
  if (typeof before === 'string' && /^0+$/.test(before)) return 'first push';
  const base = await known(git, before);
  return base === null ? 'no base' : { commit: base, target: null };
}

async function known(git: Git, sha: unknown): Promise<string | null> {
  return typeof sha === 'string' && /^[0-9a-f]{40}([0-9a-f]{24})?$/.test(sha) ? commit(git, sha) : null;
}

/** The full name of a commit that is there, with its files. */
function commit(git: Git, name: string): Promise<string | null> {
  return lineFrom(git, 'rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`);
}

async function payloadOf({ GITHUB_EVENT_PATH: file }: Env): Promise<Payload> {
  if (file === undefined || file === '') return {};
  try {
    const { bytes } = await readFileSafely(file, { most: payloadBytes });
    const value: unknown = JSON.parse(new TextDecoder().decode(bytes));
    return typeof value === 'object' && value !== null ? value : {};
  } catch {
    return {}; // Then nothing is known of what started the run.
  }
}
