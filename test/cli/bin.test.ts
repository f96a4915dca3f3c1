import { spawn } from 'node:child_process';
import process from 'node:process';
import { describe, expect, it } from 'vitest';

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
