import { cp } from 'node:fs/promises';
import path from 'node:path';
import { Command } from 'commander';
import { joinParts } from '../event/parts.ts';
import { recordFile, reportFolder } from '../event/record.ts';
import { crossChecks, recordHead } from '../event.ts';
import { whyUnwritable } from '../files/index.ts';
import { Problem } from '../problem.ts';
import type { EventRecord, EventRow } from '../types.ts';
import { eventStatus, tell, tellGone } from './event.ts';
import { makeFolder, namedAsWritten, removeOthers, writtenInto } from './event-folders.ts';
import { decisionsIn, earlierGiven, recordIn, writeEvent } from './event-out.ts';
import { eventGiven } from './event-plan.ts';
import type { Io } from './io.ts';
import { options, today } from './options.ts';
import { keepApart } from './outputs.ts';
import type { FailOn } from './status.ts';

interface MergeOptions {
  readonly out: string;
  readonly rules?: string;
  readonly earlier?: readonly string[];
  readonly since?: string;
  readonly today?: string;
  readonly failOn: FailOn;
  readonly redact?: true;
}

const examples = `
Examples:
  $ wattassay merge round-3.event.json part-1 part-2 --out whole

Give the event, --rules and --redact as the parts were given them. What comes out is what one run over the whole
event writes, byte for byte. Parts that are missing, named twice or made otherwise are refused.

Exit status: 0 below --fail-on; 1 a submission reached it, or is incomplete; 2 the parts do not make a whole.
`;

/** `wattassay merge EVENT PART…`. `done` is told the exit status. */
export function mergeCommand(io: Io, done: (status: number) => void): Command {
  return new Command('merge')
    .summary('put the parts of an event together')
    .description(
      'Puts together the parts of an event that `event --part` audited, on one machine or several.',
    )
    .argument('<event>', 'the event file or folder, as the parts were given it')
    .argument('<parts...>', 'the folder of each part')
    .requiredOption('--out <folder>', 'where the overview, the record and the reports go')
    .addOption(options.rules())
    .addOption(options.earlier())
    .addOption(options.since())
    .addOption(options.today())
    .addOption(options.failOn())
    .option('--redact', 'the parts were audited with --redact')
    .addHelpText('after', examples)
    .action(async (named: string, parts: readonly string[], given: MergeOptions) =>
      done(await run(io, named, parts, given)),
    );
}

async function run(io: Io, named: string, parts: readonly string[], given: MergeOptions): Promise<number> {
  await refusePart(io, named, parts);
  const event = await eventGiven(io, named, given);
  // A part is left as it is: what goes wrong then costs nothing.
  const records = parts.map((part) => path.join(part, recordFile));
  const sources = [
    event.place,
    ...namedAsWritten(event.files.textsRead()),
    ...(given.earlier ?? []),
    ...records,
  ];
  const outputs = writtenInto(given.out);
  await keepApart(io, sources, outputs);
  const earlier = await earlierGiven(io, given.earlier ?? [], outputs);
  const before = given.since === undefined ? null : await recordIn(io, given.since);
  const decisions = await decisionsIn(event.files.root);
  const found = [];
  for (const where of parts) found.push({ where, record: await recordIn(io, where) });
  const numbers = event.plan.entries.map(({ number }) => number);
  const rows = await joinParts(found, numbers, event.digest);
  const out = path.resolve(io.cwd, given.out);
  await makeFolder(out, given.out);
  for (const { where, record } of found) await copyReports(path.resolve(io.cwd, where), out, record.rows);
  const record: EventRecord = {
    eventVersion: 1,
    ...recordHead(event.plan, event.sets),
    plan: event.digest,
    part: null,
    selected: null,
    rows,
    unmatched: given.redact ? [] : event.plan.unmatched,
    crossChecks: crossChecks(event.plan, rows, event.sets, earlier),
  };
  await writeEvent(out, record, { decisions, before, today: given.today ?? today() });
  tellGone(io, await removeOthers(out, numbers));
  tell(io, record, before, path.join(given.out, 'overview.html'));
  return eventStatus(record, given.failOn);
}

/** Also what a part keeps of submissions that could not be audited, so that the next run finds all of it. */
async function copyReports(from: string, to: string, rows: readonly EventRow[]): Promise<void> {
  for (const { number, report } of rows) {
    const parts = reportFolder(number).split('/');
    try {
      await cp(path.join(from, ...parts), path.join(to, ...parts), { recursive: true });
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code !== 'ENOENT' || report !== null) throw whyUnwritable(error, path.join(to, ...parts));
    }
  }
}

/** The event is named first: whoever leaves it out names a part in its place. */
async function refusePart(io: Io, named: string, parts: readonly string[]): Promise<void> {
  const record = await recordIn(io, named).catch(() => null);
  if (record === null || record.part === null || parts.length >= record.part.of) return;
  throw new Problem({
    code: 'usage',
    what: 'this is a part, and the event is wanted first',
    where: named,
    hint: `Name the event file or folder before the parts: wattassay merge EVENT ${[named, ...parts].join(' ')} --out FOLDER`,
  });
}
