import { copyFileSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { scratch } from '../files/scratch.ts';
import { run, sample } from './run.ts';

/** A recording of one's own that a slip of the keys could destroy. */
function recordingIn(folder: string): { csv: string; before: Buffer } {
  const csv = path.join(folder, 'ride.csv');
  writeFileSync(
    csv,
    `time,power\n${Array.from({ length: 120 }, (_, i) => `${i},${200 + (i % 9)}`).join('\n')}\n`,
  );
  return { csv, before: readFileSync(csv) };
}

describe('outputs', () => {
  it('are never written over what is read', async () => {
    const folder = scratch();
    const { csv, before } = recordingIn(folder);
    for (const argv of [
      ['audit', csv, '--out', csv],
      ['audit', csv, '--letter', 'ride.csv'],
      ['audit', sample('riders', '5', 'primary.fit'), '--second', csv, '--out', './ride.csv'],
    ]) {
      const { status, out, err } = await run(argv, { cwd: folder });
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(err).toMatch(
        /^error: --(out|letter) .*ride\.csv: it would be written over, and it is read here\./,
      );
      expect(readFileSync(csv)).toEqual(before);
    }
  });

  it('are not written through a link to what is read', async () => {
    const folder = scratch();
    const { csv, before } = recordingIn(folder);
    try {
      symlinkSync(csv, path.join(folder, 'report.csv'));
    } catch {
      return; // Not every system lets everybody make links.
    }
    expect((await run(['audit', csv, '--out', 'report.csv'], { cwd: folder })).status).toBe(2);
    expect(readFileSync(csv)).toEqual(before);
    // Nor twice to one place by two ways, neither of which is there yet.
    mkdirSync(path.join(folder, 'here'));
    symlinkSync(path.join(folder, 'here'), path.join(folder, 'there'));
    const argv = ['audit', csv, '--out', 'here/a.txt', '--letter', 'there/a.txt'];
    expect((await run(argv, { cwd: folder })).err).toContain('two outputs would be written to it');
  });

  it('are held apart from what is read where they are charts, which choose their own names', async () => {
    const folder = scratch();
    const { csv, before } = recordingIn(folder);
    const there = path.join(folder, 'there');
    mkdirSync(there);
    const own = path.join(there, '01-traces.svg');
    copyFileSync(csv, own);
    const over = await run(['audit', own, '--charts', 'there'], { cwd: folder });
    expect(over.status).toBe(2);
    expect(over.err).toMatch(
      /^error: --charts .*01-traces\.svg: it would be written over, and it is read here\./,
    );
    expect(readFileSync(own)).toEqual(before);
    const both = await run(['audit', csv, '--charts', 'there', '--letter', 'there/02-traces.svg'], {
      cwd: folder,
    });
    expect(both.err).toContain('two outputs would be written to it');
    // Charts of an earlier run are replaced, and nothing else of the folder is asked about.
    const again = () => run(['audit', csv, '--charts', '.'], { cwd: folder });
    expect((await again()).err).toContain('written: ');
    expect((await again()).err).toContain('written: ');
  });

  it('have a place each', async () => {
    const folder = scratch();
    const { csv } = recordingIn(folder);
    const { status, err } = await run(['audit', csv, '--out', 'a.txt', '--letter', 'a.txt'], { cwd: folder });
    expect(status).toBe(2);
    expect(err).toBe('error: --letter a.txt: two outputs would be written to it. Name another place.\n');
  });

  it('take the place of nothing in a folder that is read', async () => {
    const folder = scratch();
    const { csv, before } = recordingIn(folder);
    const [rides, rules] = [path.join(folder, 'rides'), path.join(folder, 'rules')];
    for (const one of [rides, rules]) mkdirSync(one);
    const past = path.join(rides, 'deep', 'past.csv');
    mkdirSync(path.dirname(past));
    copyFileSync(csv, past);
    const rule = path.join(rules, 'late-drift.rule.json');
    const off = '{ "id": "late-drift", "off": "No rider can spin down here." }';
    writeFileSync(rule, off);
    for (const argv of [
      ['audit', csv, '--history', rides, '--out', past],
      ['audit', csv, '--history', 'rides', '--letter', past],
      ['audit', csv, '--rules', rules, '--out', rule],
      ['profile', rides, '--out', past],
    ]) {
      const { status, out, err } = await run(argv, { cwd: folder });
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(err).toContain('it would be written over, and its folder is read here. Name another place.');
    }
    expect(readFileSync(past)).toEqual(before);
    expect(readFileSync(rule, 'utf8')).toBe(off);
    const facts = path.join(folder, 'rider.json');
    writeFileSync(facts, '{}');
    const over = await run(['profile', rides, '--rider', facts, '--out', facts]);
    expect(over.err).toContain('it would be written over, and it is read here');
  });

  it('may lie among what is read where they are new, or passed over by who reads there', async () => {
    const folder = scratch();
    const { csv } = recordingIn(folder);
    const rides = path.join(folder, 'rides');
    mkdirSync(rides);
    copyFileSync(csv, path.join(rides, 'past.csv'));
    for (const _ of ['the first time', 'once more']) {
      expect((await run(['profile', 'rides', '--out', 'rides/profile.json'], { cwd: folder })).status).toBe(
        0,
      );
    }
    const argv = ['audit', csv, '--history', 'rides', '--out', 'rides/new.html', '--fail-on', 'never'];
    expect((await run(argv, { cwd: folder })).status).toBe(0);
    // A folder that begins with the same letters is another one.
    mkdirSync(path.join(folder, 'rides-reported'));
    const beside = path.join(folder, 'rides-reported', 'a.txt');
    writeFileSync(beside, '');
    const other = ['audit', csv, '--history', 'rides', '--out', beside, '--fail-on', 'never'];
    expect((await run(other, { cwd: folder })).status).toBe(0);
  });

  it('do not take the place of the archive that a profile is made of', async () => {
    const folder = scratch();
    const zip = path.join(folder, 'rides.zip');
    copyFileSync(sample('riders', '5', 'primary.fit'), zip);
    expect((await run(['profile', zip, '--out', zip], { cwd: folder })).err).toContain('written over');
  });
});

describe('a slip of the keys', () => {
  it('is answered where a recording is named as a history', async () => {
    const { status, err } = await run(['profile', sample('riders', '5', 'primary.fit')]);
    expect(status).toBe(2);
    expect(err).toContain('this is neither a folder nor a ZIP of recordings nor a profile (.json)');
  });

  it('is remarked where a meter is declared that no recording goes with', async () => {
    const folder = scratch();
    const { csv } = recordingIn(folder);
    const { err } = await run(['audit', csv, '--device', 'pedals=pedal,2,1', '--fail-on', 'never']);
    expect(err).toBe('--device pedals=pedal,2,1: no recording here is called so, and nothing rests on it\n');
    // It may be the meter of an earlier ride.
    const rides = path.join(folder, 'rides');
    mkdirSync(rides);
    copyFileSync(csv, path.join(rides, 'pedals.csv'));
    const past = ['--history', rides, '--device', 'pedals=pedal,2,1', '--fail-on', 'never'];
    expect((await run(['audit', csv, ...past])).err).not.toContain('nothing rests on it');
  });

  it('is answered where a tolerance is no number', async () => {
    const { err } = await run(['audit', 'a.fit', '--device', 'primary=crank,2,NaN']);
    expect(err).toContain('--device: “NaN” is no number of per cent.');
  });
});
