import { spawn } from 'node:child_process';
import { cpSync, existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { onWindows, scratch } from '../files/scratch.ts';
import { sample } from './run.ts';

/** Runs the starter as a program of its own; `closing` stops listening at its first output. */
function start(argv: readonly string[], closing = false): Promise<{ status: number | null; err: string }> {
  const child = spawn(process.execPath, ['src/dev/run.mjs', 'src/bin/wattassay.ts', ...argv]);
  const err: string[] = [];
  child.stderr.setEncoding('utf8').on('data', (text) => err.push(text));
  child.stdout.on('data', () => {
    if (closing) child.stdout.destroy();
  });
  return new Promise((resolve) => {
    child.on('close', (status) => resolve({ status, err: err.join('') }));
  });
}

describe('the program', () => {
  it('ends with the status of the command', async () => {
    expect(await start(['rules', 'show', 'dead-cadence'])).toEqual({ status: 0, err: '' });
    expect(await start(['audit', 'none.fit'])).toMatchObject({ status: 2 });
  });

  it('is quiet when whoever reads it has seen enough', async () => {
    const html = ['audit', 'samples/event/riders/28/primary.fit', '--format', 'html'];
    expect(await start(html, true)).toEqual({ status: 0, err: '' });
  });
});

/** A worker that never comes to an end with rider 5, and is the real one for everybody else. */
const hanging = `
import { parentPort } from 'node:worker_threads';
const on = parentPort.on.bind(parentPort);
parentPort.on = (name, listen) => on(name, (entry) => {
  if (entry.number === '5') for (;;);
  listen(entry);
});
await import('./honest-worker.js');
`;

/** The built program with that worker, and an event of two riders, of whom one makes it hang. */
function hangingEvent() {
  const folder = scratch();
  const at = (...parts: string[]) => path.join(folder, ...parts);
  cpSync('dist', at('dist'), { recursive: true });
  writeFileSync(at('package.json'), '{ "type": "module" }');
  renameSync(at('dist', 'worker.js'), at('dist', 'honest-worker.js'));
  writeFileSync(at('dist', 'worker.js'), hanging);
  for (const rider of ['5', '30']) cpSync(sample('riders', rider), at('few', rider), { recursive: true });
  const start = (...more: string[]) =>
    spawn(process.execPath, [at('dist', 'cli.js'), 'event', 'few', '--out', 'out', '--jobs', '2', ...more], {
      cwd: folder,
    });
  return { at, start };
}

function ended(child: ReturnType<typeof spawn>) {
  let err = '';
  child.stderr!.setEncoding('utf8').on('data', (text) => {
    err += text;
  });
  return new Promise<{ status: number | null; signal: string | null; err: string }>((resolve) => {
    child.on('close', (status, signal) => resolve({ status, signal, err }));
  });
}

describe('an event with a submission that hangs', { timeout: 120_000 }, () => {
  it('gives that one up, and audits the others', async () => {
    const { at, start } = hangingEvent();
    // Long enough for the other on a machine that has much else to do.
    expect(await ended(start('--patience', '20'))).toMatchObject({ status: 1 });
    const { rows } = JSON.parse(readFileSync(at('out', 'event.json'), 'utf8'));
    expect(rows).toMatchObject([
      { number: '5', state: 'not audited', why: expect.stringContaining('no answer within 20 s') },
      { number: '30', state: 'audited' },
    ]);
  });

  it.skipIf(onWindows)('can be stopped, says what is kept, and goes on from there', async () => {
    const { at, start } = hangingEvent();
    const child = start();
    const end = ended(child);
    const timer = setInterval(() => {
      if (existsSync(at('out', 'reports', 'rider-30', 'row.json'))) child.kill('SIGINT');
    }, 100);
    const { signal, err } = await end;
    clearInterval(timer);
    expect(signal).toBe('SIGINT');
    expect(err).toMatch(/Stopped: [01] of 2 submissions are done and kept in out\. The same command goes on/);
    expect(existsSync(at('out', 'event.json'))).toBe(false);
    renameSync(at('dist', 'honest-worker.js'), at('dist', 'worker.js'));
    expect((await ended(start())).err).toContain('1 of 2 unchanged');
  });
});
