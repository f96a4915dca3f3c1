import process from 'node:process';
import * as core from '@actions/core';
import { run } from '../action.ts';

const { env } = process;
run(core, { log: process.stdout, env, workspace: env.GITHUB_WORKSPACE ?? process.cwd() }).catch((error) =>
  core.setFailed(error instanceof Error ? error : String(error)),
);
