#!/usr/bin/env node
import process from 'node:process';
import { main } from '../cli.ts';

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
const { stdout, stderr, env } = process;
process.exitCode = await main(process.argv.slice(2), { stdout, stderr, env, cwd: process.cwd() });
