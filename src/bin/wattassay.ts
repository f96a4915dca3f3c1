#!/usr/bin/env node
import process from 'node:process';
import { main } from '../cli.ts';

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

/** The signal is sent once more, with nobody listening: whoever started the program sees that it was stopped. */
function whenStopped(say: () => void): () => void {
  const signals = ['SIGINT', 'SIGTERM'] as const;
  const silent = () => {
    for (const signal of signals) process.off(signal, stop);
  };
  const stop = (signal: NodeJS.Signals) => {
    silent();
    say();
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, stop);
  return silent;
}

const { stdout, stderr, env } = process;
const io = { stdout, stderr, env, cwd: process.cwd(), whenStopped };
process.exitCode = await main(process.argv.slice(2), io);
