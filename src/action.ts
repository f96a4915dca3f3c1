import { randomUUID } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import type * as actionsCore from '@actions/core';
import { main } from './cli.ts';
import { refuseOutside } from './files/index.ts';
import { Problem, sentence } from './problem.ts';
import { clean } from './report/index.ts';
import type { Report } from './types.ts';

/** What of @actions/core is used here; the log is a stream, because both of a process's are read for commands. */
export type Core = Pick<
  typeof actionsCore,
  'getInput' | 'getMultilineInput' | 'getBooleanInput' | 'setOutput' | 'setFailed' | 'summary'
>;

/** The world around a run of the action. */
export interface Place {
  readonly log: { write(text: string): unknown };
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The checkout. Nothing outside it is read or written. */
  readonly workspace: string;
}

/**
 * One run: the inputs become a command line, so that the action finds nothing different; what the command
 * line wrote becomes outputs and a summary.
 */
export async function run(core: Core, place: Place): Promise<void> {
  try {
    await audit(core, place);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    core.setFailed(clean(sentence(error)));
  }
}

async function audit(core: Core, { log, env, workspace }: Place): Promise<void> {
  const folder = core.getInput('report-folder');
  const primary = core.getInput('primary', { required: true });
  const one = (name: string) => core.getInput(name);
  const named: readonly (readonly [option: string, path: string])[] = [
    ...core.getMultilineInput('second').map((file) => ['second', file] as const),
    ...['history', 'rider', 'race', 'rules'].map((name) => [name, one(name)] as const),
  ];
  const given = named.filter(([, file]) => file !== '');
  for (const file of [folder, primary, ...given.map(([, file]) => file)]) {
    await refuseOutside(workspace, file);
  }
  await mkdir(path.resolve(workspace, folder), { recursive: true });
  const out = (ending: string) => path.posix.join(folder.replaceAll('\\', '/'), `report.${ending}`);

  const redact = core.getBooleanInput('redact');
  const status = await quietly(log, (stream) =>
    main(
      [
        'audit',
        ...given.map(([option, file]) => `--${option}=${file}`),
        ...['html', 'json', 'md'].map((ending) => `--out=${out(ending)}`),
        '--format=text',
        `--fail-on=${one('fail-on')}`,
        ...(redact ? ['--redact'] : []),
        '--',
        primary,
      ],
      { stdout: stream, stderr: stream, env, cwd: workspace },
    ),
  );
  if (status === 2) return core.setFailed('The audit could not run: the log says why.');

  const read = (ending: string) => readFile(path.resolve(workspace, out(ending)), 'utf8');
  const { grade }: Report = JSON.parse(await read('json'));
  core.setOutput('grade', grade);
  core.setOutput('report', out('html'));
  core.setOutput('json', out('json'));
  // Where no summary can be shown there is no such variable.
  if (env.GITHUB_STEP_SUMMARY) await core.summary.addRaw(await read('md'), true).write();
  if (status !== 0) core.setFailed(`Grade: ${grade}. The report says what would settle it.`);
}

/**
 * Lets a command write to the log while the runner takes nothing in it as a command to itself: whatever a
 * stranger's text may still hold after cleaning stays text.
 */
async function quietly(
  log: Place['log'],
  command: (stream: Place['log']) => Promise<number>,
): Promise<number> {
  const token = randomUUID();
  log.write(`::stop-commands::${token}\n`);
  try {
    return await command(log);
  } finally {
    log.write(`\n::${token}::\n`);
  }
}
