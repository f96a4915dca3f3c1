import { Command } from 'commander';
import { audit } from '../audit.ts';
import { limits } from '../files/index.ts';
import { canonical, parseJson } from '../json.ts';
import { raceFrom, riderFrom } from '../judge/facts.ts';
import { Problem } from '../problem.ts';
import {
  clean,
  compare,
  mayRestOnMass,
  type Recorded,
  readReport,
  redact,
  renderJson,
} from '../report/index.ts';
import { type Verified, verifiedSaid } from '../report/words/verify.ts';
import type { NamedBytes, Profile, Report, RiderFacts, RuleSet } from '../types.ts';
import { type ByChecksum, findByChecksum } from './by-checksum.ts';
import { type Input, readNamed } from './inputs.ts';
import type { Io } from './io.ts';
import { options } from './options.ts';
import { historyFrom, profileFrom } from './past-rides.ts';
import { progressOn } from './progress.ts';
import { type RulesGiven, rulesGiven } from './rule-folder.ts';
import { status } from './status.ts';

interface VerifyOptions {
  readonly rules?: string;
  readonly mass?: number;
}

const examples = `
Examples:
  $ wattassay verify report.json trainer.fit pedals.fit
  $ wattassay verify case-14/report.json case-14
  $ wattassay verify report.json handed-in/ --rules our-rules/
  $ wattassay verify published.json trainer.fit --mass 68

Files are found by their checksums, whatever they are called. Everything that the report lists under "inputs" must be
among them, and the rules must be those that it was judged by. A redacted report leaves out body mass: with --mass,
the checks that rest on it can be compared too.

Exit status: 0 the same to the byte; 1 it differs, or cannot be compared in full; 2 could not run.
`;

/** `wattassay verify REPORT FILES...`. `done` is told the exit status. */
export function verifyCommand(io: Io, done: (status: number) => void): Command {
  return new Command('verify')
    .summary('make a report again from its files, and say whether it is the same')
    .description(
      'Makes a report again from the files that it rests on, and says whether it is the same to the byte.',
    )
    .argument('<report>', 'the report in its JSON form')
    .argument('<files...>', 'the files that it rests on, or folders that hold them')
    .addOption(options.rules())
    .addOption(options.mass())
    .addHelpText('after', examples)
    .action(async (report: string, files: readonly string[], given: VerifyOptions) =>
      done(await run(io, report, files, given)),
    );
}

async function run(io: Io, file: string, places: readonly string[], given: VerifyOptions): Promise<number> {
  const progress = progressOn(io);
  try {
    progress.now('reading');
    const { bytes } = await readNamed(io, file, limits.reportBytes);
    const { whole, recorded } = await readReport(new TextDecoder().decode(bytes), file);
    const rules = await rulesOf(io, recorded, file, given.rules);
    const files = await findByChecksum(io, filesOf(recorded), places, (name) =>
      progress.now(`looking at ${name}`),
    );
    const { rider, race } = recorded.settings;
    const facts = {
      rider: await riderFrom(withMass(rider, recorded, given), `${file} › settings › rider`),
      race: await raceFrom(race, `${file} › settings › race`),
    };
    const made = await audit(
      {
        ...(await handedIn(recorded, files)),
        ...facts,
        profile: await profileOf(recorded, files, facts.rider, file),
        otherInputs: recorded.inputs.filter(({ role }) => !recordingRoles.includes(role)),
      },
      { ...rules.set, name: recorded.rules.name },
      (stage) => progress.now(stage),
    );
    const again = recorded.settings.redacted ? redact(made) : made;
    const verified = {
      ...outcomeOf({ bytes, whole, again, rules: rules.set, massKnown: facts.rider.massKg !== undefined }),
      files: files.size,
      rules: recorded.rules.name,
      redacted: recorded.settings.redacted,
      facts: await statedAlone(recorded, files),
      unopened: recorded.unreadable.filter(({ sha256 }) => sha256 === null).length,
    };
    progress.clear();
    for (const line of verifiedSaid(verified)) io.stdout.write(`${clean(line)}\n`);
    return verified.outcome === 'same' ? status.done : status.reached;
  } finally {
    progress.clear();
  }
}

/** Rules are known by their checksum: a folder may have been renamed, and a name says nothing. */
async function rulesOf(
  io: Io,
  { rules: { name, sha256 } }: Recorded,
  file: string,
  folder: string | undefined,
): Promise<RulesGiven> {
  const given = await rulesGiven(io, folder);
  if (given.set.sha256 === sha256) return given;
  throw new Problem({
    code: 'report-wrong',
    what: `it was judged by other rules: “${name}” with the checksum ${sha256.slice(0, 12)}…, and not ${folder === undefined ? 'the shipped ones' : 'those of this folder'}, with ${given.set.sha256.slice(0, 12)}…`,
    where: file,
    hint:
      folder === undefined
        ? 'Name the folder of the rules that it was judged by as --rules'
        : 'Name another folder as --rules, or none if it was judged by the shipped rules',
  });
}

