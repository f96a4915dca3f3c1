import { mkdtempSync, readFileSync, renameSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { filesChangedSince } from '../../src/action/changed-files.ts';
import { placeIn, repositoryAt } from '../../src/action/repository.ts';
import { altersTerms, touchedBy } from '../../src/action/scope.ts';
import { termsAt } from '../../src/action/terms.ts';
import { eventGiven } from '../../src/cli/event-plan.ts';
import { zip } from '../read/zip-bytes.ts';
import { eventFile, onPullRequest, onPush, Repository } from './repository.ts';

const numbers = ['3', '5', '7', '11'];

/** An event whose recordings nobody opens: only their names and that they differ matter here. */
function drawn(more: (repository: Repository) => void = () => {}, folder = 'round'): Repository {
  const repository = new Repository();
  const event = { ...eventFile, results: 'results.csv', riders: [{ number: '7', name: 'Seven' }] };
  repository.write(`${folder}/small.event.json`, JSON.stringify(event));
  repository.write(
    `${folder}/results.csv`,
    `number,place\n${numbers.map((one, i) => `${one},${i + 1}`).join('\n')}\n`,
  );
  for (const number of numbers) {
    repository.write(`${folder}/riders/${number}/primary.fit`, `recording of ${number}`);
    repository.write(`${folder}/riders/${number}/rider.json`, JSON.stringify({ massKg: 70 }));
  }
  repository.write(
    'rules/late-drift.rule.json',
    JSON.stringify({ id: 'late-drift', off: 'No spin-down here.' }),
  );
  repository.write('README.md', 'results');
  more(repository);
  repository.commit('event');
  return repository;
}

interface Asked {
  readonly event?: string;
  readonly rules?: string;
  /** By the base branch's terms. */
  readonly base?: boolean;
}

/** What is touched, as the action asks it; the reason where everything is. */
async function touched(
  repository: Repository,
  env: Record<string, string>,
  { event: named = 'round', rules, base = false }: Asked = {},
) {
  const workspace = repository.folder;
  const found = await repositoryAt(path.join(workspace, named), workspace, env);
  if (typeof found === 'string') return found;
  const own = () => mkdtempSync(path.join(tmpdir(), 'wattassay-scope-'));
  const terms = base
    ? await termsAt(found, found.base.target!, workspace, { event: named, rules, earlier: [] }, own())
    : undefined;
  if (typeof terms === 'string') return terms;
  const nowhere = { write: () => true };
  const io = { stdout: nowhere, stderr: nowhere, env: {}, cwd: workspace };
  const event = await eventGiven(io, named, { rules, terms: terms?.workspace });
  const place = rules === undefined ? null : placeIn(found.top, path.join(workspace, rules));
  const within = [placeIn(found.top, event.files.root) || '.', ...(place === null ? [] : [place])];
  const changes = await filesChangedSince(found.git, found.base.commit, within);
  const answer = await touchedBy(changes!, found, event, place, own());
  if (typeof answer === 'string') return answer;
  return {
    numbers: [...answer.numbers].join(' '),
    gone: answer.gone.join(' '),
    links: answer.links,
    ...(terms === undefined ? {} : { altered: altersTerms(changes!, found, event, terms.places) }),
  };
}

const usual = drawn();

async function proposed(change: (repository: Repository) => void, asked: Asked = {}) {
  const repository = new Repository(usual);
  const { base } = repository.propose(() => change(repository));
  return touched(repository, onPullRequest(repository, base), asked);
}

const only = (of: string, gone = '') => ({ numbers: of, gone, links: 0 });

describe('what a pull request touches', () => {
  it.each<[string, (repository: Repository) => void, ReturnType<typeof only>]>([
    ['nothing of the event', (r) => r.write('README.md', 'more'), only('')],
    ['a recording that came', (r) => r.write('round/riders/5/second.fit', 'new'), only('5')],
    ['a recording that changed', (r) => r.write('round/riders/5/primary.fit', 'new'), only('5')],
    ['a recording that went', (r) => r.remove('round/riders/5/primary.fit'), only('5')],
    ['all of a rider that went', (r) => r.remove('round/riders/5'), only('5')],
    ['facts', (r) => r.write('round/riders/11/rider.json', '{"massKg":71}'), only('11')],
    ['a profile that came', (r) => r.write('round/riders/11/profile.json', '{}'), only('11')],
    ['earlier rides', (r) => r.write('round/riders/3/history/1.fit', 'past'), only('3')],
    ['a file that nobody audits', (r) => r.write('round/riders/3/notes.txt', 'late'), only('')],
    [
      'a rename to another rider',
      (r) => renameSync(r.at('round/riders/5/primary.fit'), r.at('round/riders/7/second.fit')),
      only('5 7'),
    ],
    ['a second primary, which leaves a doubt', (r) => r.write('round/riders/5/primary.tcx', 'x'), only('5')],
    [
      'a place in the results',
      (r) => r.write('round/results.csv', 'number,place\n3,2\n5,1\n7,3\n11,4\n'),
      only('3 5'),
    ],
    [
      'a rider who left the results',
      (r) => r.write('round/results.csv', 'number,place\n3,1\n5,2\n7,3\n'),
      only('', '11'),
    ],
    [
      'a start for all, in the event file',
      (r) =>
        r.write(
          'round/small.event.json',
          JSON.stringify({ ...eventFile, results: 'results.csv', start: '2025-08-23T05:40:00Z' }),
        ),
      only('3 5 7 11'),
    ],
    [
      'a name of one, in the event file',
      (r) =>
        r.write(
          'round/small.event.json',
          JSON.stringify({ ...eventFile, results: 'results.csv', riders: [{ number: '7', name: 'Other' }] }),
        ),
      only('7'),
    ],
    [
      'files packed into a ZIP',
      (r) => {
        r.remove('round/riders/5');
        r.write('round/riders/5.zip', zip([{ name: 'primary.fit', bytes: new TextEncoder().encode('x') }]));
      },
      only('5'),
    ],
  ])('%s', async (_, change, expected) => {
    expect(await proposed(change)).toEqual(expected);
  });

  it('is everybody who is judged by rules that change, where those of the checkout judge', async () => {
    const change = (r: Repository) =>
      r.write('rules/late-drift.rule.json', JSON.stringify({ id: 'late-drift', off: 'Other.' }));
    expect(await proposed(change, { rules: 'rules' })).toEqual(only('3 5 7 11'));
    expect(await proposed(change)).toEqual(only(''));
    expect(await proposed(change, { rules: 'rules', base: true })).toEqual({ ...only(''), altered: true });
  });

  it('is not told by the change, where the base branch judges', async () => {
    const change = (r: Repository) => {
      r.write('round/small.event.json', JSON.stringify({ name: 'Loose', riders: [] }));
      r.write('round/results.csv', 'number\n3\n');
      r.write('round/riders/5/primary.fit', 'new');
    };
    expect(await proposed(change, { base: true })).toEqual({ ...only('5'), altered: true });
  });

  it('counts links, and follows none', async () => {
    const answer = await proposed((r) => {
      r.remove('round/riders/5/primary.fit');
      symlinkSync('/proc/self/environ', r.at('round/riders/5/primary.fit'));
      symlinkSync('/etc', r.at('round/riders/13'));
    });
    expect(answer).toEqual({ numbers: '5', gone: '', links: 2 });
  });

  it.skipIf(process.platform === 'win32')(
    'sees names that break lines, quote or begin with a dash',
    async () => {
      const answer = await proposed((r) => {
        r.write('round/riders/5/second\n::error::x "quoted" ü.fit', 'x');
        r.write('round/riders/7/-rf second.fit', 'x');
        r.write('round/riders/:(top)*/3-second.fit', 'x');
      });
      expect(answer).toEqual(only('3 5 7'));
    },
  );

  it('sees what other steps of the job put into the checkout', async () => {
    const repository = drawn((r) => r.write('.gitignore', '*.tcx\n'));
    const { base } = repository.propose(() => {});
    repository.write('round/riders/7/second.tcx', 'downloaded');
    repository.write('round/riders/11/primary.fit', 'downloaded');
    expect(await touched(repository, onPullRequest(repository, base))).toEqual(only('7 11'));
  });

  it('is asked of an event at the top of its repository as of any other', async () => {
    const repository = drawn(undefined, '.');
    const { base } = repository.propose(() => repository.write('riders/5/primary.fit', 'new'));
    for (const asked of [{ event: '.' }, { event: 'small.event.json', base: true }]) {
      expect(await touched(repository, onPullRequest(repository, base), asked)).toMatchObject({
        numbers: '5',
      });
    }
  });

  it('is told from the tip of a branch as from the commit that merges it', async () => {
    const repository = new Repository(usual);
    const { tip } = repository.propose(() => repository.write('round/riders/5/primary.fit', 'new'));
    repository.git('checkout', '--quiet', 'main');
    repository.write('round/riders/7/primary.fit', 'merged meanwhile');
    const base = repository.commit();
    repository.git('checkout', '--quiet', '--detach', tip);
    expect(await touched(repository, onPullRequest(repository, base))).toEqual(only('5'));
  });
});

describe('everything is audited', () => {
  it('where there is no repository', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-none-'));
    expect(await repositoryAt(folder, folder, { PATH: process.env.PATH, GITHUB_EVENT_NAME: 'push' })).toBe(
      'no repository',
    );
  });

  it('where whatever started the run changes nothing', async () => {
    const repository = new Repository(usual);
    const env = { ...onPush(repository, ''), GITHUB_EVENT_NAME: 'schedule' };
    expect(await touched(repository, env)).toBe('no change');
  });

  it('on a first push, and where what came before is not there', async () => {
    const repository = new Repository(usual);
    expect(await touched(repository, onPush(repository, '0'.repeat(40)))).toBe('first push');
    for (const before of ['1'.repeat(40), '', '--help', 'HEAD']) {
      expect(await touched(repository, onPush(repository, before))).toBe('no base');
    }
  });

  it('in a shallow checkout', async () => {
    const repository = new Repository(usual);
    const { base } = repository.propose(() => repository.write('round/riders/5/primary.fit', 'new'));
    repository.git('branch', 'merged');
    const shallow = new Repository();
    shallow.git('fetch', '--quiet', '--depth=1', `file://${repository.folder}`, 'merged');
    shallow.git('checkout', '--quiet', '--detach', 'FETCH_HEAD');
    expect(await touched(shallow, onPullRequest(shallow, base))).toBe('no base');
    shallow.git('fetch', '--quiet', '--depth=2', `file://${repository.folder}`, 'merged');
    expect(await touched(shallow, onPullRequest(shallow, base))).toEqual(only('5'));
  });

  it('where the workflow changes, the event is new, or could not be read before', async () => {
    expect(await proposed((r) => r.write('.github/workflows/audit.yml', 'on: push'))).toBe('workflow');
    expect(
      await proposed((r) => renameSync(r.at('round/small.event.json'), r.at('round/large.event.json'))),
    ).toBe('event new');
    const repository = new Repository(usual);
    const good = JSON.stringify({ ...eventFile, results: 'results.csv' });
    repository.write('round/small.event.json', '{ "name": ');
    repository.commit();
    const { base } = repository.propose(() => repository.write('round/small.event.json', good));
    expect(await touched(repository, onPullRequest(repository, base))).toBe('event was wrong');
  });

  it('but what a push changed, where that can be told', async () => {
    const repository = new Repository(usual);
    const before = repository.git('rev-parse', 'HEAD');
    repository.write('round/riders/11/primary.fit', 'new');
    repository.commit();
    expect(await touched(repository, onPush(repository, before))).toEqual(only('11'));
  });
});

