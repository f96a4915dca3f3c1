import path from 'node:path';
import { Command, Option } from 'commander';
import { decisionsFile, decisionsFrom, printDecisions, viewOf, withDecision } from '../event/decisions.ts';
import { sameNumber } from '../event/event-file.ts';
import { writeWhole } from '../files/index.ts';
import { nearest } from '../math/nearest.ts';
import { Problem } from '../problem.ts';
import { shipped } from '../rules.ts';
import { besideRules, type Decision } from '../types.ts';
import { decisionsIn, recordIn, writeViews } from './event-out.ts';
import { type EventGiven, eventGiven } from './event-plan.ts';
import type { Io } from './io.ts';
import { options, today } from './options.ts';
import { remark } from './say.ts';
import { status } from './status.ts';

interface DecideOptions extends Omit<Decision, 'rider' | 'rule' | 'event' | 'id'> {
  readonly rules?: string;
  readonly out?: string;
  readonly today?: string;
}

const examples = `
Examples:
  $ wattassay decide round-3.event.json 14 late-drift --asked 2026-03-15 --due 2026-03-18
  $ wattassay decide round-3.event.json 14 late-drift --answered 2026-03-16 --answer "No spin-down before the race."
  $ wattassay decide round-3.event.json 14 late-drift --decision stands --by "chief commissaire" \\
      --why "Judged by the pedals, the place is the same." --out audited
  $ wattassay decide round-3.event.json 17 sprint-overshoot --decision explained --by jury \\
      --why "The trainer is known for it; pedals decide until it is repaired." --until 2026-09-30

What the event requires and does not have is asked about as “missing”, a device that recorded for several riders at
the same time as “shared-device”. The record is decisions.json beside the event file; it may be edited by hand too.
It changes no measurement and no grade. With --out the overview and summaries of that run are written anew.
`;

const fields = [
  'asked',
  'due',
  'answered',
  'answer',
  'decision',
  'by',
  'decidedOn',
  'why',
  'appeal',
  'until',
] as const;

/** `wattassay decide EVENT RIDER RULE`. `done` is told the exit status. */
export function decideCommand(io: Io, done: (status: number) => void): Command {
  return new Command('decide')
    .summary('keep on record what was asked, answered and decided')
    .description('Keeps on record what was asked about a finding, what was answered, and what was decided.')
    .argument('<event>', 'the event file or folder')
    .argument('<rider>', "the rider's number")
    .argument('<rule>', 'the rule whose finding it is about, “missing” or “shared-device”')
    .addOption(options.day('--asked <day>', 'when the question was sent, like 2026-03-15'))
    .addOption(options.day('--due <day>', 'when the answer is due'))
    .addOption(options.day('--answered <day>', 'when the answer came'))
    .option('--answer <text>', 'the answer in a few words')
    .addOption(
      new Option('--decision <decision>', 'what was decided').choices([
        'stands',
        'explained',
        'does not stand',
        'withdrawn',
      ]),
    )
    .option('--by <role>', 'who decided, by role and never by name')
    .addOption(options.day('--decided-on <day>', 'when it was decided'))
    .option('--why <text>', 'the reason')
    .addOption(new Option('--appeal <state>', 'an appeal').choices(['open', 'upheld', 'dismissed']))
    .addOption(
      options.day('--until <day>', 'until when an explanation that was accepted is taken for granted'),
    )
    .addOption(options.rules())
    .option('--out <folder>', 'an audited run whose overview is written anew')
    .addOption(options.today())
    .addHelpText('after', examples)
    .action(async (named: string, rider: string, rule: string, given: DecideOptions) =>
      done(await run(io, named, rider, rule, given)),
    );
}

async function run(
  io: Io,
  named: string,
  rider: string,
  rule: string,
  given: DecideOptions,
): Promise<number> {
  const event = await eventGiven(io, named, given);
  const entry = event.plan.entries.find(({ number }) => sameNumber(number) === sameNumber(rider));
  if (entry === undefined) throw noRider(event, rider);
  refuseUnknownRule(event, rule);
  if (fields.every((name) => given[name] === undefined)) throw nothingToKeep();
  const { root } = event.files;
  const change: Decision = {
    rider: entry.number,
    rule,
    event: event.plan.name,
    ...(entry.id === null ? {} : { id: entry.id }),
    ...Object.fromEntries(fields.flatMap((name) => (given[name] === undefined ? [] : [[name, given[name]]]))),
  };
  const decisions = withDecision(await decisionsIn(root), change);
  // Checked as a whole: what is written can be read again.
  await decisionsFrom({ decisions }, decisionsFile);
  await writeWhole(path.join(root, decisionsFile), printDecisions(decisions));
  remark(io, `written: ${decisionsFile} beside the event`);
  if (given.out !== undefined) {
    const record = await recordIn(io, given.out);
    const seen = { decisions, before: null, today: given.today ?? today() };
    await writeViews(path.resolve(io.cwd, given.out), record, seen);
    remark(io, `written: ${path.join(given.out, 'overview.html')}`);
    const matters = viewOf(record, decisions, null, seen.today).matters.get(entry.number);
    if (matters?.every((one) => one.rule !== rule)) {
      remark(io, `note: that run has no open finding ${rule} for rider ${entry.number}`);
    }
  }
  return status.done;
}

function nothingToKeep(): Problem {
  return new Problem({
    code: 'usage',
    what: 'nothing is said that could be kept on record',
    hint: 'Say what was asked, answered or decided, like --asked 2026-03-15; --help lists it all',
  });
}

function noRider({ plan }: EventGiven, rider: string): Problem {
  const near = nearest(
    rider,
    plan.entries.map(({ number }) => number),
  );
  return new Problem({
    code: 'usage',
    what: `no rider of this event bears the number “${rider}”`,
    hint: near === null ? 'wattassay event --check says which riders there are' : `Did you mean ${near}?`,
  });
}

function refuseUnknownRule({ sets }: EventGiven, rule: string): void {
  const known = [
    ...besideRules,
    ...new Set([...sets.values(), shipped].flatMap(({ rules }) => rules.map(({ id }) => id))),
  ];
  if (known.includes(rule)) return;
  const near = nearest(rule, known);
  throw new Problem({
    code: 'usage',
    what: `there is no rule “${rule}”`,
    hint: near === null ? 'wattassay rules lists them' : `Did you mean “${near}”?`,
  });
}
