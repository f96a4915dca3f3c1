import { existsSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { inputsFrom } from '../../src/action/inputs.ts';
import { Problem } from '../../src/problem.ts';
import { grades } from '../../src/types.ts';
import { run as runCli } from '../cli/run.ts';
import { eventFile, onPullRequest, onPush, Repository, smallEvent } from './repository.ts';
import { actionFile, commandsIn, type Run, runAction } from './runner.ts';

const usual = smallEvent();
/** Whole programs are started, beside whatever else the machine does, ms. */
const timeout = 90_000;

/** Everything that a run wrote, file by file. */
function written(workspace: string, folder = 'wattassay-report'): Map<string, string> {
  const root = path.join(workspace, folder);
  const files = readdirSync(root, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  return new Map(
    files.map((one) => {
      const place = path.join(one.parentPath, one.name);
      const text = readFileSync(place, 'utf8');
      // By its key a program knows what it made itself: the sources and what is built of them have two.
      const said = one.name === 'row.json' ? text.replace(/^\{"key":"[0-9a-f]{64}"/, '{"key":"…"') : text;
      return [path.relative(root, place).replaceAll('\\', '/'), said];
    }),
  );
}

/** A pull request as GitHub tells of one from a fork: all of it is the words of whoever opened it. */
const fork = {
  title: '::error::opened by a stranger',
  head: {
    sha: '3'.repeat(40),
    ref: 'opened by$(id)::error::x',
    repo: { fork: true, full_name: 'stranger/results' },
  },
};

const names = ({ commands }: Run) => commands.map(({ name }) => name);

describe('action.yml', () => {
  it('names a Node that runners have, and the bundle', () => {
    expect(actionFile.runs).toEqual({ using: 'node24', main: 'dist/action.js' });
    expect(existsSync(actionFile.runs.main)).toBe(true);
  });

  it('accuses nobody in public unless it is told to, and lets no change judge itself', () => {
    expect(actionFile.inputs['fail-on']?.default).toBe('never');
    expect(actionFile.inputs.redact?.default).toBe('true');
    expect(actionFile.inputs['terms-from']?.default).toBe('base');
  });

  it('describes every input and output, and declares exactly those that are used', () => {
    const items = { ...actionFile.inputs, ...actionFile.outputs };
    expect(Object.entries(items).filter(([, { description }]) => !description?.endsWith('.'))).toEqual([]);
    const asked = readFileSync('src/action/inputs.ts', 'utf8').matchAll(
      /\b(?:text|needed|choice|yes|getMultilineInput)\('([\w-]+)'/g,
    );
    expect([...new Set([...asked].map(([, name]) => name))].sort()).toEqual(
      Object.keys(actionFile.inputs).sort(),
    );
    const set = readFileSync('src/action.ts', 'utf8').matchAll(/\bsetOutput\('?([\w-]+)/g);
    const outputs = [...set].flatMap(([, name]) => [name!, ...(name === 'grade' ? grades : [])]);
    expect([...new Set(outputs)].sort()).toEqual(Object.keys(actionFile.outputs).sort());
  });
});

describe('on a pull request, from a fork whose owner named its branch', { timeout }, () => {
  const rider = { number: '14', name: 'Jane Oyster', id: 'LIC-998877' };
  const repository = new Repository(usual);
  repository.write(
    'round/small.event.json',
    JSON.stringify({ ...eventFile, riders: [rider, { number: '5' }] }),
  );
  repository.write('round/riders/14/rider.json', JSON.stringify({ massKg: 91.3729 }));
  repository.bring('riders/14/second.fit', 'round/riders/14/jane-oyster-second.fit');
  repository.remove('round/riders/14/second.fit');
  repository.commit();
  const { base } = repository.propose(() => {
    repository.bring('riders/25/primary.fit', 'round/riders/14/oyster-primary.fit');
    repository.bring('riders/14/primary.fit', 'round/riders/14/oyster-primary.fit');
    repository.remove('round/riders/14/primary.fit');
    repository.write('rules/late-drift.rule.json', JSON.stringify({ id: 'late-drift', off: 'Let me pass.' }));
    repository.write(
      'round/small.event.json',
      JSON.stringify({ ...eventFile, rules: '../rules', riders: [rider, { number: '5' }] }),
    );
  });
  const run = runAction(repository.folder, { event: 'round' }, onPullRequest(repository, base, fork));

  it('audits what it touches, by the base branch’s rules, and fails nothing', () => {
    expect(run.status).toBe(0);
    expect(run.outputs).toEqual({
      audited: '1',
      grade: 'refer',
      clear: '0',
      incomplete: '0',
      query: '0',
      refer: '1',
      report: 'wattassay-report/overview.html',
      json: 'wattassay-report/event.json',
    });
    expect(Object.keys(run.outputs).sort()).toEqual(Object.keys(actionFile.outputs).sort());
    expect(run.summary).toContain(`since commit ${base.slice(0, 12)} was audited: 1 of`);
    expect(run.summary).toContain('of the base branch');
    expect(run.summary).toContain('This change would alter them');
    expect(run.summary).toContain('The difference grows through the ride');
    expect(run.summary).toMatch(/checksum `[0-9a-f]{64}`/);
    expect(run.summary).toContain('there are no fingerprints');
  });

  it('marks the submission with a question, on no file whose name may name somebody', () => {
    expect(run.commands).toEqual([
      {
        name: 'warning',
        message: expect.stringMatching(/^Submission 14: refer\. The difference grows .* not a verdict/),
        properties: { title: 'wattassay' },
      },
    ]);
  });

  it('names nobody and tells nobody’s mass, in whatever it writes', () => {
    const files = written(repository.folder);
    expect([...files.keys()].sort()).toEqual([
      'event.json',
      'overview.html',
      'reports/rider-14/letter.txt',
      'reports/rider-14/report.html',
      'reports/rider-14/report.json',
      'reports/rider-14/row.json',
      'summary.csv',
      'summary.md',
    ]);
    const shown = [run.log, run.summary, JSON.stringify(run.outputs), ...files.values()];
    for (const text of shown) expect(text).not.toMatch(/oyster|998877|91\.37|opened by/i);
    const report = JSON.parse(files.get('reports/rider-14/report.json')!);
    expect(report.settings.redacted).toBe(true);
    expect(report.charts.find((chart: { kind: string }) => chart.kind === 'traces').heartRate).toBeNull();
    for (const { unit, value } of report.measurements) {
      if (['bpm', 'kg', 'W/kg'].includes(unit)) expect(value).toBeNull();
    }
  });

  it('refuses to write where something lies already: it may have been handed in', () => {
    const again = runAction(repository.folder, { event: 'round' }, onPullRequest(repository, base));
    expect(again.status).toBe(1);
    expect(again.log).toContain('may have been handed in');
    expect(again.outputs).toEqual({});
  });

  it('that touches nothing audits nothing', () => {
    const other = new Repository(usual);
    const proposal = other.propose(() => other.write('README.md', 'words'));
    const none = runAction(other.folder, { event: 'round' }, onPullRequest(other, proposal.base));
    expect(none.status).toBe(0);
    expect(none.commands).toEqual([]);
    expect(none.outputs).toMatchObject({ audited: '0', grade: '' });
    expect(none.summary).toContain('No submission changed');
  });
});

describe('elsewhere', { timeout }, () => {
  const whole = new Repository(usual);
  const run = runAction(
    whole.folder,
    { event: 'round/small.event.json', 'fail-on': 'refer' },
    onPush(whole, '0'.repeat(40)),
  );

  it('finds what the command line finds, byte for byte, and fails the job from the level that it is told', async () => {
    expect(run.status).toBe(1);
    expect(names(run)).toEqual(['warning', 'notice', 'error']);
    expect(run.commands.at(0)?.properties.file).toBe('round/riders/14/primary.fit');
    expect(run.commands.at(-1)?.message).toContain('not a verdict');
    expect(run.outputs).toMatchObject({ audited: '3', grade: 'refer' });
    expect(run.summary).toContain('first push');
    expect(run.summary).toContain('xychart-beta');

    await runCli(['event', 'round', '--out', 'by-hand', '--redact', '--fail-on', 'never'], {
      cwd: whole.folder,
    });
    const [ours, theirs] = [written(whole.folder), written(whole.folder, 'by-hand')];
    expect([...ours.keys()].sort()).toEqual([...theirs.keys()].sort());
    const other = [...ours].filter(([name, text]) => text !== theirs.get(name)).map(([name]) => name);
    expect(other).toEqual([]);
  });

  it('sees by the base branch’s fingerprints that another rider handed a recording in', () => {
    const repository = new Repository(usual);
    const prints = readFileSync(whole.at('wattassay-report/fingerprints.json'), 'utf8');
    repository.write('round/fingerprints.json', prints);
    repository.commit();
    const { base } = repository.propose(() => {
      repository.bring('riders/5/primary.fit', 'round/riders/41/primary.fit');
      repository.write('round/fingerprints.json', JSON.stringify({ ...JSON.parse(prints), recordings: [] }));
    });
    const { outputs, summary } = runAction(
      repository.folder,
      { event: 'round' },
      onPullRequest(repository, base),
    );
    expect(outputs).toMatchObject({ audited: '1' });
    expect(summary).not.toContain('there are no fingerprints');
    expect(summary).toMatch(/### Seen only beside the other submissions\n\n- .*\b41\b.*\b5\b/);
  });

  it('audits parts that merge to the whole', async () => {
    const repository = new Repository(usual);
    for (const part of ['1', '2']) {
      const run = runAction(
        repository.folder,
        { event: 'round', part: `${part}/2`, 'report-folder': `part-${part}` },
        onPush(repository, '0'.repeat(40)),
      );
      expect(run.status).toBe(0);
      expect(run.outputs).toMatchObject({ report: '', json: `part-${part}/event.json` });
    }
    const merge = ['merge', 'round', 'part-1', 'part-2', '--out', 'whole', '--redact', '--fail-on', 'never'];
    expect((await runCli(merge, { cwd: repository.folder })).status).toBe(0);
    expect(JSON.parse(written(repository.folder, 'whole').get('event.json')!).rows).toHaveLength(3);
  });
});

describe('nothing that a stranger wrote', { timeout }, () => {
  const hostile =
    '##[add-mask]e\n::error::x\r::warning::y\u2028::notice::z <img src=x onerror=alert(1)> [a](http://b) @all | ```';

  it('becomes a command, HTML or Markdown', () => {
    const repository = new Repository(usual);
    repository.write(
      'round/small.event.json',
      JSON.stringify({
        ...eventFile,
        name: hostile,
        rules: 'rules',
        categories: { [hostile.slice(0, 100)]: { secondRecordings: { top: 3 } } },
        riders: [
          { number: '14', name: hostile, category: hostile.slice(0, 100) },
          { number: '33', name: '"]\n  bar [9]', category: hostile.slice(0, 100) },
          { number: '60', primary: 'bomb.fit.gz' },
        ],
      }),
    );
    repository.write(
      'round/rules/late-drift.rule.json',
      JSON.stringify({ id: 'late-drift', title: hostile }),
    );
    repository.write(
      'round/rules/over-smoothed.rule.json',
      JSON.stringify({ id: 'over-smoothed', off: hostile }),
    );
    repository.write('round/bomb.fit.gz', gzipSync(new Uint8Array(200 * 1024 * 1024)));
    repository.bring('riders/5/primary.fit', 'round/riders/5/second.fit');
    repository.commit();
    const run = runAction(
      repository.folder,
      { event: 'round', redact: 'false', 'terms-from': 'head' },
      onPush(repository, '0'.repeat(40)),
    );
    expect(run.status).toBe(0);
    expect(new Set(names(run))).toEqual(new Set(['warning', 'notice']));
    for (const { message } of run.commands) expect(message).toMatch(/^Submission \d+: /);
    expect(run.summary).not.toMatch(/<img|(?<!\\)\[a\]|@all|\u2028|^::|##\[/m);
    expect(run.summary).toContain('&lt;img');
    for (const [, drawing] of run.summary.matchAll(/```mermaid\n([\s\S]*?)\n```/g)) {
      expect(drawing).toMatch(/^[\w%{}":#,.\- \n[\]>]+$/);
    }
    expect(run.summary).toContain('What differs from the shipped rules');
    expect(run.summary).toMatch(/Not audited: 60/);
  });

  it('is quoted where the event cannot be planned', () => {
    const repository = new Repository(usual);
    repository.write('round/riders/14/rider.json', JSON.stringify({ massKg: 9137, name: hostile }));
    repository.commit();
    const run = runAction(repository.folder, { event: 'round' }, onPush(repository, ''));
    expect(run.status).toBe(1);
    expect(names(run)).toEqual(['error']);
    expect(run.outputs).toEqual({});
    expect(run.summary).toBe('');
    expect(run.log).toContain('riders/14/rider.json: what stands there is not as it should be.');
    expect(run.log).not.toMatch(/9137|onerror/);
    const open = runAction(
      repository.folder,
      { event: 'round', redact: 'false', 'report-folder': 'other' },
      onPush(repository, ''),
    );
    expect(open.log).toContain('9137');
    expect(names(open)).toEqual(['error']);
  });

  it.each([
    ['../round', 'outside the checkout'],
    [path.resolve('package.json'), 'outside the checkout'],
    ['-rf', 'input event: there is no “-rf” in the checkout.'],
    ['::error::x\n::set-env name=A::b', 'in the checkout'],
    ['##[add-mask]e', 'in the checkout'],
  ])('leads elsewhere: %j', (event, why) => {
    const run = runAction(usual.folder, { event, 'report-folder': `out-${event.length}` });
    expect(run.status).toBe(1);
    expect(run.log).toContain(why);
    expect(names(run)).toEqual(['error']);
  });

  it.skipIf(process.platform === 'win32')('is followed as a link, for reading or writing', () => {
    const repository = new Repository(usual);
    const elsewhere = mkdtempSync(path.join(tmpdir(), 'wattassay-elsewhere-'));
    writeFileSync(path.join(elsewhere, 'a.event.json'), JSON.stringify({ name: 'secret' }));
    symlinkSync(elsewhere, repository.at('folder'));
    symlinkSync(path.join(elsewhere, 'a.event.json'), repository.at('linked.event.json'));
    for (const inputs of [
      { event: 'folder' },
      { event: 'linked.event.json' },
      { event: 'round', rules: 'folder' },
      { event: 'round', earlier: 'folder/fingerprints.json' },
      { event: 'round', 'report-folder': 'folder/reports' },
    ]) {
      const run = runAction(repository.folder, inputs);
      expect(run.status).toBe(1);
      expect(run.log).toContain('a link');
      expect(run.log).not.toContain('secret');
    }
    expect(existsSync(path.join(elsewhere, 'reports'))).toBe(false);
  });

  it('is taken for an input’s value', () => {
    const given = (inputs: Readonly<Record<string, string>>) => ({
      getInput: (name: string) => inputs[name] ?? actionFile.inputs[name]?.default ?? '',
      getMultilineInput: () => [],
    });
    expect(inputsFrom(given({ event: 'round' }))).toMatchObject({ event: 'round', redact: true });
    for (const [name, value] of [
      ['changed-only', 'maybe'],
      ['terms-from', 'main'],
      ['fail-on', 'always'],
      ['redact', ''],
      ['part', '3/2'],
      ['event', ''],
      ['report-folder', ''],
    ] as const) {
      expect(() => inputsFrom(given({ event: 'round', [name]: value })), name).toThrow(Problem);
    }
    const run = runAction(usual.folder, { event: 'round', redact: '' });
    expect(run.status).toBe(1);
    expect(names(run)).toEqual(['error']);
    expect(run.outputs).toEqual({});
  });
});

describe('the runner’s parser, as it is ported here', () => {
  const said = (log: string) => commandsIn(log).map(({ name, message }) => `${name} ${message}`);

  it('takes both kinds of command, wherever a runner does', () => {
    expect(commandsIn('  ::error file=a%2Cb,line=1::text')).toEqual([
      { name: 'error', message: 'text', properties: { file: 'a,b', line: '1' } },
    ]);
    expect(said('a rider called ##[add-mask]e')).toEqual(['add-mask e']);
    expect(said('a :: b, [c], ## d')).toEqual([]);
  });

  it('takes none while they are stopped', () => {
    expect(said('::stop-commands::t\n::error::a\n##[error]b\n::t::\n::notice::c')).toEqual(['notice c']);
  });
});
