import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { parse } from 'yaml';

export interface ActionFile {
  readonly inputs: Readonly<Record<string, { description?: string; default?: string; required?: boolean }>>;
  readonly outputs: Readonly<Record<string, { description?: string }>>;
  readonly runs: { readonly using: string; readonly main: string };
}

export const actionFile: ActionFile = parse(readFileSync('action.yml', 'utf8'));

export interface Command {
  readonly name: string;
  readonly message: string;
  /** What stands between name and message, as the runner takes it apart. */
  readonly properties: Readonly<Record<string, string>>;
}

export interface Run {
  readonly status: number | null;
  readonly log: string;
  /** What the runner would have carried out. */
  readonly commands: readonly Command[];
  readonly outputs: Readonly<Record<string, string>>;
  readonly summary: string;
}

/**
 * Runs the bundle as a runner does: no arguments, the checkout as the working folder, every declared input
 * in the environment, files for outputs and summary, and both streams read for commands.
 *
 * @param started what the runner says of what started the workflow
 */
export function runAction(
  workspace: string,
  inputs: Readonly<Record<string, string>>,
  started: Readonly<Record<string, string>> = {},
): Run {
  const unknown = Object.keys(inputs).filter((name) => !(name in actionFile.inputs));
  if (unknown.length > 0) throw new Error(`action.yml declares no input ${unknown.join(', ')}`);
  const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-runner-'));
  const file = (name: string) => {
    const at = path.join(folder, name);
    writeFileSync(at, '');
    return at;
  };
  const [output, summary, state, environment, searchPath] = ['output', 'summary', 'state', 'env', 'path'].map(
    file,
  ) as [string, string, string, string, string];
  mkdirSync(path.join(folder, 'temp'));
  const given = Object.entries(actionFile.inputs).map(([name, input]) => [
    `INPUT_${name.replaceAll(' ', '_').toUpperCase()}`,
    inputs[name] ?? input.default ?? '',
  ]);
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.resolve(actionFile.runs.main)], {
    cwd: workspace,
    encoding: 'utf8',
    env: {
      ...started,
      ...Object.fromEntries(given),
      // Windows cannot start a program without it.
      ...(process.env.SystemRoot === undefined ? {} : { SystemRoot: process.env.SystemRoot }),
      CI: 'true',
      GITHUB_ACTIONS: 'true',
      GITHUB_WORKSPACE: workspace,
      GITHUB_OUTPUT: output,
      GITHUB_STEP_SUMMARY: summary,
      GITHUB_STATE: state,
      GITHUB_ENV: environment,
      GITHUB_PATH: searchPath,
      RUNNER_TEMP: path.join(folder, 'temp'),
    },
  });
  const touched = [state, environment, searchPath].filter((name) => readFileSync(name, 'utf8') !== '');
  if (touched.length > 0) throw new Error(`the action wrote to ${touched.join(', ')}`);
  const left = readdirSync(path.join(folder, 'temp'));
  if (left.length > 0) throw new Error(`the action left ${left.join(', ')} behind`);
  return {
    status,
    log: stdout + stderr,
    commands: [...commandsIn(stdout), ...commandsIn(stderr)],
    outputs: outputsIn(readFileSync(output, 'utf8')),
    summary: readFileSync(summary, 'utf8'),
  };
}

/**
 * The commands that a runner finds in a log: `::name …::message` at the start of a line, behind spaces too,
 * and the older `##[name …]message` anywhere in one; none between `::stop-commands::token` and `::token::`.
 * After actions/runner, ActionCommand.cs and ActionCommandManager.cs.
 */
export function commandsIn(log: string): Command[] {
  const commands: Command[] = [];
  let stopped: string | null = null;
  for (const line of log.split(/\r\n|\r|\n/)) {
    const command = newer(line) ?? older(line);
    if (command === null) continue;
    if (stopped !== null) {
      if (command.name === stopped) stopped = null;
    } else if (command.name === 'stop-commands') stopped = command.message;
    else commands.push(command);
  }
  return commands;
}

function newer(line: string): Command | null {
  const text = line.trimStart();
  const end = text.indexOf('::', 2);
  return text.startsWith('::') && end > 0 ? named(text.slice(2, end), text.slice(end + 2)) : null;
}

function older(line: string): Command | null {
  const start = line.indexOf('##[');
  const end = line.indexOf(']', start);
  return start >= 0 && end > 0 ? named(line.slice(start + 3, end), line.slice(end + 1)) : null;
}

function named(head: string, message: string): Command {
  const [name = '', ...rest] = head.split(' ');
  const properties = rest
    .join(' ')
    .split(',')
    .filter((one) => one.includes('='))
    .map((one) => [one.slice(0, one.indexOf('=')).trim(), decoded(one.slice(one.indexOf('=') + 1))]);
  return { name, message: decoded(message), properties: Object.fromEntries(properties) };
}

const marks: Readonly<Record<string, string>> = {
  '%0D': '\r',
  '%0A': '\n',
  '%3A': ':',
  '%2C': ',',
  '%25': '%',
};

const decoded = (text: string) => text.replace(/%(0D|0A|3A|2C|25)/g, (mark) => marks[mark]!);

/** `name<<delimiter`, lines, `delimiter`. */
function outputsIn(text: string): Record<string, string> {
  return Object.fromEntries(
    [...text.matchAll(/^(.+?)<<(.+)\r?\n([\s\S]*?)\r?\n\2$/gm)].map(([, name, , value]) => [name, value]),
  );
}
