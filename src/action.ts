/**
 * The action: an event of a repository, audited as far as a pull request or push touches it. What finds anything is
 * the command line's own function; this is the table of contents of what surrounds it.
 */

import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type * as actionsCore from '@actions/core';
import { type FileChange, filesChangedSince } from './action/changed-files.ts';
import { discreetly, namesNobody } from './action/discreet.ts';
import { type Inputs, inputsFrom } from './action/inputs.ts';
import { placeIn, type Repository, repositoryAt } from './action/repository.ts';
import { altersTerms, type Touched, touchedBy } from './action/scope.ts';
import { type Terms, termsAt } from './action/terms.ts';
import { eventStatus, tell, tellDoubts } from './cli/event.ts';
import { auditEvent } from './cli/event-audit.ts';
import { type EventGiven, eventGiven } from './cli/event-plan.ts';
import type { Io } from './cli/io.ts';
import { today } from './cli/options.ts';
import { ruleDifferences } from './cli/rule-differences.ts';
import { status } from './cli/status.ts';
import { recordFile } from './event/record.ts';
import { refuseOutside } from './files/index.ts';
import { Problem, problemsIn, sentence } from './problem.ts';
import { failedSaid, renderRunSummary, runMarks, stoppedSaid } from './report/event/index.ts';
import { clean } from './report/index.ts';
import { type AllBecause, type EventRecord, type EventRun, grades, type TermsBecause } from './types.ts';

/** What of @actions/core is used here; the log is a stream, because both of a process's are read for commands. */
export type Core = Pick<
  typeof actionsCore,
  'getInput' | 'getMultilineInput' | 'setOutput' | 'setFailed' | 'summary' | 'warning' | 'notice'
>;

/** The world around a run of the action. */
export interface Place {
  readonly log: { write(text: string): unknown };
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The checkout. Nothing outside it is read, and nothing written but what is taken away again. */
  readonly workspace: string;
}

/** Bytes of a summary: what GitHub shows anywhere, and a person reads. */
const summaryBytes = 65_536;

/** One run: inputs, audit, and what people and later steps are told. */
export async function run(core: Core, place: Place): Promise<void> {
  let inputs: Inputs;
  try {
    inputs = inputsFrom(core);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return core.setFailed(clean(sentence(error)));
  }
  const workspace = await realpath(place.workspace);
  const scratch = await mkdtemp(path.join(place.env.RUNNER_TEMP || tmpdir(), 'wattassay-'));
  try {
    const done = await quietly(place.log, (log) =>
      orProblems(log, inputs.redact, () => audit(inputs, { ...place, log, workspace }, scratch)),
    );
    if (done === null) core.setFailed(stoppedSaid);
    else await tellRunner(core, place.env, inputs, done);
  } finally {
    await rm(scratch, { recursive: true, force: true });
  }
}

/** What a run came to. */
interface Done {
  readonly record: EventRecord;
  readonly run: EventRun;
  /** The submitted file of each rider that a mark can be put on, from the workspace. */
  readonly files: ReadonlyMap<string, string>;
}

