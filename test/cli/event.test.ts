import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { isRoot, onWindows, scratch } from '../files/scratch.ts';
import { zip } from '../read/zip-bytes.ts';
import { run, sample } from './run.ts';

/** A few riders of the sample event in a folder of their own. */
function eventOf(riders: readonly string[], more: Record<string, unknown> = {}): string {
  const folder = scratch();
  for (const rider of riders)
    cpSync(sample('riders', rider), path.join(folder, 'riders', rider), { recursive: true });
  const { start, finish, kind } = JSON.parse(readFileSync(sample('race.json'), 'utf8'));
  const file = { name: 'A few', start, finish, kind, submissions: 'riders', ...more };
  writeFileSync(path.join(folder, 'few.event.json'), JSON.stringify(file));
  return folder;
}

/** Every file below a folder by name, with the digest of its content. */
function contents(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(path.join(folder, name)).isFile())
    .sort();
  return Object.fromEntries(
    names.map((name) => [
      name.replaceAll(path.sep, '/'),
      createHash('sha256')
        .update(readFileSync(path.join(folder, name)))
        .digest('hex'),
    ]),
  );
}

const record = (out: string) => JSON.parse(readFileSync(path.join(out, 'event.json'), 'utf8'));

describe('event', () => {
  it('audits every submission, and audits nothing again that has not changed', async () => {
    const event = eventOf(['5', '28', '44']);
    const out = path.join(event, 'out');
    const first = await run(['event', event, '--out', out]);
    expect(first).toMatchObject({ status: 1, out: '3 submissions. Query 1, Not audited 1, Clear 1.\n' });
    const before = contents(out);
    expect(Object.keys(before)).toEqual(
      expect.arrayContaining(['overview.html', 'summary.csv', 'summary.md']),
    );
    expect(before['reports/rider-28/report.html']).toBeDefined();
    expect(readFileSync(path.join(out, 'reports/rider-28/letter.txt'), 'utf8')).toContain('A few');

    const second = await run(['event', event, '--out', out]);
    expect(second.err).toContain('3 of 3 unchanged since the last run');
    expect(contents(out)).toEqual(before);

    cpSync(sample('riders', '33', 'primary.fit'), path.join(event, 'riders', '5', 'primary.fit'));
    const third = await run(['event', event, '--out', out, '--since', out]);
    expect(third.err).toContain('2 of 3 unchanged');
    expect(third.out).toContain('5: worse, now Query');
  });

  it('makes the same bytes of a whole event and of its merged parts', async () => {
    const event = eventOf(['2', '11', '26', '30', '44']);
    const at = (name: string) => path.join(event, name);
    await run(['event', event, '--out', at('whole')]);
    await run(['event', event, '--out', at('one'), '--part', '1/2']);
    await run(['event', event, '--out', at('two'), '--part', '2/2']);
    expect([record(at('one')).rows.length, record(at('two')).rows.length].sort()).toEqual([2, 3]);
    const merged = await run(['merge', event, at('two'), at('one'), '--out', at('merged')]);
    expect(merged.status).toBe(1);
    expect(contents(at('merged'))).toEqual(contents(at('whole')));
    expect(record(at('whole')).crossChecks.shared).toEqual([
      expect.objectContaining({ level: 'refer', a: { number: '11', role: 'primary' } }),
    ]);
  });

  it('writes nothing over what it is given', async () => {
    const event = eventOf(['5'], { results: 'summary.csv' });
    const table = path.join(event, 'summary.csv');
    const before = 'number,name\n5,R. Rider\n';
    writeFileSync(table, before);
    const refused = { status: 2, err: expect.stringContaining('it would be written over') };
    expect(await run(['event', event, '--out', event])).toMatchObject(refused);
    expect(readFileSync(table, 'utf8')).toBe(before);
    const out = path.join(event, 'out');
    expect(await run(['event', event, '--out', out])).toMatchObject({
      err: expect.stringContaining('written'),
    });
    const last = readFileSync(path.join(out, 'event.json'));
    const earlier = ['--earlier', path.join(out, 'event.json')];
    expect(await run(['event', event, ...earlier, '--out', out])).toMatchObject(refused);
    expect(readFileSync(path.join(out, 'event.json'))).toEqual(last);
  });

  it('refuses parts that are missing, doubled, whole or of another event', async () => {
    const event = eventOf(['5', '30']);
    const at = (name: string) => path.join(event, name);
    await run(['event', event, '--out', at('one'), '--part', '1/2']);
    await run(['event', event, '--out', at('two'), '--part', '2/2']);
    await run(['event', event, '--out', at('whole')]);
    const merge = (...parts: string[]) => run(['merge', event, ...parts.map(at), '--out', at('merged')]);
    expect(await merge('one')).toMatchObject({ status: 2, err: expect.stringContaining('missing: 2') });
    expect(await run(['merge', event, at('one'), at('two'), '--out', at('two')])).toMatchObject({
      status: 2,
      err: expect.stringContaining('event.json: it would be written over, and it is read here'),
    });
    expect(await merge('one', 'one', 'two')).toMatchObject({
      status: 2,
      err: expect.stringContaining('there twice'),
    });
    expect(await run(['merge', at('one'), at('two'), '--out', at('merged')])).toMatchObject({
      status: 2,
      err: expect.stringContaining(`merge EVENT ${at('one')} ${at('two')} --out`),
    });
    expect(await merge('one', 'whole')).toMatchObject({
      status: 2,
      err: expect.stringContaining('a whole event'),
    });
    writeFileSync(at('few.event.json'), JSON.stringify({ name: 'Another', submissions: 'riders' }));
    expect(await merge('one', 'two')).toMatchObject({
      status: 2,
      err: expect.stringContaining('another event file'),
    });
    expect(existsSync(at('merged'))).toBe(false);
  });

  it('says everything that is wrong at once, and audits nothing', async () => {
    const event = eventOf(['5'], {
      start: '2026-02-30T10:00:00Z',
      rules: 'no-rules',
      riders: [{ number: '5' }, { number: '6', primary: 'gone.fit', facts: 'gone.json' }],
    });
    const { status, err } = await run(['event', event, '--out', path.join(event, 'out')]);
    expect(status).toBe(2);
    for (const said of ['on no calendar', 'gone.fit: there is no such file', 'gone.json', 'no-rules']) {
      expect(err).toContain(said);
    }
    expect(existsSync(path.join(event, 'out'))).toBe(false);
  });

  it('says what is wrong beyond the event file itself also where a field of that is wrong', async () => {
    const event = eventOf(['5'], {
      nmae: 'A few',
      finish: '2026-02-30T10:00:00Z',
      riders: [
        { number: '5', place: 'first', facts: { massKg: -1 } },
        { number: '../6', facts: { massKg: -2 } },
        { number: '7', primary: 'gone.fit', facts: { recordClass: 'nobody' } },
      ],
    });
    const { status, err } = await run(['event', event, '--check']);
    expect(status).toBe(2);
    const said = [
      'nmae: there is no such field',
      'riders › 1 › place',
      'riders › 2 › number',
      'rider 5 › facts › massKg',
      'rider 7 › facts › recordClass',
      'gone.fit: there is no such file',
      'on no calendar',
    ];
    for (const one of said) expect(err).toContain(one);
    expect(err.trim().split('\n')).toHaveLength(said.length);
  });

  it('opens what riders export: ZIPs with folders, notes, facts and earlier rides', async () => {
    const folder = scratch();
    const bytes = (...place: string[]) => new Uint8Array(readFileSync(sample('riders', ...place)));
    const text = (words: string) => new TextEncoder().encode(words);
    const past = readdirSync(sample('riders', '31', 'history')).slice(0, 3);
    const pack = (file: string, members: Record<string, Uint8Array>) =>
      writeFileSync(
        path.join(folder, file),
        zip(Object.entries(members).map(([name, content]) => ({ name, bytes: content }))),
      );
    pack('5.zip', {
      'export/activities/40213.fit': bytes('5', 'primary.fit'),
      'export/profile.csv': text('name,mass\nA,70\n'),
      'export/photo.jpg': text('x'),
    });
    pack('31.zip', {
      'primary.fit': bytes('31', 'primary.fit'),
      'rider.json': bytes('31', 'rider.json'),
      ...Object.fromEntries(past.map((name) => [`history/${name}`, bytes('31', 'history', name)])),
    });
    const { out, err } = await run(['event', folder, '--check']);
    expect(err).toBe('');
    expect(out).toMatch(/2 riders\n {2}2 with a recording\n.*\n {2}1 with earlier rides/);

    const audited = path.join(scratch(), 'out');
    await run(['event', folder, '--out', audited, '--fail-on', 'never']);
    const report = JSON.parse(readFileSync(path.join(audited, 'reports/rider-31/report.json'), 'utf8'));
    const roles = report.inputs.map(({ role, name }: { role: string; name: string }) => [role, name]);
    for (const name of past) expect(roles).toContainEqual(['history', name]);
    expect(roles).toContainEqual(['rider', '31.zip/rider.json']);
    expect(record(audited).rows.map(({ state }: { state: string }) => state)).toEqual(['audited', 'audited']);
  });

  it('keeps no report of whoever withdrew, or handed in something else since', async () => {
    const event = eventOf(['5', '28', '30']);
    const out = path.join(event, 'out');
    await run(['event', event, '--out', out]);
    writeFileSync(path.join(out, 'reports/rider-30/note.txt'), 'ours');
    for (const rider of ['28', '30']) rmSync(path.join(event, 'riders', rider), { recursive: true });
    rmSync(path.join(event, 'riders', '5', 'primary.fit'));
    const { err } = await run(['event', event, '--out', out]);
    expect(err).toContain('taken away: 2 reports');
    expect(Object.keys(contents(path.join(out, 'reports')))).toEqual(['rider-30/note.txt']);
  });

  it('takes nothing that a run wrote for a submission, wherever its folder lies', async () => {
    const event = eventOf(['5']);
    await run(['event', event, '--out', path.join(event, 'riders', 'audited')]);
    await run(['event', event, '--out', path.join(event, 'riders')]);
    expect(await run(['event', event, '--check'])).toMatchObject({
      status: 0,
      out: expect.stringContaining('1 rider'),
      err: '',
    });
  });

  it('lists what it cannot match and guesses nothing', async () => {
    const event = eventOf(['5']);
    cpSync(sample('riders', '8', 'primary.fit'), path.join(event, 'riders', 'evening ride.fit'));
    const { status, out, err } = await run(['event', event, '--check']);
    expect(status).toBe(1);
    expect(out).toContain('1 with a recording');
    expect(err).toContain('not matched: riders/evening ride.fit');
  });

  it('tells who handed in what leaves a doubt from who handed in nothing', async () => {
    const event = eventOf(['5'], { riders: [{ number: '5' }, { number: '6' }, { number: '7' }] });
    mkdirSync(path.join(event, 'riders', '6'));
    for (const name of ['a.fit', 'b.fit'])
      cpSync(sample('riders', '8', 'primary.fit'), path.join(event, 'riders', '6', name));
    const { out } = await run(['event', event, '--check']);
    expect(out).toContain('\n  nothing handed in: 7\n  handed in, and in doubt: 6\n');
  });

  it('says so where a file bears the name of the folder for the reports', async () => {
    const event = eventOf(['5']);
    writeFileSync(path.join(event, 'taken'), 'mine');
    const { status, err } = await run(['event', event, '--out', path.join(event, 'taken')]);
    expect(status).toBe(2);
    expect(err).toContain('there is a file of this name, and a folder is wanted');
    expect(readFileSync(path.join(event, 'taken'), 'utf8')).toBe('mine');
  });

  it('takes nothing from outside the event’s folder, also through a link', async () => {
    if (onWindows) return;
    const event = eventOf(['5'], {
      submissions: undefined,
      riders: [{ number: '7', primary: 'riders/link.fit' }],
    });
    symlinkSync(sample('riders', '8', 'primary.fit'), path.join(event, 'riders', 'link.fit'));
    expect(await run(['event', event, '--check'])).toMatchObject({
      status: 2,
      err: expect.stringContaining('a link'),
    });
  });

  it('asks a second recording of the first so many, and of whoever rides above the line', async () => {
    const riders = [
      { number: '5', place: 1 },
      { number: '30', place: 9 },
    ];
    const asks = async (secondRecordings: object) => {
      const event = eventOf(['5', '30'], { riders, secondRecordings, start: undefined, finish: undefined });
      await run(['event', event, '--out', path.join(event, 'out')]);
      return record(path.join(event, 'out')).rows.map((row: { missing: string[] }) => row.missing.length);
    };
    expect(await asks({ top: 3 })).toEqual([1, 0]);
    expect(await asks({ aboveWattsPerKg: 1 })).toEqual([1, 1]);
    expect(await asks({ aboveWattsPerKg: 19 })).toEqual([0, 0]);
  });

  it('says which second recordings it cannot ask for, as long as something is not known', async () => {
    const event = eventOf(['5', '30'], { secondRecordings: { top: 3, aboveWattsPerKg: 4 } });
    const { status, err } = await run(['event', event, '--check']);
    expect(status).toBe(1);
    expect(err).toContain('the first 3 are asked for a second recording, but no place is known');
    const known = eventOf(['5', '30'], {
      secondRecordings: { top: 3, aboveWattsPerKg: 4 },
      riders: ['5', '30'].map((number, i) => ({ number, place: i + 1, facts: { massKg: 70 } })),
    });
    expect(await run(['event', known, '--check'])).toMatchObject({ status: 0, err: '' });
  });

  it('compares with earlier events by fingerprints that name nobody', async () => {
    const [before, now] = [eventOf(['11'], { name: 'Round 0' }), eventOf(['26'])];
    await run(['event', before, '--out', path.join(before, 'out')]);
    const kept = path.join(before, 'out', 'fingerprints.json');
    expect(readFileSync(kept, 'utf8')).not.toMatch(/rider|"11"/);
    const { out, err } = await run(['event', now, '--out', path.join(now, 'out'), '--earlier', kept]);
    expect(out).toContain('1 submission');
    expect(err).toMatch(
      /Rider 26 \(primary\): the same as in the recording [0-9a-f]{8} of “Round 0” are at least .* of power/,
    );
  });

  it('keeps fingerprints once, and finds them beside the record of an earlier event', async () => {
    const [before, now] = [eventOf(['11'], { name: 'Round 0' }), eventOf(['26'])];
    const [out, kept] = [path.join(before, 'out'), path.join(before, 'kept')];
    await run(['event', before, '--out', out]);
    for (const { recordings } of record(out).rows) {
      for (const { marks } of recordings) expect(marks).toBe('');
    }
    const compared = async (folder: string) =>
      run([
        'event',
        now,
        '--out',
        path.join(now, 'out'),
        '--fail-on',
        'never',
        '--earlier',
        path.join(folder, 'event.json'),
      ]);
    const shared = /the same as in the recording [0-9a-f]{8} of “Round 0” are at least .* of power/;
    expect((await compared(out)).err).toMatch(shared);
    // Alone it cannot be compared, and is not taken for an event in which nothing is the same.
    mkdirSync(kept);
    cpSync(path.join(out, 'event.json'), path.join(kept, 'event.json'));
    const beside = path.join(kept, 'fingerprints.json');
    expect(await compared(kept)).toMatchObject({
      status: 2,
      err: expect.stringContaining(`${beside}: there is no such file`),
    });
    const marks = JSON.parse(readFileSync(path.join(out, 'fingerprints.json'), 'utf8'));
    writeFileSync(beside, JSON.stringify({ ...marks, event: 'Round 9' }));
    expect((await compared(kept)).err).toContain('these are the fingerprints of “Round 9”');
    // Parts keep theirs: the whole is put together from them.
    await run(['event', before, '--out', kept, '--part', '1/1']);
    expect(record(kept).rows[0].recordings[0].marks).not.toBe('');
    rmSync(beside);
    expect((await compared(kept)).err).toMatch(shared);
  });

  it('writes nothing over fingerprints that are read beside an earlier record', async () => {
    const [before, now] = [eventOf(['11'], { name: 'Round 0' }), eventOf(['26'])];
    const out = path.join(before, 'out');
    await run(['event', before, '--out', out]);
    cpSync(path.join(out, 'event.json'), path.join(out, 'round-0.json'));
    const kept = contents(out);
    const refused = {
      status: 2,
      out: '',
      err: expect.stringContaining('fingerprints.json: it would be written over'),
    };
    const earlier = ['--earlier', path.join(out, 'round-0.json'), '--out', out];
    expect(await run(['event', now, ...earlier])).toMatchObject(refused);
    const part = path.join(now, 'part');
    await run(['event', now, '--out', part, '--part', '1/1']);
    expect(await run(['merge', now, part, ...earlier])).toMatchObject(refused);
    expect(contents(out)).toEqual(kept);
  });

  it.skipIf(onWindows)('follows no link to fingerprints that nobody named', async () => {
    const [before, now] = [eventOf(['11'], { name: 'Round 0' }), eventOf(['26'])];
    const out = path.join(before, 'out');
    await run(['event', before, '--out', out]);
    const marks = path.join(out, 'fingerprints.json');
    cpSync(marks, path.join(before, 'elsewhere.json'));
    rmSync(marks);
    symlinkSync(path.join(before, 'elsewhere.json'), marks);
    const argv = ['event', now, '--out', path.join(now, 'out'), '--earlier', path.join(out, 'event.json')];
    expect(await run(argv)).toMatchObject({ status: 2, err: expect.stringContaining('it is a link') });
  });

  it('keeps names out of everything when it redacts', async () => {
    const event = eventOf(['28', '44'], {
      riders: [
        { number: '28', name: 'Morwenna Secret', id: 'LICENCE-28' },
        { number: '44', name: 'Morwenna Secret' },
      ],
    });
    const out = path.join(event, 'out');
    await run(['event', event, '--out', out, '--redact']);
    for (const name of Object.keys(contents(out))) {
      expect(readFileSync(path.join(out, name), 'utf8'), name).not.toMatch(
        /Morwenna|LICENCE-28|"massKg": ?67/,
      );
    }
  });

  it('stays text in the overview, whatever a stranger calls a thing', async () => {
    const hostile = '</script><img src=x onerror=alert(1)>"\'`=1+1';
    const event = eventOf(['28'], {
      name: hostile,
      riders: [{ number: '28', name: hostile, category: hostile }],
    });
    const out = path.join(event, 'out');
    await run(['event', event, '--out', out]);
    const page = readFileSync(path.join(out, 'overview.html'), 'utf8');
    expect(page).not.toContain('<img');
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page).toMatch(/default-src 'none'; style-src 'sha256-[^']+'; script-src 'sha256-[^']+'/);
    expect(readFileSync(path.join(out, 'summary.md'), 'utf8')).not.toContain('<img');
    expect(readFileSync(path.join(out, 'summary.csv'), 'utf8')).toMatch(/"<\/script>|"'?<\/script>/);
  });

  it('stops with a sentence where nothing can be written, and completes when it can', async () => {
    const event = eventOf(['5', '30']);
    const out = path.join(event, 'out');
    mkdirSync(path.join(out, 'reports'), { recursive: true });
    writeFileSync(path.join(out, 'reports', 'rider-30'), 'in the way');
    const stopped = await run(['event', event, '--out', out]);
    expect(stopped).toMatchObject({ status: 2, err: expect.stringContaining('cannot be written') });
    expect(existsSync(path.join(out, 'event.json'))).toBe(false);
    rmSync(path.join(out, 'reports', 'rider-30'));
    const { err } = await run(['event', event, '--out', out]);
    expect(err).toContain('1 of 2 unchanged');
    expect(record(out).rows).toHaveLength(2);
  });

  it.skipIf(isRoot || onWindows)('leaves a folder alone that it may only read', async () => {
    const event = eventOf(['5']);
    const out = path.join(event, 'out');
    mkdirSync(out);
    chmodSync(out, 0o500);
    expect(await run(['event', event, '--out', out])).toMatchObject({ status: 2, out: '' });
    expect(readdirSync(out)).toEqual([]);
    chmodSync(out, 0o700);
  });

  it('leaves nothing half-written when it is killed, and the next run completes', async () => {
    const event = eventOf(['2', '11', '14', '17', '19']);
    const [whole, out] = [path.join(event, 'whole'), path.join(event, 'out')];
    await killedAfterFirst(['event', event, '--out', out], path.join(out, 'reports'));
    expect(existsSync(path.join(out, 'event.json'))).toBe(false);
    const { err } = await run(['event', event, '--out', out]);
    expect(err).toMatch(/[1-4] of 5 unchanged/);
    await run(['event', event, '--out', whole]);
    expect(contents(out)).toEqual(contents(whole));
  });
});

