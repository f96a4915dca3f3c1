import path from 'node:path';
import { Command, InvalidArgumentError, Option } from 'commander';
import { partFrom } from '../event/parts.ts';
import { recordFile } from '../event/record.ts';
import { changesSince } from '../event/since.ts';
import { rank } from '../judge/judge.ts';
import { countsSaid, crossCheckLines, gradeSaid } from '../report/event/index.ts';
import { plain } from '../report/words/sentence.ts';
import type { EventRecord } from '../types.ts';
import { day } from '../units.ts';
import { auditEvent } from './event-audit.ts';
import { namedAsWritten, writtenInto } from './event-folders.ts';
import { type EventGiven, eventGiven } from './event-plan.ts';
import { usualPatience } from './event-run.ts';
import type { Io } from './io.ts';
import { options, today } from './options.ts';
import { keepApart } from './outputs.ts';
import { many, remark } from './say.ts';
import { type FailOn, status } from './status.ts';

interface EventOptions {
  readonly out?: string;
  readonly check?: true;
  readonly rules?: string;
  readonly earlier?: readonly string[];
  readonly since?: string;
  readonly jobs?: number;
  readonly patience?: number;
  readonly part?: string;
  readonly today?: string;
  readonly failOn: FailOn;
  readonly redact?: true;
}

const examples = `
Examples:
  $ wattassay event samples/event --out out/round-3
  $ wattassay event round-3.event.json --check
  $ wattassay event submissions/ --out audited --since audited-yesterday
  $ wattassay event round-3.event.json --out part-2 --part 2/5

A folder without an event file works too: a file belongs to the rider whose number is at the start of its folder
or name, “primary” and “second” in the name say which is which, and whatever leaves a doubt is listed.

What is done is kept in the folder --out: interrupted or repeated, a run audits only what is new or has changed.

Exit status: 0 below --fail-on; 1 a submission reached it, or is incomplete; 2 could not run.
`;

/** `wattassay event FILE|FOLDER`. `done` is told the exit status. */
export function eventCommand(io: Io, done: (status: number) => void): Command {
  return new Command('event')
    .summary('audit every submission of an event')
    .description(
      'Audits every submission of an event, compares them, and writes an overview with all reports.',
    )
    .argument('<event>', 'the event file (<name>.event.json), or the folder with it or with the submissions')
    .option('--out <folder>', 'where the overview, the record and the reports go')
    .option('--check', 'say what is found and everything that is wrong, and audit nothing')
    .addOption(options.rules())
    .addOption(options.earlier())
    .addOption(options.since())
    .addOption(new Option('--jobs <count>', 'submissions audited at once; one a processor').argParser(count))
    .addOption(
      new Option(
        '--patience <seconds>',
        `give a submission up whose audit takes longer than this; ${usualPatience} when left out`,
      ).argParser(seconds),
    )
    .addOption(options.today())
    .option('--part <part>', 'audit one part of the submissions, like 2/5; merge puts parts together')
    .addOption(options.failOn())
    .addOption(options.redact())
    .addHelpText('after', examples)
    .action(async (named: string, given: EventOptions, command: Command) => {
      if (given.check === undefined && given.out === undefined) {
        command.error(
          "error: name the folder for the reports with '--out <folder>', or look first with --check",
        );
      }
      done(given.check ? await check(io, named, given) : await run(io, named, given, given.out!));
    });
}

/** Reads a whole number from 1 to `most`, or says what to give. */
const upTo = (most: number, give: string) => (value: string) => {
  const parsed = Number(value);
  if (Number.isInteger(parsed) && parsed >= 1 && parsed <= most) return parsed;
  throw new InvalidArgumentError(give);
};

const count = upTo(256, 'Give a whole number from 1 to 256.');
const seconds = upTo(day, `Give whole seconds, from 1 to ${day}.`);

