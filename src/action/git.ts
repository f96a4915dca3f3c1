import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { MiB } from '../sizes.ts';

/** ms after which git is given up: it only looks at what is there. */
const patience = 60_000;
/** Bytes that git may answer with: a list of some hundred thousand names. */
const mostBytes = 64 * MiB;

/** Environment that git needs; what the job holds besides is none of its business. */
const passedOn = ['PATH', 'HOME', 'USERPROFILE', 'SystemRoot', 'TEMP', 'TMP', 'TMPDIR'];

/** Questions to the repository that a folder of the checkout lies in. */
export interface Git {
  /** What git answers; null when it cannot, for whatever reason: then nothing is known. */
  ask(...args: readonly string[]): Promise<Buffer | null>;
}

/**
 * Git in a folder. It is started without a shell, from outside the checkout, fetches nothing, writes nothing, and
 * starts no program that a file could name.
 */
export function gitIn(
  folder: string,
  workspace: string,
  env: Readonly<Record<string, string | undefined>>,
): Git {
  const program = programFor(env, workspace);
  const settings = ['safe.bareRepository=explicit', 'core.quotePath=false', 'core.fsmonitor=false'];
  const always = [
    '--no-pager',
    '--literal-pathspecs',
    '--no-replace-objects',
    '-C',
    folder,
    ...settings.flatMap((one) => ['-c', one]),
  ];
  const options = {
    encoding: 'buffer',
    timeout: patience,
    maxBuffer: mostBytes,
    windowsHide: true,
    env: {
      ...Object.fromEntries(passedOn.flatMap((name) => (env[name] === undefined ? [] : [[name, env[name]]]))),
      GIT_OPTIONAL_LOCKS: '0',
      GIT_NO_LAZY_FETCH: '1',
      GIT_TERMINAL_PROMPT: '0',
      LC_ALL: 'C',
    },
  } as const;
  return {
    ask: (...args) =>
      program === null
        ? Promise.resolve(null)
        : new Promise((resolve) => {
            execFile(program, [...always, ...args], options, (error, stdout) =>
              resolve(error === null ? stdout : null),
            );
          }),
  };
}

/** Git as the search path has it, never from the checkout: some systems look in the working folder first. */
function programFor(env: Readonly<Record<string, string | undefined>>, workspace: string): string | null {
  const name = process.platform === 'win32' ? 'git.exe' : 'git';
  const outside = (folder: string) =>
    path.isAbsolute(folder) && /^\.\.([\\/]|$)|^[A-Za-z]:/.test(path.relative(workspace, folder));
  const folders = (env.PATH ?? env.Path ?? '').split(path.delimiter).filter(outside);
  return folders.map((folder) => path.join(folder, name)).find((file) => existsSync(file)) ?? null;
}

/** The parts of an answer to `-z`. */
export function partsOf(answer: Buffer): string[] {
  return answer.toString('utf8').split('\0').slice(0, -1);
}

/** One line, as most questions are answered. */
export async function lineFrom(git: Git, ...args: readonly string[]): Promise<string | null> {
  const answer = await git.ask(...args);
  return answer === null ? null : answer.toString('utf8').replace(/\r?\n$/, '');
}
