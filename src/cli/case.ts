import path from 'node:path';
import { Command } from 'commander';
import { decisionsFile, printDecisions } from '../event/decisions.ts';
import { sameNumber, whyNoPath } from '../event/event-file.ts';
import { reportFolder } from '../event/record.ts';
import { checksum, limits, readFileSafely, writeWhole } from '../files/index.ts';
import { Problem } from '../problem.ts';
import { caseReadme, togetherSaid } from '../report/event/index.ts';
import { plain } from '../report/words/sentence.ts';
import type { Decision, Entry, EventRecord, EventRow, NamedBytes } from '../types.ts';
import { makeFolder, reportFiles } from './event-folders.ts';
import { decisionsIn, recordIn } from './event-out.ts';
import { type EventGiven, eventGiven } from './event-plan.ts';
import type { Io } from './io.ts';
import { options } from './options.ts';
import { keepApart } from './outputs.ts';
import { ruleFilesIn } from './rule-folder.ts';
import { remark } from './say.ts';
import { status } from './status.ts';

interface CaseOptions {
  readonly from: string;
  readonly out: string;
  readonly rules?: string;
}

const examples = `
Examples:
  $ wattassay case round-3.event.json 14 --from audited --out case-14

The folder holds what both sides argue from: the report, the letter, the recordings as handed in with facts and
earlier rides, the event's own rules, what only the event as a whole shows, every checksum, and what was asked,
answered and decided; README.txt says what is what, and how the report is made again from it. It names no other
rider. It holds health data: send it to nobody but the rider and those who decide.
`;

/** `wattassay case EVENT RIDER`. `done` is told the exit status. */
export function caseCommand(io: Io, done: (status: number) => void): Command {
  return new Command('case')
    .summary("pack one rider's case into a folder for both sides")
    .description(
      "Packs one rider's report, recordings, checksums, letter and decisions into one folder for both sides.",
    )
    .argument('<event>', 'the event file or folder')
    .argument('<rider>', "the rider's number")
    .requiredOption('--from <folder>', 'the audited run')
    .requiredOption('--out <folder>', 'the folder to pack into')
    .addOption(options.rules())
    .addHelpText('after', examples)
    .action(async (named: string, rider: string, given: CaseOptions) =>
      done(await run(io, named, rider, given)),
    );
}

async function run(io: Io, named: string, rider: string, given: CaseOptions): Promise<number> {
  const event = await eventGiven(io, named, given);
  const record = await recordIn(io, given.from);
  const entry = event.plan.entries.find(({ number }) => sameNumber(number) === sameNumber(rider));
  const row = record.rows.find(({ number }) => number === entry?.number);
  if (entry === undefined || row === undefined) {
    throw new Problem({
      code: 'usage',
      what: `that run holds no rider “${rider}”`,
      where: given.from,
      hint: 'Run wattassay event again, or look at the number',
    });
  }
  const decisions = (await decisionsIn(event.files.root)).filter((one) => isAbout(one, entry, event));
  const rules = await rulesOf(io, event, entry, given.rules);
  const packed = [
    ...(await reportsOf(io, given.from, row)),
    ...(await recordingsOf(event, entry)),
    ...(await restOf(event, entry)),
    ...togetherIn(record, row),
    ...rules.files,
    fileOf(decisionsFile, printDecisions(decisions)),
  ];
  refuseOthers(packed, row);
  const names = packed.map(({ name }) => name);
  const about = { number: row.number, event: record.event.name, files: names, rules: rules.folder };
  const files = [fileOf('README.txt', caseReadme(about)), ...packed];
  const lines = files.map(({ name, bytes }) => `${checksum(bytes)}  ${name}`);
  const folder = path.resolve(io.cwd, given.out);
  // The case has one rider's decisions alone, and the event's are kept in a file of this name.
  await keepApart(
    io,
    [path.join(event.files.root, decisionsFile)],
    names.map((name) => ({ option: '--out', file: path.join(folder, ...name.split('/')) })),
  );
  for (const { name, bytes } of files) {
    const file = path.join(folder, ...name.split('/'));
    await makeFolder(path.dirname(file), path.dirname(file));
    await writeWhole(file, bytes);
  }
  await writeWhole(path.join(folder, 'SHA256SUMS'), `${lines.sort().join('\n')}\n`);
  io.stdout.write(`${files.length} files in ${given.out}\n`);
  if (row.report === null) remark(io, 'there is no report: this submission could not be audited');
  return status.done;
}