/** Starts the program and kills it as soon as one submission is finished. */
function killedAfterFirst(argv: readonly string[], reports: string): Promise<void> {
  const child = spawn(process.execPath, ['src/dev/run.mjs', 'src/bin/wattassay.ts', ...argv], {
    stdio: 'ignore',
  });
  const finished = () =>
    existsSync(reports) &&
    readdirSync(reports).some((name) => existsSync(path.join(reports, name, 'row.json')));
  const timer = setInterval(() => {
    if (finished()) child.kill('SIGKILL');
  }, 5);
  return new Promise((resolve) => {
    child.on('close', () => {
      clearInterval(timer);
      resolve();
    });
  });
}

describe('decide and case', () => {
  it('keep the record, show it, and pack a case for both sides', async () => {
    const event = eventOf(['28', '5']);
    const out = path.join(event, 'out');
    await run(['event', event, '--out', out]);
    const decide = (...more: string[]) => run(['decide', event, '28', 'dead-cadence', ...more]);
    const sent = ['--asked', '2025-08-24', '--due', '2025-08-27', '--out', out];
    const overview = () => readFileSync(path.join(out, 'overview.html'), 'utf8');
    expect(await decide(...sent, '--today', '2025-08-27')).toMatchObject({ status: 0 });
    expect(overview()).toContain('answer awaited (due 2025-08-27)');
    await run(['event', event, '--out', out, '--today', '2025-08-28']);
    expect(overview()).toContain('<strong>answer overdue</strong> (due 2025-08-27)');
    expect(await decide('--due', '2025-02-29')).toMatchObject({
      status: 2,
      err: expect.stringContaining('a day of the calendar'),
    });
    expect(await decide()).toMatchObject({ status: 2, err: expect.stringContaining('nothing is said') });
    expect(await decide('--decision', 'stands')).toMatchObject({
      status: 2,
      err: expect.stringContaining('“by”'),
    });
    await decide(
      '--decision',
      'explained',
      '--by',
      'jury',
      '--why',
      'A lost magnet.',
      '--until',
      '2025-12-31',
      '--out',
      out,
    );
    expect(overview()).toContain('explanation accepted');
    expect(record(out).rows.find((row: { number: string }) => row.number === '28').grade).toBe('query');

    const packed = path.join(event, 'case');
    expect(await run(['case', event, '28', '--from', out, '--out', packed])).toMatchObject({ status: 0 });
    const found = contents(packed);
    const sums = readFileSync(path.join(packed, 'SHA256SUMS'), 'utf8').trim().split('\n');
    for (const line of sums) {
      const [digest, name] = line.split('  ') as [string, string];
      expect(found[name]).toBe(digest);
    }
    expect(sums).toHaveLength(Object.keys(found).length - 1);
    // Packed into the event itself, one rider's decisions would take the place of everybody's.
    expect(await run(['case', event, '28', '--from', out, '--out', event])).toMatchObject({
      status: 2,
      err: expect.stringContaining('decisions.json: it would be written over'),
    });
    expect(found['recordings/primary/primary.fit']).toBeDefined();
    const facts = path.join(event, 'riders', '28', 'rider.json');
    if (existsSync(facts))
      expect(found['facts/rider.json']).toBe(contents(path.dirname(facts))['rider.json']);

    cpSync(sample('riders', '33', 'primary.fit'), path.join(event, 'riders', '28', 'primary.fit'));
    expect(await run(['case', event, '28', '--from', out, '--out', packed])).toMatchObject({
      status: 2,
      err: expect.stringContaining('no longer the ones'),
    });
  });

  it('pack a case from which its report can be made again, under the event’s own rules too', async () => {
    const event = eventOf(['28'], { rules: 'our-rules' });
    const rule = { id: 'recording-gap', off: 'Nobody minds gaps here.' };
    mkdirSync(path.join(event, 'our-rules'));
    writeFileSync(path.join(event, 'our-rules', 'recording-gap.rule.json'), JSON.stringify(rule));
    const [out, packed] = [path.join(event, 'out'), path.join(event, 'case')];
    await run(['event', event, '--out', out]);
    await run(['case', event, '28', '--from', out, '--out', packed]);
    const readme = readFileSync(path.join(packed, 'README.txt'), 'utf8');
    expect(readme).toContain('Rider 28: A few');
    const [, ...again] = readme.match(/^ {2}wattassay (verify .*)$/m)?.[1]?.split(' ') ?? [];
    expect(again.slice(-1)).toEqual(['rules/our-rules']);
    expect(await run(['verify', ...again], { cwd: packed })).toMatchObject({ status: 0 });
    for (const name of readdirSync(packed).filter((one) => one !== 'README.txt')) {
      expect(readme).toContain(name);
    }
  });

  it('know the riders and rules that there are', async () => {
    const event = eventOf(['28']);
    expect((await run(['decide', event, '82', 'dead-cadence'])).err).toMatch(/no rider of this event/);
    expect((await run(['decide', event, '28', 'dead-cadense'])).err).toMatch(/Did you mean “dead-cadence”/);
    expect((await run(['decide', event, '28', 'shared-devices'])).err).toMatch(
      /Did you mean “shared-device”/,
    );
    const shared = ['shared-device', '--asked', '2026-03-15'];
    expect(await run(['decide', event, '28', ...shared])).toMatchObject({ status: 0 });
  });
});

