import { copyFileSync, cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/types.ts';
import { scratch } from '../files/scratch.ts';
import { zip } from '../read/zip-bytes.ts';
import { payloads } from '../report/payloads.ts';
import { pairOf, run, sample } from './run.ts';

const files = (rider: string) => [sample('riders', rider), sample('race.json')];

/** A report on a sample rider, written into a folder of its own. */
async function written(rider: string, ...more: string[]): Promise<{ cwd: string; text: string }> {
  const cwd = scratch();
  await run(['audit', ...pairOf(rider), ...more, '--out', 'report.json'], { cwd });
  return { cwd, text: readFileSync(path.join(cwd, 'report.json'), 'utf8') };
}

type Open<T> = { -readonly [K in keyof T]: T[K] extends object ? Open<T[K]> : T[K] };

/** Verifies what became of a report's text against the files of its rider. */
async function verifyText(cwd: string, text: string, ...argv: string[]) {
  writeFileSync(path.join(cwd, 'other.json'), text);
  return run(['verify', 'other.json', ...(argv.length > 0 ? argv : files('14'))], { cwd });
}

async function verifyChanged(change: (report: Open<Report>) => void) {
  const { cwd, text } = await written('14');
  const report = JSON.parse(text);
  change(report);
  return verifyText(cwd, `${JSON.stringify(report)}\n`);
}

describe('verify', () => {
  it('finds the same to the byte, whatever the files are called', async () => {
    const { cwd } = await written('14');
    const elsewhere = path.join(cwd, 'elsewhere', 'below');
    mkdirSync(elsewhere, { recursive: true });
    for (const name of ['primary.fit', 'second.fit', 'rider.json']) {
      copyFileSync(sample('riders', '14', name), path.join(elsewhere, `${name}.bin`));
    }
    copyFileSync(sample('race.json'), path.join(cwd, 'r'));
    const { status, out, err } = await run(['verify', 'report.json', 'elsewhere', 'r'], { cwd });
    expect(err).toBe('');
    expect(out).toBe(
      'The same to the byte: 4\u00a0files and the rules “shipped”, found by checksum, give this report again.\n',
    );
    expect(status).toBe(0);
  });

  it('finds recordings in a ZIP', async () => {
    const { cwd } = await written('14');
    const members = ['primary.fit', 'second.fit'].map((name) => ({
      name: `14/${name}`,
      bytes: new Uint8Array(readFileSync(sample('riders', '14', name))),
    }));
    writeFileSync(path.join(cwd, 'handed-in.zip'), zip(members));
    const facts = [sample('riders', '14', 'rider.json'), sample('race.json')];
    const { status, out } = await run(['verify', 'report.json', 'handed-in.zip', ...facts], { cwd });
    expect(out).toMatch(/^The same to the byte/);
    expect(status).toBe(0);
  });

  it('finds past rides again, and a compiled profile', async () => {
    const cwd = scratch();
    const rider = sample('riders', '31');
    await run(['profile', path.join(rider, 'history'), '--out', 'profile.json'], { cwd });
    for (const history of [path.join(rider, 'history'), 'profile.json']) {
      await run(['audit', path.join(rider, 'primary.fit'), '--history', history, '--out', 'report.json'], {
        cwd,
      });
      const { status, out } = await run(['verify', 'report.json', 'profile.json', rider], { cwd });
      expect(out).toMatch(/^The same to the byte/);
      expect(status).toBe(0);
      expect((await run(['verify', 'report.json', path.join(rider, 'primary.fit')], { cwd })).status).toBe(2);
    }
  });

  it('says which facts no file gives', async () => {
    const { cwd } = await written('14', '--mass', '71', '--kind', 'race');
    const { status, out } = await run(['verify', 'report.json', ...files('14')], { cwd });
    expect(status).toBe(0);
    expect(out).toContain('for none of the files says so: body mass.');
  });

  it('takes second recordings that could not be read as they were', async () => {
    const { cwd } = await written('14', '--second', 'gone.fit', '--second', sample('results.csv'));
    const { status, out } = await run(['verify', 'report.json', ...files('14'), sample('results.csv')], {
      cwd,
    });
    expect(out).toMatch(/^The same to the byte: 5\sfiles/);
    expect(out).toMatch(/1\ssecond recording could not be opened when the report was made/);
    expect(status).toBe(0);
  });

  it('names what differs, what weighs most first', async () => {
    const { status, out } = await verifyChanged((report) => {
      report.charts.reverse();
      report.grade = 'clear';
      for (const finding of report.findings) finding.level = 'none';
      (report.charts.at(-1) as Open<Extract<Report['charts'][number], { kind: 'traces' }>>).primary[100] =
        999;
    });
    expect(status).toBe(1);
    const lines = out.split('\n');
    expect(lines[0]).toMatch(/^Not the same: .* give another result in \d+\splaces\.$/);
    expect(lines[1]).toBe('  grade: stated “clear”, found “refer”');
    expect(out).toMatch(/finding late-drift of pair:[0-9a-f]{8}: level stated “none”, found “refer”/);
    expect(out).toMatch(
      /chart traces: primary 1 of \d+\sitems, the first at place 101: stated 999, found \d+/,
    );
  });

  it('does not take another text with the same values for the same', async () => {
    const { cwd, text } = await written('14');
    for (const other of [
      text.replaceAll('\n', '\r\n'),
      JSON.stringify(JSON.parse(text)),
      text.replace('"grade": "refer"', '"grade": "clear",\n "grade": "refer"'),
    ]) {
      const { status, out } = await verifyText(cwd, other);
      expect(status).toBe(1);
      expect(out).toMatch(/^Not the same text: /);
    }
  });

  it('says which version is needed', async () => {
    const { cwd, text } = await written('14');
    const { status, out, err } = await verifyText(
      cwd,
      text.replace(/"version": "[^"]+"/, '"version": "9.8.7"'),
    );
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('it was made by wattassay 9.8.7');
    expect(err).toContain('verify it with wattassay 9.8.7');
  });

  it('says which files are missing, and which has another content', async () => {
    const { cwd } = await written('14');
    writeFileSync(path.join(cwd, 'second.fit'), 'another');
    const { status, err } = await run(['verify', 'report.json', sample('riders', '14', 'primary.fit'), '.'], {
      cwd,
    });
    expect(status).toBe(2);
    expect(err.trim().split('\n')).toHaveLength(3);
    expect(err).toMatch(
      /^error: second\.fit: the second file .* A file of this name is there, with another content\./m,
    );
    expect(err).toMatch(/^error: race\.json: the race file with the checksum [0-9a-f]{12}… is not among/m);
  });

  it('judges by the rules of a folder when these are the ones', async () => {
    const cwd = scratch();
    mkdirSync(path.join(cwd, 'ours'));
    writeFileSync(path.join(cwd, 'ours', 'late-drift.rule.json'), '{ "id": "late-drift", "off": "a trial" }');
    await run(['audit', ...pairOf('14'), '--rules', 'ours', '--out', 'report.json'], { cwd });
    const verify = (...argv: string[]) => run(['verify', 'report.json', ...files('14'), ...argv], { cwd });
    const without = await verify();
    expect(without.status).toBe(2);
    expect(without.err).toMatch(/judged by other rules: “ours” .* Name the folder .* as --rules\.$/m);
    cpSync(path.join(cwd, 'ours'), path.join(cwd, 'renamed'), { recursive: true });
    expect(await verify('--rules', 'renamed')).toMatchObject({ status: 0, err: '' });
    writeFileSync(
      path.join(cwd, 'renamed', 'late-drift.rule.json'),
      '{ "id": "late-drift", "off": "others" }',
    );
    expect((await verify('--rules', 'renamed')).status).toBe(2);
  });

  it('verifies a redacted report as far as it goes, and in full with the mass', async () => {
    const { cwd } = await written('14', '--redact');
    const { massKg } = JSON.parse(readFileSync(sample('riders', '14', 'rider.json'), 'utf8'));
    const verify = (...argv: string[]) => run(['verify', 'report.json', ...files('14'), ...argv], { cwd });
    const without = await verify();
    expect(without.status).toBe(1);
    expect(without.out).toMatch(/^The same as far as it can be compared: .* Give it as --mass/);
    const known = await verify('--mass', String(massKg));
    expect(known.out).toMatch(/^The same to the byte/);
    expect(known.status).toBe(0);
    const forged = readFileSync(path.join(cwd, 'report.json'), 'utf8').replace(
      '"rule": "late-drift"',
      '"rule": "drift"',
    );
    expect((await verifyText(cwd, forged)).out).toMatch(/^Not the same: /);
    const whole = await written('14');
    const usage = await run(['verify', 'report.json', ...files('14'), '--mass', '70'], { cwd: whole.cwd });
    expect(usage).toMatchObject({ status: 2, out: '' });
  });

  it('verifies the report of an event, found among a case', async () => {
    const cwd = scratch();
    cpSync(sample('riders', '31'), path.join(cwd, 'riders', '31'), { recursive: true });
    cpSync(sample('riders', '14'), path.join(cwd, 'riders', '14'), { recursive: true });
    const event = {
      name: 'Round 4',
      start: '2025-08-23T05:48:00Z',
      finish: '2025-08-23T06:33:00Z',
      kind: 'race',
    };
    writeFileSync(path.join(cwd, 'r.event.json'), JSON.stringify({ ...event, submissions: 'riders' }));
    await run(['event', 'r.event.json', '--out', 'audited', '--jobs', '1'], { cwd });
    for (const rider of ['31', '14']) {
      const { status, out, err } = await run(
        ['verify', `audited/reports/rider-${rider}/report.json`, `riders/${rider}`],
        { cwd },
      );
      expect(err).toBe('');
      expect(out).toMatch(/^The same to the byte/);
      expect(status).toBe(0);
    }
  });
});

describe('verify, with a report that may be anybody’s', () => {
  const damaged = (text: string): Record<string, string> => ({
    empty: '',
    cut: text.slice(0, text.length / 2),
    page: '<!doctype html><title>x</title>',
    number: '42',
    nothing: 'null',
    list: '[]',
    deep: `${'['.repeat(100_000)}${']'.repeat(100_000)}`,
    'deep within': text.replace('"grade":', `"odd": ${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}, "grade":`),
    'another file': readFileSync(sample('race.json'), 'utf8'),
    'no inputs': text.replace('"inputs":', '"outputs":'),
    'no checksum': text.replace(/"sha256": "[0-9a-f]{64}"/, '"sha256": "../../etc/passwd"'),
    'no primary': text.replace('"role": "primary"', '"role": "second"'),
    'impossible facts': text.replace(/"massKg": [\d.]+/, '"massKg": -1e308'),
    'impossible time': text.replace(/"start": "2025[^"]*"/, '"start": "2025-02-30T00:00:00Z"'),
  });

  it('refuses what is none in one sentence', async () => {
    const { cwd, text } = await written('14');
    for (const [name, other] of Object.entries(damaged(text))) {
      expect(other, name).not.toBe(text);
      const { status, out, err } = await verifyText(cwd, other);
      expect({ name, status, out }).toEqual({ name, status: 2, out: '' });
      expect(err, name).toMatch(/^error: [^\n]+\.\n$/);
    }
  });

  it('lets nothing that it holds be more than text', async () => {
    const { cwd, text } = await written('14');
    const quoted = (value: string) => JSON.stringify(value).slice(1, -1);
    for (let at = 0; at < payloads.length; at += 8) {
      const some = payloads.slice(at, at + 8);
      const fields = some.map((payload) => `"${quoted(payload)}": "${quoted(payload)}"`).join(',\n ');
      const other = text
        .replace('"grade": "refer"', () => `"grade": "${quoted(some[0]!)}",\n ${fields}`)
        .replaceAll('"second.fit"', () => `"${quoted(some[1] ?? 'x')}"`);
      const { status, out, err } = await verifyText(cwd, other);
      expect(status).toBe(1);
      expect(err).toBe('');
      expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e\u2066]|^(::|##\[)/m);
      expect(out.split('\n').length).toBeLessThan(20);
      expect(out.length).toBeLessThan(6000);
    }
  });
});