const recordingRoles = ['primary', 'second'];

/** Everything that must be found: second recordings that could not be read are listed apart. */
function filesOf({ inputs, unreadable }: Recorded): Input[] {
  const torn = unreadable.flatMap(({ name, sha256 }) =>
    sha256 === null ? [] : [{ role: 'second', name, sha256 }],
  );
  // Rules are compared as a whole by their own checksum.
  return [...inputs.filter(({ role }) => role !== 'rules'), ...torn];
}

function withMass(
  rider: RiderFacts,
  { settings: { redacted } }: Recorded,
  { mass }: VerifyOptions,
): RiderFacts {
  if (mass === undefined) return rider;
  if (redacted) return { ...rider, massKg: mass };
  throw new Problem({
    code: 'usage',
    what: 'this report states the facts that it was made with',
    where: '--mass',
    hint: 'Leave it out: it is for a redacted report alone',
  });
}

/** The recordings under the names that the report gives them. */
async function handedIn(recorded: Recorded, files: ByChecksum) {
  const recordings: (NamedBytes & { readonly role: string })[] = [];
  for (const { role, name, sha256 } of filesOf(recorded)) {
    if (recordingRoles.includes(role)) recordings.push({ role, name, bytes: await files.get(sha256)!() });
  }
  const [primary, another] = recordings.filter(({ role }) => role === 'primary');
  if (primary === undefined || another !== undefined) {
    throw new Problem({
      code: 'report-wrong',
      what: 'a report rests on one primary recording, and this one does not name one',
      hint: 'Ask for the report as it was written',
    });
  }
  return {
    primary,
    seconds: recordings.filter(({ role }) => role === 'second'),
    unopened: recorded.unreadable.flatMap(({ name, sha256, why }) =>
      sha256 === null ? [{ name, why }] : [],
    ),
  };
}

async function profileOf(
  { inputs, hadHistory }: Recorded,
  files: ByChecksum,
  { devices }: RiderFacts,
  file: string,
): Promise<Profile | null> {
  if (!hadHistory) return null;
  const profile = inputs.find(({ role }) => role === 'profile');
  if (profile !== undefined) {
    return profileFrom(new TextDecoder().decode(await files.get(profile.sha256)!()), profile.name);
  }
  const past = inputs.filter(({ role }) => role === 'history');
  if (past.length === 0) {
    throw new Problem({
      code: 'report-wrong',
      what: 'it looked at past rides, and does not say in which files',
      where: file,
      hint: 'Make the report anew with wattassay audit and --history',
    });
  }
  const { profile: compiled } = await historyFrom(opened(past, files), {
    ...(devices === undefined ? {} : { devices }),
    onFile: () => {},
    onTrouble: () => {},
  });
  return compiled;
}

async function* opened(inputs: readonly Input[], files: ByChecksum): AsyncGenerator<NamedBytes> {
  for (const { name, sha256 } of inputs) yield { name, bytes: await files.get(sha256)!() };
}

/** What the report's text comes to beside the one that its files give. */
function outcomeOf(given: {
  readonly bytes: Uint8Array;
  readonly whole: unknown;
  readonly again: Report;
  readonly rules: RuleSet;
  readonly massKnown: boolean;
}): Pick<Verified, 'outcome' | 'unlike'> {
  const { bytes, whole, again, rules, massKnown } = given;
  const text = renderJson(again);
  const ours = new TextEncoder().encode(text);
  if (ours.length === bytes.length && ours.every((byte, i) => byte === bytes[i])) {
    return { outcome: 'same', unlike: [] };
  }
  const unlike = compare(whole, JSON.parse(text));
  if (unlike.length === 0) return { outcome: 'same values', unlike };
  const lacksMass = again.settings.redacted && !massKnown;
  return {
    outcome: lacksMass && unlike.every(mayRestOnMass(rules.rules)) ? 'mass unknown' : 'differs',
    unlike,
  };
}

/** Facts that the report states and none of its files does: given as options, or by an event. */
async function statedAlone({ inputs, settings }: Recorded, files: ByChecksum): Promise<string[]> {
  const alone: string[] = [];
  for (const kind of ['rider', 'race'] as const) {
    const input = inputs.find(({ role }) => role === kind);
    const text = input === undefined ? '{}' : new TextDecoder().decode(await files.get(input.sha256)!());
    const said = parseJson(text, 'facts-wrong', input?.name ?? kind) as Readonly<Record<string, unknown>>;
    for (const [name, value] of Object.entries(settings[kind])) {
      if (said?.[name] === undefined || canonical(said[name]) !== canonical(value)) alone.push(name);
    }
  }
  return alone;
}