describe('new', () => {
  it('gives the action what it knows, and all that it requires', async () => {
    const folder = path.join(scratch(), 'our-series');
    await run(['new', folder]);
    const read = (...place: string[]) => parse(readFileSync(path.join(...place), 'utf8'));
    const { inputs } = read('action.yml') as { inputs: Record<string, { required?: boolean }> };
    const { jobs } = read(folder, '.github', 'workflows', 'audit.yml') as {
      jobs: Record<string, { steps: { uses?: string; with?: object }[] }>;
    };
    const steps = Object.values(jobs).flatMap(({ steps: all }) => all);
    const given = steps.filter(({ uses }) => uses === './.wattassay').map((step) => Object.keys(step.with!));
    expect(given).toHaveLength(1);
    expect(Object.keys(inputs)).toEqual(expect.arrayContaining(given[0]!));
    const required = Object.keys(inputs).filter((name) => inputs[name]!.required === true);
    expect(given[0]).toEqual(expect.arrayContaining(required));
  });

  it('audits pull requests by a workflow that may only read, with inputs that the action has', async () => {
    const folder = path.join(scratch(), 'our-series');
    await run(['new', folder]);
    const text = readFileSync(path.join(folder, '.github', 'workflows', 'pull-request.yml'), 'utf8');
    const { on, permissions, concurrency, jobs } = parse(text);
    expect({ on, permissions }).toEqual({ on: 'pull_request', permissions: { contents: 'read' } });
    expect(concurrency['cancel-in-progress']).toBe(true);
    expect(Object.keys(jobs)).toEqual(['audit']);
    const { steps, 'timeout-minutes': minutes, permissions: own } = jobs.audit;
    expect(minutes).toBeGreaterThan(0);
    expect(own).toBeUndefined();
    const uses = steps.map((step: { uses: string }) => step.uses);
    expect(uses.filter((name: string) => !/@[0-9a-f]{40}$/.test(name))).toEqual(['OWNER/wattassay@COMMIT']);
    const [checkout, audit, upload] = steps.map((step: { with: object }) => step.with);
    expect(checkout).toEqual({ 'persist-credentials': false, 'fetch-depth': 2 });
    const { inputs } = parse(readFileSync('action.yml', 'utf8'));
    const wanted = ['event', 'changed-only', 'terms-from', 'rules', 'fail-on', 'report-folder', 'redact'];
    expect(Object.keys(audit)).toEqual(wanted);
    expect(Object.keys(inputs)).toEqual(expect.arrayContaining(wanted));
    expect(audit).toMatchObject({ 'terms-from': 'base', 'fail-on': 'never', redact: true });
    for (const place of [audit.event, audit.rules]) {
      expect(statSync(path.join(folder, place)).isDirectory()).toBe(true);
    }
    expect(upload.path).toBe(audit['report-folder']);
  });

  it('lays out a repository that audits as it stands, and overwrites nothing', async () => {
    const folder = path.join(scratch(), 'our-series');
    expect(await run(['new', folder])).toMatchObject({ status: 0 });
    expect(readFileSync(path.join(folder, 'README.md'), 'utf8')).toContain('Keep this repository private');
    const workflow = readFileSync(path.join(folder, '.github', 'workflows', 'audit.yml'), 'utf8');
    const uses = [...workflow.matchAll(/uses: (\S+)/g)].map((match) => match[1]!);
    expect(uses.filter((name) => !/^\.\/|@[0-9a-f]{40}$/.test(name))).toEqual([]);
    expect(workflow).not.toMatch(/run:.*\$\{\{/);
    expect(await run(['rules', 'check', path.join(folder, 'rules')])).toMatchObject({ status: 0 });
    const whole = await run(['event', folder, '--check']);
    expect(whole.err).toContain('Name the event meant: events/round-1/round-1.event.json');
    cpSync(sample('riders', '5'), path.join(folder, 'events/round-1/submissions/5'), { recursive: true });
    expect((await run(['event', path.join(folder, 'events/round-1'), '--check'])).out).toContain('1 rider');
    expect(await run(['new', folder])).toMatchObject({
      status: 2,
      err: expect.stringContaining('not empty'),
    });
  });
});
