import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { shippedRules } from '../../src/judge/shipped.ts';
import { scratch } from '../files/scratch.ts';
import { run } from './run.ts';

/** A folder of rule files by name. */
function folderOf(files: Readonly<Record<string, unknown>>): string {
  const folder = path.join(scratch(), 'our-rules');
  mkdirSync(folder);
  for (const [name, content] of Object.entries(files)) {
    writeFileSync(path.join(folder, name), typeof content === 'string' ? content : JSON.stringify(content));
  }
  return folder;
}

describe('rules', () => {
  it('lists every rule with its question', async () => {
    const { status, out } = await run(['rules']);
    expect(status).toBe(0);
    for (const { id, question } of shippedRules) {
      expect(out).toMatch(new RegExp(`^  ${id} .*`, 'm'));
      expect(out).toContain(question);
    }
  });

  it('lists them as an event has them', async () => {
    const folder = folderOf({ 'dead-cadence.rule.json': { id: 'dead-cadence', off: 'No cadence here.' } });
    const { out } = await run(['rules', '--rules', folder]);
    expect(out).toMatch(/^ {2}dead-cadence +query +switched off: No cadence here\.$/m);
  });
});

describe('rules show', () => {
  it.each(shippedRules.map((rule) => [rule.id, rule] as const))('%s', async (id, rule) => {
    const { status, out, err } = await run(['rules', 'show', id], {
      columns: 10_000,
      env: { NO_COLOR: '1' },
    });
    expect(status).toBe(0);
    expect(err).toBe('');
    const text = out.replace(/\s+/g, ' ');
    const all = [rule.title, rule.question, ...rule.innocent, ...rule.settles, ...Object.values(rule.claims)];
    for (const words of all) expect(text).toContain(words.replace(/\s+/g, ' '));
    for (const name of Object.keys(rule.options)) expect(text).toContain(`${name} = `);
    expect(text).not.toMatch(/undefined|\[object|: not known/);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it('gives limits and examples their unit', async () => {
    const { out } = await run(['rules', 'show', 'dead-cadence'], { columns: 100, env: { NO_COLOR: '1' } });
    expect(out).toContain('query: at least 0.9 (90\u00a0%), by the cautious end of the interval');
    expect(out).toContain('0.3 (30\u00a0%) [0.3, 0.3] from 3000: note');
  });

  it('shows a rule as an event has it', async () => {
    const folder = folderOf({ 'dead-cadence.rule.json': { id: 'dead-cadence', off: 'No cadence here.' } });
    const { out } = await run(['rules', 'show', 'dead-cadence', '--rules', folder]);
    expect(out).toContain('Switched off: No cadence here.');
  });
});

describe('rules check', () => {
  it('refuses what is no folder, and values nested too deeply, in one sentence', async () => {
    const folder = folderOf({ 'late-drift.rule.json': `${'['.repeat(100_000)}${']'.repeat(100_000)}` });
    expect(await run(['rules', 'check', folder])).toEqual({
      status: 2,
      out: '',
      err: 'error: late-drift.rule.json: it is nested more than 64 deep. No file that is wanted here is.\n',
    });
    const { err } = await run(['rules', 'check', 'package.json']);
    expect(err).toBe('error: package.json: it is a file, and a folder is wanted.\n');
  });

  it('says what a folder changes, field by field', async () => {
    const folder = folderOf({
      'dead-cadence.rule.json': {
        id: 'dead-cadence',
        title: 'No cadence',
        limits: { note: { 'at least': 0.2 } },
      },
      'power-spike.rule.json': { id: 'power-spike', off: 'Not here.' },
      'still-cadence.rule.json': {
        ...shippedRules.find(({ id }) => id === 'dead-cadence'),
        id: 'still-cadence',
      },
      'grades.json': { queriesThatRefer: 3, why: 'So it was voted.' },
      'README.md': '# Ours',
    });
    const { status, out, err } = await run(['rules', 'check', folder]);
    expect(err).toBe('');
    expect(status).toBe(0);
    expect(out.split('\n').slice(0, -2)).toEqual([
      'dead-cadence › title: "Cadence stays at zero" → "No cadence"',
      'dead-cadence › limits › note › at least: 0.1 → 0.2',
      'power-spike: switched off: Not here.',
      'still-cadence: a new rule',
      'grades › queriesThatRefer: null → 3',
      expect.stringMatching(/^grades › why: /),
    ]);
    expect(out).toMatch(/4 files in order; rule set [0-9a-f]{64}\n$/);
  });

  it('tells everything that is wrong, a line each', async () => {
    const folder = folderOf({
      'dead-cadence.rule.json': { id: 'dead-cadence', limitss: {}, highest: 'quer' },
      'x.rule.json': '{',
    });
    const { status, out, err } = await run(['rules', 'check', folder]);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err.trimEnd().split('\n')).toEqual([
      'error: dead-cadence.rule.json › limitss: there is no such field. Did you mean “limits”?',
      'error: dead-cadence.rule.json › highest: "quer" stands where one of these must: note, query, refer, incomplete. Did you mean “query”?',
      expect.stringMatching(/^error: x\.rule\.json.*: this is not JSON/),
    ]);
  });

  it('finds nothing different in the shipped files themselves', async () => {
    const { status, out } = await run(['rules', 'check', 'rules']);
    expect(status).toBe(0);
    expect(out).toMatch(/^nothing differs from the shipped rules\n/);
  });

  it('echoes no command to a log from a hostile file', async () => {
    const folder = folderOf({
      'dead-cadence.rule.json': { id: 'dead-cadence', off: 'a\n::error::b ##[c] \u001b[31m\u202e' },
    });
    const { out } = await run(['rules', 'check', folder]);
    expect(out).not.toMatch(/\n::|::error|##\[|\u001b|\u202e/);
  });
});
