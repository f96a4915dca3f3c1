import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { actionFile, commandsIn, runAction } from './runner.ts';

const event = path.resolve('samples/event');

/** A checkout of its own, with one rider's files of the sample event. */
function checkout(rider: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-checkout-'));
  cpSync(path.join(event, 'riders', rider), folder, { recursive: true });
  cpSync(path.join(event, 'race.json'), path.join(folder, 'race.json'));
  return folder;
}

const facts = { primary: 'primary.fit', rider: 'rider.json', race: 'race.json' };

describe('action.yml', () => {
  it('names a Node that runners have, and the bundle', () => {
    expect(actionFile.runs).toEqual({ using: 'node24', main: 'dist/action.js' });
    expect(existsSync(actionFile.runs.main)).toBe(true);
  });

  it('accuses nobody in public unless it is told to', () => {
    expect(actionFile.inputs['fail-on']?.default).toBe('never');
    expect(actionFile.inputs.redact?.default).toBe('true');
  });

  it('describes every input and output, and declares exactly those that are used', () => {
    const items = { ...actionFile.inputs, ...actionFile.outputs };
    expect(Object.entries(items).filter(([, { description }]) => !description?.endsWith('.'))).toEqual([]);
    const code = readFileSync('src/action.ts', 'utf8');
    const unused = Object.keys(items).filter((name) => !code.includes(`'${name}'`));
    expect(unused).toEqual([]);
  });
});

describe('the action', () => {
  it('reports without heart rate and mass, and fails nothing by default', () => {
    const workspace = checkout('14');
    writeFileSync(path.join(workspace, 'rider.json'), JSON.stringify({ massKg: 91.3729 }));
    const run = runAction(workspace, { ...facts, second: 'second.fit' });
    expect(run.commands).toEqual([]);
    expect(run.status).toBe(0);
    expect(run.outputs).toEqual({
      grade: 'refer',
      report: 'wattassay-report/report.html',
      json: 'wattassay-report/report.json',
    });
    expect(Object.keys(run.outputs).sort()).toEqual(Object.keys(actionFile.outputs).sort());
    for (const shown of [run.summary, run.log])
      expect(shown).toContain('The difference grows through the ride');

    const read = (name: string) => readFileSync(path.join(workspace, 'wattassay-report', name), 'utf8');
    const [page, json] = [read('report.html'), read('report.json')];
    expect(page).toMatch(/^<!doctype html>/);
    const report = JSON.parse(json);
    expect(report.settings.redacted).toBe(true);
    expect(report.charts.find((chart: { kind: string }) => chart.kind === 'traces').heartRate).toBeNull();
    for (const shown of [page, json, run.log, run.summary]) expect(shown).not.toContain('91.3729');
  });

  it('fails the job from the level that it is told', () => {
    const workspace = checkout('14');
    const run = runAction(workspace, { ...facts, second: 'second.fit', 'fail-on': 'refer' });
    expect(run.status).toBe(1);
    expect(run.commands).toEqual([
      { name: 'error', message: 'Grade: refer. The report says what would settle it.' },
    ]);
    expect(run.outputs.grade).toBe('refer');
  });

  it('says what is wrong when it cannot run, and writes no report', () => {
    const workspace = checkout('14');
    writeFileSync(path.join(workspace, 'primary.fit'), 'not a recording');
    const run = runAction(workspace, facts);
    expect(run.status).toBe(1);
    expect(run.commands.map(({ name }) => name)).toEqual(['error']);
    expect(run.log).toContain('primary.fit');
    expect(run.outputs).toEqual({});
    expect(existsSync(path.join(workspace, 'wattassay-report/report.html'))).toBe(false);
  });

  it.each([
    ['../primary.fit', 'lies outside'],
    [path.resolve('package.json'), 'lies outside'],
    ['-rf.fit', 'no such file'],
    ['::error::x\n::set-env name=A::b', 'error'],
    ['##[add-mask]e', 'no such file'],
  ])('refuses the path %j', (primary, why) => {
    const run = runAction(checkout('14'), { ...facts, primary });
    expect(run.status).toBe(1);
    expect(run.log).toContain(why);
    expect(run.commands.map(({ name }) => name)).toEqual(['error']);
  });

  it.skipIf(process.platform === 'win32')('follows no link of the checkout, for reading or writing', () => {
    const workspace = checkout('14');
    const elsewhere = mkdtempSync(path.join(tmpdir(), 'wattassay-elsewhere-'));
    symlinkSync('/proc/self/environ', path.join(workspace, 'linked.fit'));
    symlinkSync(elsewhere, path.join(workspace, 'folder'));
    for (const inputs of [
      { ...facts, primary: 'linked.fit' },
      { ...facts, second: 'linked.fit' },
      { ...facts, history: 'folder' },
      { ...facts, 'report-folder': 'folder/reports' },
    ]) {
      const run = runAction(workspace, inputs);
      expect(run.status).toBe(1);
      expect(run.log).toContain('behind, a link');
      expect(run.log).not.toContain('INPUT_');
    }
    expect(existsSync(path.join(elsewhere, 'reports'))).toBe(false);
  });

  it('lets nothing that a file says become a command', () => {
    const hostile = '##[add-mask]e\n::error::x\r::warning::y';
    const workspace = checkout('14');
    const rules = path.join(workspace, 'rules');
    mkdirSync(rules);
    writeFileSync(
      path.join(rules, 'late-drift.rule.json'),
      JSON.stringify({ id: 'late-drift', title: hostile }),
    );
    writeFileSync(path.join(workspace, 'race.json'), JSON.stringify({ kind: hostile }));
    for (const inputs of [
      { ...facts, second: 'second.fit', rules: 'rules' },
      { ...facts, race: '', second: 'second.fit', rules: 'rules', redact: 'false' },
    ]) {
      const run = runAction(workspace, inputs);
      expect(run.commands.filter(({ name }) => name !== 'error')).toEqual([]);
      expect(run.commands.filter(({ message }) => message === 'x')).toEqual([]);
    }
  });
});

describe('the runner’s parser, as it is ported here', () => {
  it('takes both kinds of command, wherever a runner does', () => {
    expect(commandsIn('  ::error file=a,line=1::text')).toEqual([{ name: 'error', message: 'text' }]);
    expect(commandsIn('a rider called ##[add-mask]e')).toEqual([{ name: 'add-mask', message: 'e' }]);
    expect(commandsIn('a :: b, [c], ## d')).toEqual([]);
  });

  it('takes none while they are stopped', () => {
    const log = '::stop-commands::t\n::error::a\n##[error]b\n::t::\n::notice::c';
    expect(commandsIn(log)).toEqual([{ name: 'notice', message: 'c' }]);
  });
});
