import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { fillable } from '../../src/report/words/fill.ts';
import type { Report } from '../../src/types.ts';
import { scratch } from '../files/scratch.ts';
import { pairOf, run, sample } from './run.ts';

const primary = sample('riders', '28', 'primary.fit');
const json = async (argv: readonly string[]): Promise<Report> =>
  JSON.parse((await run(['audit', ...argv, '--format', 'json'])).out);

describe('audit', () => {
  it('prints a report that begins with the grade and its reach', async () => {
    const { status, out, err } = await run(['audit', ...pairOf('11')]);
    expect(status).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Clear\. .*\n\d+ of \d+\schecks could be judged/);
    expect(out).not.toContain('\u001b');
  });

  it('exits with 1 when the submission reaches the level that fails', async () => {
    const status = async (...more: string[]) => (await run(['audit', primary, ...more])).status;
    expect(await status()).toBe(0);
    expect(await status('--fail-on', 'query')).toBe(1);
    expect(await status('--fail-on', 'note')).toBe(1);
    expect((await run(['audit', ...pairOf('14')])).status).toBe(1);
    expect((await run(['audit', ...pairOf('14'), '--fail-on', 'never'])).status).toBe(0);
  });

  it('exits with 1 when something that the event requires is missing', async () => {
    const argv = [sample('riders', '23', 'primary.fit'), '--require', 'power,second recording', '--fail-on'];
    expect((await run(['audit', ...argv, 'refer'])).status).toBe(1);
    expect((await run(['audit', primary, '--require', 'history'])).status).toBe(1);
    expect((await run(['audit', primary, '--require', 'history', '--fail-on', 'never'])).status).toBe(0);
    expect((await json([primary, '--require', 'history'])).missing).toEqual(['history']);
  });

  it('makes a report that is incomplete when a second recording cannot be read', async () => {
    const folder = scratch();
    writeFileSync(path.join(folder, 'torn.fit'), 'no recording');
    const argv = [
      sample('riders', '11', 'primary.fit'),
      '--second',
      path.join(folder, 'pedals.fit'),
      '--second',
      path.join(folder, 'torn.fit'),
    ];
    const report = await json(argv);
    expect(report.grade).toBe('incomplete');
    expect(report.submission.unreadable.map(({ name }) => name)).toEqual(['pedals.fit', 'torn.fit']);
    expect(report.submission.unreadable[0]!.why).toBe('pedals.fit: there is no such file.');
    expect(JSON.stringify(report)).not.toContain(folder);
    const { status, out } = await run(['audit', ...argv], { columns: 100 });
    expect(status).toBe(1);
    expect(out).toMatch(/^A second recording could not be read\. pedals\.fit: there is no such file\./m);
    expect(out).toContain('Ask for “torn.fit” again.');
    expect(out).toContain('The second recording could not be read. Is the second recording of this ride');
    expect(out).not.toContain('No second recording was handed in');
  });

  it('makes no report when the primary cannot be read', async () => {
    const folder = scratch();
    for (const [name, content] of [
      ['empty.fit', ''],
      ['text.fit', 'hello'],
      ['cut.fit', readFileSync(primary).subarray(0, 20)],
    ] as const) {
      writeFileSync(path.join(folder, name), content);
      const { status, out, err } = await run(['audit', name, '--out', 'report.html'], { cwd: folder });
      expect(status).toBe(2);
      expect(out).toBe('');
      expect(err).toMatch(new RegExp(`^error: ${name}: .+\\.\\n$`));
    }
    expect(existsSync(path.join(folder, 'report.html'))).toBe(false);
    expect((await run(['audit', 'emty.fit'], { cwd: folder })).err).toBe(
      'error: emty.fit: there is no such file. Did you mean empty.fit?\n',
    );
    expect((await run(['audit', '.'], { cwd: folder })).err).toContain(
      'it is a folder, and a file is wanted',
    );
  });

  it('writes the form that each ending chooses, and says so beside the grade', async () => {
    const folder = scratch();
    const outs = ['r.json', 'r.html', 'r.md', 'r.csv', 'r.txt'];
    const { status, out, err } = await run(['audit', primary, ...outs.flatMap((file) => ['--out', file])], {
      cwd: folder,
    });
    expect(status).toBe(0);
    expect(out).toBe('');
    expect(err.split('\n').slice(0, 5)).toEqual(outs.map((file) => `written: ${file}`));
    expect(err).toMatch(/Query\. \d+ of \d+\schecks could be judged/);
    expect(readdirSync(folder).sort()).toEqual([...outs].sort());
    const begins = (file: string) => readFileSync(path.join(folder, file), 'utf8').slice(0, 15);
    expect(begins('r.html')).toBe('<!doctype html>');
    expect(begins('r.json')).toMatch(/^\{/);
    expect(begins('r.txt')).toMatch(/^Query\./);
    const printed = await run(['audit', primary, '--format', 'json', '--out', 'again.json'], { cwd: folder });
    expect(printed.out).toBe(readFileSync(path.join(folder, 'r.json'), 'utf8'));
    expect(readFileSync(path.join(folder, 'again.json'), 'utf8')).toBe(printed.out);
  });

  it('writes a letter in the organiser’s words, and every chart as a file of its own', async () => {
    const folder = scratch();
    const words = ['--to', 'R. Rider', '--organiser', 'The jury', '--event', 'Round 3', '--due', 'Friday'];
    const argv = ['audit', ...pairOf('14'), '--letter', 'l.txt', '--charts', 'charts', ...words];
    const { err } = await run([...argv, '--reply', 'jury@example.org', '--note', 'Ride on.'], {
      cwd: folder,
    });
    const letter = readFileSync(path.join(folder, 'l.txt'), 'utf8');
    expect(letter).toMatch(/^Dear R\. Rider,\n\nYour result in Round 3 /);
    expect(letter.replaceAll('\n', ' ')).toContain('send what you can to jury@example.org by Friday,');
    expect(letter).toMatch(/Ride on\.\n\nKind regards\nThe jury\n$/);
    const charts = readdirSync(path.join(folder, 'charts'));
    expect(charts).toContain('01-traces.svg');
    expect(err).toContain(`written: ${charts.length} charts into charts\n`);
    for (const name of charts) {
      expect(readFileSync(path.join(folder, 'charts', name), 'utf8')).toMatch(/^<\?xml [^>]+>\n<svg /);
    }
    const redacted = await run([...argv, '--redact'], { cwd: folder });
    expect(redacted.status).toBe(1);
    expect(readFileSync(path.join(folder, 'l.txt'), 'utf8')).toMatch(/^Dear rider,/);
    expect(await run(['audit', primary, ...words])).toMatchObject({ status: 2, out: '' });
  });

  it('says where a report could not be written, and prints none', async () => {
    const { status, out, err } = await run(['audit', primary, '--out', 'none/r.html', '--format', 'text'], {
      cwd: scratch(),
    });
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(/its folder is not there\. Make the folder .*none first\./);
  });

  it('takes facts as options as from files, options first', async () => {
    const folder = scratch();
    const device = { name: 'primary', place: 'hub', sides: 2, tolerancePercent: 3 };
    writeFileSync(
      path.join(folder, 'rider.json'),
      JSON.stringify({ massKg: 80, recordClass: 'open', devices: [device, { ...device, name: 'second' }] }),
    );
    const report = await json([
      primary,
      '--rider',
      path.join(folder, 'rider.json'),
      '--mass',
      '68',
      '--device',
      'primary=trainer,2,1.5',
      '--start',
      '2026-03-14T19:00:00+01:00',
      '--finish',
      '2026-03-14T19:45:00+01:00',
      '--kind',
      'race',
      '--require',
      'power, cadence',
      '--require',
      'heartRate',
    ]);
    expect(report.settings).toEqual({
      rider: {
        massKg: 68,
        recordClass: 'open',
        devices: [
          { ...device, name: 'second' },
          { name: 'primary', place: 'trainer', sides: 2, tolerancePercent: 1.5 },
        ],
      },
      race: {
        start: '2026-03-14T19:00:00+01:00',
        finish: '2026-03-14T19:45:00+01:00',
        kind: 'race',
        required: ['power', 'cadence', 'heartRate'],
      },
      redacted: false,
    });
    expect(report.inputs.map(({ role }) => role)).toEqual(['primary', 'rider']);
  });

  it.each([
    [['--mass', '5'], 'error: options › massKg: 5 is out of range: it must be at least 25: body mass in kg.'],
    [
      ['--device', 'trainer'],
      'error: --device: “trainer” does not describe a meter. Give its recording, place, sides and tolerance in per cent, like primary=trainer,2,1.5.',
    ],
    [
      ['--device', 'primary=trianer,2,1'],
      'error: options › devices › 1 › place: "trianer" stands where one of these must: crank, pedal, hub, trainer. Did you mean “trainer”?',
    ],
    [
      ['--device', 'primary=trainer,two,1'],
      'error: options › devices › 1 › sides: null stands where one of these must: 1, 2.',
    ],
    [['--start', 'tomorrow'], 'error: options › start: "tomorrow" does not fit: date and time'],
    [['--require', 'luck'], 'error: options › required › 1: "luck" stands where one of these must:'],
    [['--rider', 'samples/README.md'], 'error: samples/README.md › line 1: this is not JSON.'],
    [['--rider', 'none.json'], 'error: none.json: there is no such file.'],
    [['--history', 'none'], 'error: none: there is no such file.'],
    [['--history', 'package.json'], 'error: package.json'],
    [['--rules', 'none'], 'error: none: there is no such folder.'],
    [['--rules', 'samples'], 'error: samples: there is no rule file in this folder.'],
  ])('refuses %j', async (argv, said) => {
    const { status, out, err } = await run(['audit', primary, ...argv]);
    expect(status).toBe(2);
    expect(out).toBe('');
    // A message may show a path as the system writes it.
    expect(err.replaceAll(path.resolve('none'), 'none')).toContain(said);
  });

  it('judges by an event’s own rules, and states them', async () => {
    const folder = scratch();
    const text = '{ "id": "dead-cadence", "off": "No cadence here." }';
    writeFileSync(path.join(folder, 'dead-cadence.rule.json'), text);
    writeFileSync(path.join(folder, 'README.md'), 'not a rule');
    const report = await json([primary, '--rules', folder]);
    expect(report.grade).toBe('clear');
    expect(report.rules.name).toBe(path.basename(folder));
    expect(report.rules.overlaid).toEqual([{ file: 'dead-cadence.rule.json', text }]);
    expect(report.inputs.at(-1)).toMatchObject({ role: 'rules', name: 'dead-cadence.rule.json' });
    expect(report.measurements.find(({ rule }) => rule === 'dead-cadence')).toMatchObject({
      state: 'not applicable',
      reason: { id: 'switched-off', values: { why: 'No cadence here.' } },
    });
  });

  it('takes a history as a folder and as a profile, and comes to the same', async () => {
    const folder = scratch();
    const profile = path.join(folder, 'profile.json');
    const history = sample('riders', '35', 'history');
    await run(['profile', history, '--out', profile]);
    const [byFolder, byProfile] = await Promise.all(
      [history, profile].map((named) => json([...pairOf('35'), '--history', named])),
    );
    expect(byFolder!.submission.history!.rides).toBe(14);
    expect(byProfile!.findings).toEqual(byFolder!.findings);
    expect(byFolder!.inputs.filter(({ role }) => role === 'history')).toHaveLength(14);
    expect(byProfile!.inputs.filter(({ role }) => role === 'profile')).toHaveLength(1);
  });

  // Two riders of the event handed in no recording.
  const readable = readdirSync(sample('riders')).filter((rider) => !['44', '46'].includes(rider));
  it.each(readable)('fills in every claim about sample rider %s', async (rider) => {
    const has = (name: string) => existsSync(sample('riders', rider, name));
    const report = await json([
      sample('riders', rider, 'primary.fit'),
      ...(has('second.fit') ? ['--second', sample('riders', rider, 'second.fit')] : []),
      ...(has('history') ? ['--history', sample('riders', rider, 'history')] : []),
      '--rider',
      sample('riders', rider, 'rider.json'),
      '--race',
      sample('race.json'),
    ]);
    const claims = new Map(report.rules.items.map(({ id, claims }) => [id, claims]));
    const unfilled = report.findings.filter(({ rule, summary }) => {
      const claim = claims.get(rule)![summary.id];
      return claim === undefined || !fillable(claim, summary.values);
    });
    expect(unfilled.map(({ rule, summary }) => `${rule}: ${summary.id}`)).toEqual([]);
  });

  it('keeps names, heart rate and mass out of everything when it redacts, and judges the same', async () => {
    const folder = scratch();
    mkdirSync(path.join(folder, 'Rosa'));
    writeFileSync(path.join(folder, 'Rosa', 'rosa.fit'), readFileSync(sample('riders', '11', 'primary.fit')));
    const argv = ['audit', 'Rosa/rosa.fit', '--second', 'Rosa/rosa-pedals.fit', '--mass', '61.7', '--redact'];
    for (const form of ['text', 'json', 'html', 'markdown', 'csv']) {
      const { status, out, err } = await run([...argv, '--format', form], { cwd: folder });
      expect(status).toBe(1);
      expect(`${out}${err}`).not.toMatch(/rosa|61\.7/i);
    }
  });

  it('gives the same bytes twice', async () => {
    const [one, two] = [await json([...pairOf('17')]), await json([...pairOf('17')])];
    expect(JSON.stringify(one)).toBe(JSON.stringify(two));
  });
});
