import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';

const samples = path.resolve('samples/event');
/** Riders of the sample event that a small one has; nobody of them needs long to be audited. */
const few = ['5', '14', '33'];

/** A repository as an organiser has it, and what happens to it. */
export class Repository {
  readonly folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'wattassay-repository-')));

  /** @param like another repository, which is copied: cheaper than to make it anew */
  constructor(like?: Repository) {
    if (like === undefined) this.git('init', '--quiet', '--template=', '--initial-branch=main');
    else cpSync(like.folder, this.folder, { recursive: true, preserveTimestamps: true });
  }

  git(...args: readonly string[]): string {
    const who = ['-c', 'user.name=A', '-c', 'user.email=a@example.org', '-c', 'commit.gpgsign=false'];
    return execFileSync('git', [...who, ...args], { cwd: this.folder, encoding: 'utf8' }).trim();
  }

  at(name: string): string {
    return path.join(this.folder, ...name.split('/'));
  }

  write(name: string, content: string | Uint8Array): void {
    mkdirSync(path.dirname(this.at(name)), { recursive: true });
    writeFileSync(this.at(name), content);
  }

  remove(name: string): void {
    rmSync(this.at(name), { recursive: true });
  }

  /** A file of the sample event, under a name of its own. */
  bring(sample: string, name: string): void {
    mkdirSync(path.dirname(this.at(name)), { recursive: true });
    cpSync(path.join(samples, ...sample.split('/')), this.at(name), { recursive: true });
  }

  commit(message = 'change'): string {
    this.git('add', '--all', '--force');
    this.git('commit', '--quiet', '--allow-empty', '--message', message);
    return this.git('rev-parse', 'HEAD');
  }

  /** What GitHub makes of a proposal, checked out: a commit of the base and of the tip of its branch. */
  propose(change: () => void): { readonly base: string; readonly tip: string } {
    const base = this.git('rev-parse', 'HEAD');
    this.git('checkout', '--quiet', '--detach');
    change();
    const tip = this.commit();
    const merged = this.git('commit-tree', 'HEAD^{tree}', '-p', base, '-p', tip, '-m', 'merge');
    this.git('update-ref', '--no-deref', 'HEAD', merged);
    return { base, tip };
  }
}

/** An event of three riders in `round`, committed. */
export function smallEvent(more: (repository: Repository) => void = () => {}): Repository {
  const repository = new Repository();
  for (const rider of few) repository.bring(`riders/${rider}`, `round/riders/${rider}`);
  repository.write('round/small.event.json', JSON.stringify(eventFile));
  more(repository);
  repository.commit('event');
  return repository;
}

export const eventFile = {
  name: 'Round 3',
  start: '2025-08-23T05:48:00Z',
  finish: '2025-08-23T06:33:00Z',
  submissions: 'riders',
};

/** The environment of a run on a pull request, as it stands after a checkout of its merge commit. */
export function onPullRequest(repository: Repository, base: string, more = {}): Record<string, string> {
  return started(repository, 'pull_request', {
    GITHUB_REF: 'refs/pull/7/merge',
    payload: { pull_request: { ...more, base: { sha: base } } },
  });
}

export function onPush(repository: Repository, before: string): Record<string, string> {
  return started(repository, 'push', { GITHUB_REF: 'refs/heads/main', payload: { before } });
}

function started(
  repository: Repository,
  event: string,
  { GITHUB_REF, payload }: { GITHUB_REF: string; payload: unknown },
): Record<string, string> {
  const file = path.join(mkdtempSync(path.join(tmpdir(), 'wattassay-payload-')), 'event.json');
  writeFileSync(file, JSON.stringify(payload));
  return {
    PATH: process.env.PATH ?? '',
    GITHUB_EVENT_NAME: event,
    GITHUB_EVENT_PATH: file,
    GITHUB_REF,
    GITHUB_SHA: repository.git('rev-parse', 'HEAD'),
  };
}
