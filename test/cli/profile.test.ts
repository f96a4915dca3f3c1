import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { scratch } from '../files/scratch.ts';
import { run, sample } from './run.ts';

const history = sample('riders', '35', 'history');
const rides = readdirSync(history).filter((name) => name.endsWith('.fit'));

describe('profile', () => {
  it('prints a profile, and says beside it what was taken', async () => {
    const { status, out, err } = await run(['profile', history]);
    expect(status).toBe(0);
    expect(JSON.parse(out).rides).toHaveLength(rides.length);
    expect(err.startsWith(`${rides.length} rides\nThey lie within `)).toBe(true);
    expect(err.split('\n')).toHaveLength(3);
  });

  it('leaves out what cannot serve, counts it, and searches folders within', async () => {
    const folder = scratch();
    mkdirSync(path.join(folder, 'rides', '2026'), { recursive: true });
    cpSync(path.join(history, rides[0]!), path.join(folder, 'rides', '2026', 'a.fit'));
    cpSync(path.join(history, rides[0]!), path.join(folder, 'rides', 'b.fit'));
    writeFileSync(path.join(folder, 'rides', 'torn.fit'), 'x');
    writeFileSync(path.join(folder, 'rides', 'rider.json'), '{}');
    const { status, out, err } = await run(['profile', 'rides', '--out', 'p.json'], { cwd: folder });
    expect(status).toBe(0);
    expect(out).toBe('');
    expect(err).toBe('1 ride; left out: 1 duplicate, 1 unreadable\n');
    expect(readdirSync(folder).sort()).toEqual(['p.json', 'rides']);
  });

  it('carries an earlier profile on, to the same as compiling all at once', async () => {
    const folder = scratch();
    const half = path.join(folder, 'half');
    mkdirSync(half);
    for (const ride of rides.slice(0, 7)) cpSync(path.join(history, ride), path.join(half, ride));
    const first = path.join(folder, 'first.json');
    const second = path.join(folder, 'second.json');
    await run(['profile', half, '--out', first]);
    await run(['profile', history, '--history', first, '--out', second]);
    expect(readFileSync(second, 'utf8')).toBe((await run(['profile', history])).out);
  });

  it('says when there is no such folder, or the earlier profile is none', async () => {
    expect(await run(['profile', 'none'])).toMatchObject({ status: 2, out: '' });
    const { status, err } = await run(['profile', history, '--history', 'package.json']);
    expect(status).toBe(2);
    expect(err).toMatch(/^error: package\.json/);
  });
});