async function audit(inputs: Inputs, place: Place, scratch: string): Promise<Done> {
  const { workspace, env, log } = place;
  const { event: named, rules, earlier, folder, redact, part } = inputs;
  for (const file of [named, folder, ...(rules === undefined ? [] : [rules]), ...earlier]) {
    await inside(workspace, file);
  }
  await refuseMissing(workspace, named);
  await refuseTaken(path.resolve(workspace, folder), folder);
  const io: Io = { stdout: log, stderr: log, env: {}, cwd: workspace };

  const repository = await repositoryAt(path.resolve(workspace, named), workspace, env);
  const terms = await termsFor(inputs, repository, workspace, path.join(scratch, 'terms'));
  const event = await eventGiven(io, named, { rules, redact, terms: terms.found?.workspace });
  tellDoubts(io, { redact }, event);

  const changes = await changesOf(repository, event, rulesPlace(repository, inputs, workspace));
  const scope = await scopeOf(inputs, repository, changes, event, workspace, path.join(scratch, 'before'));
  const only = scope.touched?.numbers;
  const { record, compared } = await auditEvent(
    io,
    event,
    { rules, earlier, part, redact, today: today(), ...(only === undefined ? {} : { only }) },
    folder,
  );
  tell(io, record, null, path.posix.join(folder, record.part === null ? 'overview.html' : recordFile));
  const audited = record.rows.filter(({ state }) => state === 'audited');
  return {
    record,
    run: {
      scope: scope.said,
      terms: termsSeen(terms, repository, changes, event),
      rules: [...event.sets.values()].map((set) => ({
        name: set.name,
        sha256: set.sha256,
        differs: ruleDifferences(set),
      })),
      entries: event.plan.entries.length,
      single: audited.filter(({ recordings }) => recordings.length === 1).length,
      remarks: event.remarks,
      unmatched: event.plan.unmatched.length,
      compared,
      folder,
    },
    files: markable(event, workspace, redact),
  };
}

/** A path that the workflow gives: nobody's name is in it, so that it can be said which one is wrong. */
async function inside(workspace: string, file: string): Promise<void> {
  try {
    await refuseOutside(workspace, file);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new Problem({
      code: 'usage',
      what: 'it lies outside the checkout, or a link on the way to it does',
      where: file,
      hint: 'Give a path from the top folder of the checkout',
    });
  }
}

async function refuseMissing(workspace: string, event: string): Promise<void> {
  if (existsSync(path.resolve(workspace, event))) return;
  throw new Problem({
    code: 'usage',
    what: `there is no “${event}” in the checkout`,
    where: 'input event',
    hint: 'Give the event file or its folder by its path from the top folder of the checkout',
  });
}

/** What lies there could have been handed in, to be taken for what an earlier run found. */
async function refuseTaken(folder: string, shown: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  if ((await readdir(folder)).length === 0) return;
  throw new Problem({
    code: 'usage',
    what: 'there is something in it already, which may have been handed in with the submissions',
    where: shown,
    hint: 'Name a report-folder that is not there yet, another one for each time the action runs',
  });
}

interface TermsFor {
  readonly found: Terms | null;
  /** Why the base branch's are not used although they were asked for. */
  readonly because: TermsBecause | null;
}

/** The base branch's terms, where a change is proposed to it. */
async function termsFor(
  { event, rules, earlier, termsFrom }: Inputs,
  repository: Repository | AllBecause,
  workspace: string,
  into: string,
): Promise<TermsFor> {
  const wanted = termsFrom === 'base';
  if (typeof repository === 'string') {
    return { found: null, because: wanted && repository === 'no base' ? 'no base' : null };
  }
  const { target } = repository.base;
  if (!wanted || target === null) return { found: null, because: null };
  const found = await termsAt(repository, target, workspace, { event, rules, earlier }, into);
  return typeof found === 'string' ? { found: null, because: found } : { found, because: null };
}

function termsSeen(
  { found, because }: TermsFor,
  repository: Repository | AllBecause,
  changes: readonly FileChange[] | null,
  event: EventGiven,
): EventRun['terms'] {
  if (found === null || typeof repository === 'string') return { from: 'checkout', because };
  const altered = changes === null ? null : altersTerms(changes, repository, event, found.places);
  return { from: 'base', commit: repository.base.target!, altered };
}

function rulesPlace(
  repository: Repository | AllBecause,
  { rules }: Inputs,
  workspace: string,
): string | null {
  if (typeof repository === 'string' || rules === undefined) return null;
  return placeIn(repository.top, path.resolve(workspace, rules));
}

function changesOf(
  repository: Repository | AllBecause,
  { files }: EventGiven,
  rules: string | null,
): Promise<readonly FileChange[] | null> {
  if (typeof repository === 'string') return Promise.resolve(null);
  const { git, top, base } = repository;
  return filesChangedSince(git, base.commit, [
    placeIn(top, files.root) || '.',
    ...(rules === null ? [] : [rules]),
  ]);
}

