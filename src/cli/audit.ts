import path from 'node:path';
import { Command, Option } from 'commander';
import { audit, type Submission } from '../audit.ts';
import { limits, writeWhole } from '../files/index.ts';
import { Problem, sentence } from '../problem.ts';
import { isChartName, type LetterFrame, redact, renderCharts, renderLetter } from '../report/index.ts';
import { gradeWord, missingSaid, reachSaid, unreadableSaid } from '../report/words/grade.ts';
import type { NamedBytes, Report } from '../types.ts';
import { makeFolder } from './event-folders.ts';
import { type FactOptions, raceGiven, riderGiven } from './facts.ts';
import { type Form, formOf, forms, render, renderTo } from './forms.ts';
import { readNamed } from './inputs.ts';
import type { Io } from './io.ts';
import { frameGiven, type LetterOptions, letterOptions } from './letter.ts';
import { each, options } from './options.ts';
import { keepApart } from './outputs.ts';
import { historyGiven, historyRead } from './past-rides.ts';
import { progressOn } from './progress.ts';
import { rulesGiven, rulesRead } from './rule-folder.ts';
import { many, remark } from './say.ts';
import { type FailOn, statusOf } from './status.ts';

/** Pixels that a chart is wide in a file of its own. */
const chartWidth = 760;

interface AuditOptions extends FactOptions, LetterOptions {
  readonly second?: readonly string[];
  readonly history?: string;
  readonly rules?: string;
  readonly format?: Form;
  readonly out?: readonly string[];
  readonly charts?: string;
  readonly failOn: FailOn;
  readonly redact?: true;
}

const examples = `
Examples:
  $ wattassay audit trainer.fit
  $ wattassay audit trainer.fit --second pedals.fit --out report.html
  $ wattassay audit trainer.fit --second pedals.fit --mass 68 --class women \\
      --device primary=trainer,2,1.5 --device second=pedal,2,1 \\
      --start 2026-03-14T19:00:00+01:00 --finish 2026-03-14T20:04:00+01:00
  $ wattassay audit trainer.fit --history rides/ --rider rider.json --race race.json
  $ wattassay audit trainer.fit --second pedals.fit --charts charts/ --letter letter.txt \\
      --to "R. Rider" --organiser "The jury" --event "Round 3" --due "Friday, 20 March" --reply jury@example.org
  $ wattassay audit trainer.fit --rules our-rules/ --redact --format json --fail-on never

Recordings may be FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP.

Exit status: 0 below --fail-on; 1 the submission reached it, or is incomplete; 2 could not run.
`;

/** `wattassay audit PRIMARY`. `done` is told the exit status. */
export function auditCommand(io: Io, done: (status: number) => void): Command {
  const command = new Command('audit')
    .summary('audit one submission: a recording, and what there is beside it')
    .description('Audits one submission and reports what needs an explanation, with the evidence.')
    .argument('<primary>', 'the recording that the result rests on')
    .addOption(new Option('--second <file>', 'the same ride by another meter (repeatable)').argParser(each))
    .addOption(
      new Option(
        '--history <path>',
        "the rider's earlier rides: a folder or ZIP of recordings, or a profile",
      ),
    )
    .addOption(options.rider())
    .addOption(options.mass())
    .addOption(options.class())
    .addOption(options.device())
    .addOption(options.race())
    .addOption(options.start())
    .addOption(options.finish())
    .addOption(options.kind())
    .addOption(options.require())
    .addOption(options.rules())
    .addOption(new Option('--format <form>', 'what to print; text unless --out is given').choices(forms))
    .addOption(
      new Option(
        '--out <file>',
        'write the report to a file; .txt, .json, .html, .md or .csv chooses the form (repeatable)',
      ).argParser(each),
    )
    .addOption(new Option('--charts <folder>', 'write every chart as an SVG file into a folder'))
    .addOption(options.failOn())
    .addOption(options.redact())
    .addHelpText('after', examples)
    .action(async (primary: string, given: AuditOptions) => done(await run(io, primary, given)));
  for (const option of letterOptions()) command.addOption(option);
  return command;
}