describe('the base branch’s terms', () => {
  it('cannot be had where it does not hold them', async () => {
    const repository = new Repository(usual);
    const { base } = repository.propose(() => {
      repository.write('new/own.event.json', JSON.stringify(eventFile));
      repository.write('other-rules/late-drift.rule.json', '{}');
    });
    const env = onPullRequest(repository, base);
    expect(await touched(repository, env, { event: 'new', base: true })).toBe('event new');
    expect(await touched(repository, env, { rules: 'other-rules', base: true })).toBe('rules new');
  });

  it('are a bare folder where they were one, whatever event file comes', async () => {
    const repository = new Repository();
    repository.write('round/5-primary.fit', 'x');
    repository.commit();
    const { base } = repository.propose(() => {
      repository.write('round/loose.event.json', JSON.stringify({ name: 'Loose', riders: [] }));
      repository.write('round/6-primary.fit', 'x');
    });
    const answer = await touched(repository, onPullRequest(repository, base), { base: true });
    expect(answer).toEqual({ ...only('6'), altered: true });
  });

  it('hold the fingerprints beside the record of an earlier event, which nobody names', async () => {
    const repository = drawn((r) => {
      r.write('season/event.json', '{}');
      r.write('season/fingerprints.json', '{}');
      r.write('season/notes.txt', 'not asked for');
    });
    const { base } = repository.propose(() => repository.write('season/fingerprints.json', '{"other":1}'));
    const { folder } = repository;
    const found = await repositoryAt(path.join(folder, 'round'), folder, onPullRequest(repository, base));
    if (typeof found === 'string') throw new Error(found);
    const into = mkdtempSync(path.join(tmpdir(), 'wattassay-scope-'));
    const asked = { event: 'round', rules: undefined, earlier: ['season/event.json'] };
    const terms = await termsAt(found, found.base.target!, folder, asked, into);
    if (typeof terms === 'string') throw new Error(terms);
    const season = [...terms.places].filter((place) => place.startsWith('season/')).sort();
    expect(season).toEqual(['season/event.json', 'season/fingerprints.json']);
    const beside = path.join(terms.workspace, 'season', 'fingerprints.json');
    expect(readFileSync(beside, 'utf8')).toBe('{}');
  });

  it('hold no link', async () => {
    const repository = new Repository();
    repository.write('round/5-primary.fit', 'x');
    symlinkSync('/proc/self/environ', repository.at('round/linked.event.json'));
    repository.commit();
    const { base } = repository.propose(() => repository.write('round/6-primary.fit', 'x'));
    const answer = await touched(repository, onPullRequest(repository, base), { base: true });
    expect(answer).toEqual({ ...only('6'), altered: false });
  });
});
