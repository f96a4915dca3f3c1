import { type Argument, Command, CommanderError } from 'commander';
import { auditCommand } from './cli/audit.ts';
import { caseCommand } from './cli/case.ts';
import { decideCommand } from './cli/decide.ts';
import { eventCommand } from './cli/event.ts';
import { coloured, type Io, type Stream, widthOf } from './cli/io.ts';
import { mergeCommand } from './cli/merge.ts';
import { newCommand } from './cli/new.ts';
import { profileCommand } from './cli/profile.ts';
import { rulesCommand } from './cli/rules.ts';
import { complain, painter, remark } from './cli/say.ts';
import { status } from './cli/status.ts';
import { verifyCommand } from './cli/verify.ts';
import { problemsIn } from './problem.ts';
import { clean } from './report/index.ts';
import { wrap } from './report/wrap.ts';
import { tool } from './tool.ts';

export type { Io } from './cli/io.ts';

/** Runs a command line and returns its exit status. Nothing outside `io` is touched but files. */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  let result: number = status.done;
  const program = commands(io, (reached) => {
    result = reached;
  });
  try {
    await program.parseAsync([...argv], { from: 'user' });
    return result;
  } catch (error) {
    return failed(error, io);
  }
}

/** The whole command line, ready to be parsed or described. */
export function commands(io: Io, done: (status: number) => void): Command {
  const program = new Command(tool.name)
    .description('Audits cycling power recordings: what agrees, what does not, and what would settle it.')
    .version(tool.version, '--version', 'print the version')
    .helpOption('--help', 'explain a command')
    .helpCommand('help [command]', 'explain a command')
    .addHelpText(
      'after',
      '\nStart with:\n  $ wattassay audit trainer.fit --second pedals.fit --out report.html\n',
    );
  const subcommands = [
    auditCommand(io, done),
    profileCommand(io, done),
    rulesCommand(io, done),
    eventCommand(io, done),
    mergeCommand(io, done),
    verifyCommand(io, done),
    decideCommand(io, done),
    caseCommand(io, done),
    newCommand(io, done),
  ];
  for (const command of subcommands) program.addCommand(command);
  for (const command of everyCommand(program)) dress(command, io);
  return program;
}

function everyCommand(command: Command): Command[] {
  return [command, ...command.commands.flatMap(everyCommand)];
}

/** Settings that every command shares: where it writes, in which style, and that it never exits itself. */
function dress(command: Command, io: Io): void {
  const paint = painter(io.stdout, io.env);
  command
    .exitOverride()
    .helpOption('--help', 'explain this command')
    .showHelpAfterError('(--help explains the command)')
    .configureOutput({
      writeOut: (text) => io.stdout.write(wrapped(text, helpWidth(io.stdout))),
      writeErr: (text) => io.stderr.write(cleanLines(text)),
      getOutHelpWidth: () => helpWidth(io.stdout),
      getErrHelpWidth: () => helpWidth(io.stderr),
      getOutHasColors: () => coloured(io.stdout, io.env),
      getErrHasColors: () => coloured(io.stderr, io.env),
    })
    .configureHelp({
      styleTitle: (title) => paint('underline', title),
      sortOptions: false,
      // Without “[options]”, so that there is room beside it for what the command does.
      subcommandTerm: (one) => [one.name(), ...one.registeredArguments.map(argumentSaid)].join(' '),
    });
}

function argumentSaid(argument: Argument): string {
  const said = `${argument.name()}${argument.variadic ? '...' : ''}`;
  return argument.required ? `<${said}>` : `[${said}]`;
}

/** Paragraphs that stand at the margin are broken anew to the width; commands to copy, indented, are left whole. */
function wrapped(text: string, width: number): string {
  return text.replace(/^\S.*(\n\S.*)*/gm, (paragraph) =>
    wrap(paragraph.replaceAll('\n', ' '), width).join('\n'),
  );
}

function helpWidth(stream: Stream): number {
  return Math.min(100, widthOf(stream));
}

/** A message may quote what a stranger called a file. */
function cleanLines(text: string): string {
  return text.split('\n').map(clean).join('\n');
}

function failed(error: unknown, io: Io): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? status.done : status.couldNotRun;
  const problems = problemsIn(error);
  if (problems !== null) {
    complain(io, problems);
    return status.couldNotRun;
  }
  remark(io, 'This is a fault of the program, not of your files. Please report it with these lines:');
  io.stderr.write(`${cleanLines(error instanceof Error ? (error.stack ?? error.message) : String(error))}\n`);
  return status.couldNotRun;
}