async function run(io: Io, primary: string, given: AuditOptions): Promise<number> {
  const outs = (given.out ?? []).map((file) => ({ file, form: formOf(file) }));
  const frame = frameGiven(given, given.redact === true);
  const sources = [
    primary,
    ...(given.second ?? []),
    given.rider,
    given.race,
    given.history === undefined ? undefined : historyRead(given.history),
    given.rules === undefined ? undefined : rulesRead(given.rules),
  ];
  await keepApart(
    io,
    sources,
    [
      ...outs.map(({ file }) => ({ option: '--out', file })),
      ...(given.letter === undefined ? [] : [{ option: '--letter', file: given.letter }]),
    ],
    given.charts === undefined ? [] : [{ option: '--charts', folder: given.charts, gives: isChartName }],
  );
  const progress = progressOn(io);
  try {
    const rules = await rulesGiven(io, given.rules);
    const submission = await submissionGiven(io, primary, given, (what) => progress.now(what));
    const inputs = [...submission.otherInputs, ...rules.inputs];
    const report = await audit({ ...submission, otherInputs: inputs }, rules.set, (stage) =>
      progress.now(stage),
    );
    progress.clear();
    for (const device of withoutMeter(report, given))
      remark(io, `--device ${device}: no recording here is called so, and nothing rests on it`);
    await tell(io, given.redact ? redact(report) : report, given, outs, frame);
    return statusOf(report, given.failOn);
  } finally {
    progress.clear();
  }
}

async function submissionGiven(
  io: Io,
  primary: string,
  given: AuditOptions,
  onFile: (what: string) => void,
): Promise<Submission> {
  const rider = await riderGiven(io, given);
  const race = await raceGiven(io, given);
  const { devices } = rider.facts;
  const history =
    given.history === undefined
      ? null
      : await historyGiven(io, given.history, {
          ...(devices === undefined ? {} : { devices }),
          onFile,
          onTrouble: (said) => given.redact || remark(io, `left out: ${said}`),
        });
  return {
    primary: await readNamed(io, primary, limits.recordingBytes),
    ...(await secondsGiven(io, given.second ?? [])),
    rider: rider.facts,
    race: race.facts,
    profile: history?.profile ?? null,
    otherInputs: [...rider.inputs, ...race.inputs, ...(history?.inputs ?? [])],
  };
}

/** A second that cannot be opened makes the submission incomplete; it does not stop the audit. */
async function secondsGiven(
  io: Io,
  files: readonly string[],
): Promise<Required<Pick<Submission, 'seconds' | 'unopened'>>> {
  const seconds: NamedBytes[] = [];
  const unopened: { name: string; why: string }[] = [];
  for (const file of files) {
    const name = path.basename(file);
    try {
      seconds.push(await readNamed(io, file, limits.recordingBytes, name));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      unopened.push({ name, why: sentence(error) });
    }
  }
  return { seconds, unopened };
}

/** Files first: a report that could not be written must not look as if it had been. */
async function tell(
  io: Io,
  report: Report,
  { format, letter, charts }: AuditOptions,
  outs: readonly { file: string; form: Form }[],
  frame: LetterFrame,
): Promise<void> {
  const write = async (file: string, text: string) => {
    await writeWhole(path.resolve(io.cwd, file), text);
    remark(io, `written: ${file}`);
  };
  for (const { file, form } of outs) await write(file, await render(report, form));
  if (letter !== undefined) await write(letter, renderLetter(report, frame));
  if (charts !== undefined) await writeCharts(io, report, charts);
  const form = format ?? (outs.length === 0 ? 'text' : null);
  if (form !== null) io.stdout.write(await renderTo(io, report, form));
  else remark(io, inShort(report));
}

/** What is told of a report that went to files alone. */
function inShort(report: Report): string {
  const said = [reachSaid(report), unreadableSaid(report), missingSaid(report)];
  return [`${gradeWord(report.grade)}.`, ...said.filter((part) => part !== null)].join(' ');
}

/**
 * Meters declared by option that no recording goes with: most likely a name is misspelt. Where a recording could
 * not be read, its meter may be one of them, and an earlier ride's may be where there are any: nothing is said then.
 */
function withoutMeter(
  { submission }: Report,
  { device: devices = [], history }: Pick<AuditOptions, 'device' | 'history'>,
): readonly string[] {
  const { primary, seconds, unreadable } = submission;
  if (unreadable.length > 0 || history !== undefined) return [];
  const declared = [primary, ...seconds].flatMap((one) => one.declared?.name ?? []);
  return devices.filter((device) => !declared.includes(device.slice(0, device.lastIndexOf('='))));
}

async function writeCharts(io: Io, report: Report, folder: string): Promise<void> {
  const place = path.resolve(io.cwd, folder);
  await makeFolder(place, folder);
  const files = renderCharts(report, { width: chartWidth });
  for (const { name, svg } of files) await writeWhole(path.join(place, name), svg);
  remark(io, `written: ${many(files.length, 'chart')} into ${folder}`);
}