/** Says what is found. Doubts alone make status 1, so that a script notices them. */
async function check(io: Io, named: string, given: EventOptions): Promise<number> {
  const event = await eventGiven(io, named, given);
  const { plan } = event;
  const { entries } = plan;
  const having = (has: (entry: (typeof entries)[number]) => boolean) => entries.filter(has).length;
  const without = entries.filter(({ primary }) => primary === null);
  const absent = without.filter(({ doubt }) => doubt === null).map(({ number }) => number);
  const doubtful = without.filter(({ doubt }) => doubt !== null).map(({ number }) => number);
  io.stdout.write(
    [
      `${plan.name}: ${many(entries.length, 'rider')}`,
      `  ${having(({ primary }) => primary !== null)} with a recording`,
      `  ${having(({ seconds }) => seconds.length > 0)} with a second recording`,
      `  ${having(({ history }) => history !== null)} with earlier rides`,
      ...(absent.length === 0 ? [] : [`  nothing handed in: ${absent.join(', ')}`]),
      ...(doubtful.length === 0 ? [] : [`  handed in, and in doubt: ${doubtful.join(', ')}`]),
      '',
    ].join('\n'),
  );
  tellDoubts(io, given, event);
  return plan.unmatched.length > 0 || event.remarks.length > 0 ? status.reached : status.done;
}

/** Says what the organiser had better know before anything is audited. */
export function tellDoubts(
  io: Io,
  { redact }: { readonly redact?: boolean },
  { plan, remarks }: EventGiven,
): void {
  for (const said of remarks) remark(io, `note: ${said}`);
  if (redact) return;
  for (const { file, why, hint } of plan.unmatched) remark(io, `not matched: ${file}: ${why}. ${hint}.`);
}

async function run(io: Io, named: string, given: EventOptions, out: string): Promise<number> {
  const part = given.part === undefined ? null : partFrom(given.part);
  const event = await eventGiven(io, named, given);
  await keepApart(
    io,
    [event.place, ...namedAsWritten(event.files.textsRead()), ...(given.earlier ?? [])],
    writtenInto(out),
  );
  tellDoubts(io, given, event);
  const settings = { ...given, part, redact: given.redact === true, today: given.today ?? today() };
  const { record, before, reused, gone } = await auditEvent(io, event, settings, out);
  if (reused > 0) remark(io, `${reused} of ${record.rows.length} unchanged since the last run`);
  tellGone(io, gone);
  tell(io, record, before, path.join(out, record.part === null ? 'overview.html' : recordFile));
  return eventStatus(record, given.failOn);
}

/** Says whose reports of an earlier run went. */
export function tellGone(io: Io, gone: number): void {
  if (gone > 0) remark(io, `taken away: ${many(gone, 'report')} of riders who are no longer in the event`);
}

/** What an event came to, in a few lines. */
export function tell(io: Io, record: EventRecord, before: EventRecord | null, where: string): void {
  io.stdout.write(`${many(record.rows.length, 'submission')}. ${countsSaid(record)}.\n`);
  for (const { said } of crossCheckLines(record)) remark(io, plain(said));
  if (before !== null) {
    const rows = new Map(record.rows.map((row) => [row.number, row]));
    for (const [number, change] of changesSince(before, record)) {
      const row = rows.get(number);
      if (change === 'same') continue;
      io.stdout.write(`${number}: ${change}${row === undefined ? '' : `, now ${gradeSaid(row)}`}\n`);
    }
  }
  remark(io, `written: ${where}`);
}

/** The exit status of an event: that of its gravest submission, and of what only the event shows. */
export function eventStatus({ rows, crossChecks }: EventRecord, failOn: FailOn): number {
  if (failOn === 'never') return status.done;
  const grades = rows.some(
    ({ grade, missing, state }) =>
      state === 'not audited' ||
      missing.length > 0 ||
      grade === 'incomplete' ||
      ((grade === 'query' || grade === 'refer') && rank(grade) >= rank(failOn)),
  );
  const findings = rows.some((row) => row.findings.some(({ level }) => rank(level) >= rank(failOn)));
  const shared = crossChecks?.shared.some(({ level }) => rank(level) >= rank(failOn)) ?? false;
  return grades || findings || shared ? status.reached : status.done;
}
