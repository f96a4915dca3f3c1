import { realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import type { AllBecause } from '../types.ts';
import { type Base, baseOf } from './base.ts';
import { type Git, gitIn, lineFrom } from './git.ts';

/** The repository that an event lies in, and what the run is to be compared with. */
export interface Repository {
  readonly git: Git;
  /** Its top folder. */
  readonly top: string;
  readonly base: Base;
}

type Env = Readonly<Record<string, string | undefined>>;

/** @param place a file or folder of the repository */
export async function repositoryAt(
  place: string,
  workspace: string,
  env: Env,
): Promise<Repository | AllBecause> {
  const folder = await stat(place).then(
    (one) => (one.isDirectory() ? place : path.dirname(place)),
    () => path.dirname(place), // That it is not there is told when it is read.
  );
  const told = await lineFrom(gitIn(folder, workspace, env), 'rev-parse', '--show-toplevel');
  if (told === null || told === '') return 'no repository';
  const top = await realpath(told);
  const git = gitIn(top, workspace, env);
  const base = await baseOf(git, env);
  return typeof base === 'string' ? base : { git, top, base };
}

/** A place as git names it: from the top folder, with `/`; empty for the top folder itself. */
export function placeIn(top: string, place: string): string {
  return path.relative(top, place).split(path.sep).join('/');
}