function isAbout({ rider, event }: Decision, { number }: Entry, { plan }: EventGiven): boolean {
  return rider === number && (event ?? plan.name) === plan.name;
}

async function reportsOf(io: Io, from: string, { number, report }: EventRow): Promise<NamedBytes[]> {
  if (report === null) return [];
  const files: NamedBytes[] = [];
  for (const name of reportFiles) {
    const shown = path.join(from, ...reportFolder(number).split('/'), name);
    files.push({
      name,
      bytes: (await readFileSafely(path.resolve(io.cwd, shown), { most: limits.reportBytes, shown })).bytes,
    });
  }
  return files;
}

/** Recordings under the names by which they were handed in, apart where two bear one name. */
async function recordingsOf({ files }: EventGiven, { primary, seconds }: Entry): Promise<NamedBytes[]> {
  const found: NamedBytes[] = [];
  for (const [index, place] of [primary, ...seconds].entries()) {
    if (place === null) continue;
    const role = index === 0 ? 'primary' : index === 1 ? 'second' : `second-${index}`;
    const { name, bytes } = await files.read(place, limits.recordingBytes);
    found.push({ name: `recordings/${role}/${name}`, bytes });
  }
  return found;
}

/** What else the rider handed in and the report argues from: facts and earlier rides. */
async function restOf({ files }: EventGiven, { factInputs, history }: Entry): Promise<NamedBytes[]> {
  const found: NamedBytes[] = [];
  for (const { name } of factInputs) {
    const { bytes } = await files.read(name, limits.factsBytes);
    found.push({ name: `facts/${name.split('/').at(-1)}`, bytes });
  }
  if (history === null) return found;
  for (const [index, place] of (await files.pastFiles(history)).entries()) {
    const { name, bytes } = await files.read(place, limits.archiveBytes);
    const below = place === history ? name : place.slice(history.length + 1);
    found.push({ name: `history/${isPlain(below) ? below : `file-${index + 1}`}`, bytes });
  }
  return found;
}

/** Members of a ZIP bear any name: one that would lead elsewhere, or that no disk takes, is not used. */
const isPlain = (name: string) => whyNoPath(name) === null && !/[\p{Cc}:*?"<>|]/u.test(name);

/** What only the event as a whole shows about the rider. */
function togetherIn(record: EventRecord, { number }: EventRow): NamedBytes[] {
  const lines = togetherSaid(record, number).map(plain);
  if (lines.length === 0) return [];
  return [fileOf('seen-together.txt', `${lines.join('\n')}\n`)];
}

const fileOf = (name: string, text: string): NamedBytes => ({ name, bytes: new TextEncoder().encode(text) });

/** The event's own rules, in a folder of the name that the report states; none where it has none. */
async function rulesOf(
  io: Io,
  { files, terms }: EventGiven,
  { rules }: Entry,
  option: string | undefined,
): Promise<{ folder: string | null; files: readonly NamedBytes[] }> {
  const named = rules ?? option;
  if (named === undefined) return { folder: null, files: [] };
  const cwd = rules === null ? terms : files.terms;
  const found = await ruleFilesIn({ ...io, cwd }, named);
  const folder = `rules/${path.basename(path.resolve(cwd, named))}`;
  return { folder, files: found.files.map(({ name, text }) => fileOf(`${folder}/${name}`, text)) };
}

/** A case argues from the files that were audited: others under the same names would be another case. */
function refuseOthers(files: readonly NamedBytes[], { recordings }: EventRow): void {
  const known = new Set(recordings.map((one) => one.sha256));
  if (known.size === 0) return;
  const now = new Set<string>();
  for (const { name, bytes } of files) if (name.startsWith('recordings/')) now.add(checksum(bytes));
  const missing = [...known].filter((digest) => !now.has(digest));
  if (missing.length === 0) return;
  throw new Problem({
    code: 'report-wrong',
    what: 'the recordings are no longer the ones that were audited',
    hint: 'Run wattassay event again, then pack the case',
  });
}