interface Scope {
  readonly touched: Touched | null;
  readonly said: EventRun['scope'];
}

const all = (because: AllBecause | null): Scope => ({ touched: null, said: { kind: 'all', because } });

/** Whose submissions are audited; whenever that is in doubt, everybody's. */
async function scopeOf(
  inputs: Inputs,
  repository: Repository | AllBecause,
  changes: readonly FileChange[] | null,
  event: EventGiven,
  workspace: string,
  into: string,
): Promise<Scope> {
  if (!inputs.changedOnly) return all(null);
  if (inputs.part !== null) return all('part');
  if (typeof repository === 'string') return all(repository);
  if (changes === null) return all('too much');
  const rules = rulesPlace(repository, inputs, workspace);
  const touched = await touchedBy(changes, repository, event, rules, into);
  if (typeof touched === 'string') return all(touched);
  const { gone, links } = touched;
  return { touched, said: { kind: 'changed', since: repository.base.commit, gone, links } };
}

/** Files that a mark can be put on: of a ZIP the archive, and under redaction none whose name may name somebody. */
function markable(
  { plan, files }: EventGiven,
  workspace: string,
  redact: boolean,
): ReadonlyMap<string, string> {
  return new Map(
    plan.entries.flatMap(({ number, primary }): [string, string][] => {
      if (primary === null) return [];
      const file = /^(.*?\.zip)\//i.exec(primary)?.[1] ?? primary;
      return redact && !namesNobody(file) ? [] : [[number, placeIn(workspace, files.full(file))]];
    }),
  );
}

/** Outputs, marks, summary, and whether the job fails. */
async function tellRunner(
  core: Core,
  env: Place['env'],
  { folder, failOn }: Inputs,
  { record, run, files }: Done,
): Promise<void> {
  const { rows, part } = record;
  for (const grade of grades) {
    core.setOutput(grade, rows.filter((row) => row.grade === grade).length);
  }
  core.setOutput('audited', rows.length);
  core.setOutput('grade', grades.findLast((grade) => rows.some((row) => row.grade === grade)) ?? '');
  core.setOutput('report', part === null ? path.posix.join(folder, 'overview.html') : '');
  core.setOutput('json', path.posix.join(folder, recordFile));
  for (const { level, number, said } of runMarks(record)) {
    const file = number === null ? undefined : files.get(number);
    const at = file === undefined ? {} : { file, startLine: 1 };
    core[level](clean(said), { title: 'wattassay', ...at });
  }
  // Where no summary can be shown there is no such variable.
  if (env.GITHUB_STEP_SUMMARY) {
    await core.summary.addRaw(renderRunSummary(record, run, { limit: summaryBytes })).write();
  }
  if (eventStatus(record, failOn) !== status.done) core.setFailed(failedSaid(failOn));
}

/** The result, or null with everything that is wrong in the log. */
async function orProblems<T>(log: Place['log'], redact: boolean, work: () => Promise<T>): Promise<T | null> {
  try {
    return await work();
  } catch (error) {
    const problems = problemsIn(error);
    if (problems === null) throw error;
    const lines = new Set(problems.map((one) => clean(redact ? discreetly(one) : sentence(one))));
    for (const line of lines) log.write(`error: ${line}\n`);
    return null;
  }
}

/**
 * Lets a command write to the log while the runner takes nothing in it as a command to itself: whatever a
 * stranger's text may still hold after cleaning stays text.
 */
async function quietly<T>(log: Place['log'], work: (stream: Place['log']) => Promise<T>): Promise<T> {
  const token = randomUUID();
  log.write(`::stop-commands::${token}\n`);
  try {
    return await work(log);
  } finally {
    log.write(`\n::${token}::\n`);
  }
}
