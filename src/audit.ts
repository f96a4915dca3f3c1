/**
 * THE function: read → normalise → align → find sections → measure → judge. Start reading here.
 */

import { align, alignOwnMeters, furtherMeters, markRepeats } from './align/index.ts';
import { assemble } from './assemble.ts';
import { withoutPlaces } from './declared.ts';
import { historyFor } from './history/before.ts';
import { gradeOf, reachOf } from './judge/grade.ts';
import { judge } from './judge/judge.ts';
import { missingOf } from './judge/requirements.ts';
import { sha256 } from './math/digest.ts';
import { measureAll } from './measure/all.ts';
import { gate } from './measure/pair/gate.ts';
import { sectionsChart, sectionTable } from './measure/section-table.ts';
import { setPointsOf } from './measure/set-points.ts';
import { normalise } from './normalise/index.ts';
import { Problem, sentence } from './problem.ts';
import { read } from './read/index.ts';
import { findSections } from './sections/index.ts';
import { raceWindow } from './sections/window.ts';
import {
  type AlignedSecond,
  channels,
  type NamedBytes,
  type Profile,
  type RaceFacts,
  type Recording,
  type Report,
  type RiderFacts,
  type RuleSet,
  type Step,
  type Stretch,
  type Subjects,
  type UnreadableFile,
} from './types.ts';
import { roundTo } from './units.ts';

/** What one rider hands in for one race, as files. */
export interface Submission extends Facts {
  readonly primary: NamedBytes;
  readonly seconds: readonly NamedBytes[];
  /** Seconds that could not even be opened, each with the sentence that says why. */
  readonly unopened?: readonly Pick<UnreadableFile, 'name' | 'why'>[];
}

/** The same once its files are read. */
export interface ReadSubmission extends Facts {
  readonly primary: Recording;
  readonly seconds: readonly Recording[];
  /** Seconds that could not be read, each with the sentence that says why. */
  readonly unreadable: readonly UnreadableFile[];
}

export interface Facts {
  readonly rider: RiderFacts;
  readonly race: RaceFacts;
  /** The rider's past rides; null when none were handed in. */
  readonly profile: Profile | null;
  /** Files beside the recordings that the answer depends on: facts, profile. */
  readonly otherInputs: Report['inputs'];
}

export type Stage = 'reading' | 'aligning' | 'measuring' | 'judging';
type Watch = (stage: Stage) => void;

/**
 * Audits one submission.
 *
 * @param onStage told before each stage begins
 * @throws Problem when the primary cannot be read; a second that cannot be read is stated in the report
 */
export async function audit(
  submission: Submission,
  rules: RuleSet,
  onStage: Watch = () => {},
): Promise<Report> {
  onStage('reading');
  return auditRecordings(await readSubmission(submission), rules, onStage);
}

/**
 * Reads what was handed in; nothing is compared yet.
 *
 * @throws Problem when the primary cannot be read, or holds no power
 */
export async function readSubmission(submission: Submission): Promise<ReadSubmission> {
  const primary = await read(submission.primary);
  if (primary.channels.power === undefined && primary.extraMeters.length === 0) {
    throw new Problem({
      code: 'no-power',
      what: 'this recording holds no power, so there is nothing to audit',
      where: submission.primary.name,
      hint: 'Hand in the recording of a ride with a power meter or trainer, in its original format',
    });
  }
  const { seconds, unreadable: unread } = await readSeconds(submission.seconds);
  const unopened = (submission.unopened ?? []).map((one) => ({ ...one, sha256: null }));
  const unreadable = [...unopened, ...unread];
  return { ...submission, primary, seconds, unreadable };
}

/** Audits recordings that are read already. */
export function auditRecordings(
  submission: ReadSubmission,
  rules: RuleSet,
  onStage: Watch = () => {},
): Report {
  const { race, profile, unreadable } = submission;
  const rider = unreadable.length === 0 ? submission.rider : withoutPlaces(submission.rider);
  const { series: primary, steps } = normalise(submission.primary, 'primary');
  const seconds = submission.seconds.map((second) => normalise(second, `second:${short(second)}`));

  onStage('aligning');
  const { stretch: window, given: windowGiven } = raceWindow(primary, race);
  const files = seconds.map(({ series }) =>
    align(primary, series, `pair:${short(series.recording)}`, window),
  );
  const aligned = markRepeats([
    ...files,
    ...alignOwnMeters(primary, `pair:${short(submission.primary)}`, window),
    ...files.flatMap((file) => furtherMeters(primary, file, window)),
  ]);

  onStage('measuring');
  const history =
    profile === null ? null : historyFor(profile, primary.start, primary.start + primary.length);
  const sections = findSections({ primary, seconds: aligned }, window);
  const all: Subjects = { primary, seconds: aligned, sections, window, rider, race, history };
  const measured = measureAll(all, rules.rules, unreadable.length === 0 ? 'no-second' : 'second-unreadable');

  onStage('judging');
  const { measurements, findings } = judge(measured, rules);
  const comparable = aligned.filter((pair) => gate(pair) === null);
  const missing = missingOf(race.required ?? [], {
    channels: channels.filter((channel) => primary.channels[channel] !== undefined),
    independentSeconds: aligned.filter(({ alignment }) => alignment.origin !== 'same sensor').length,
    rides: history?.rides.length ?? 0,
  });
  return assemble({
    all,
    rules,
    otherInputs: submission.otherInputs,
    windowGiven,
    sections: sectionTable(all, comparable),
    sectionKinds: sectionsChart(all, comparable),
    setPoints: setPointsOf(all, comparable),
    steps: [
      ...steps,
      ...seconds.flatMap((second) => second.steps),
      ...aligned.map(alignedStep),
      windowStep(window, windowGiven),
    ],
    unreadable,
    measurements,
    findings,
    missing,
    grade: gradeOf(findings, rules, { missing, unreadable: unreadable.length }),
    reach: reachOf(measurements),
  });
}

/** Reads every second; one that cannot be read is kept with the sentence that says why. */
async function readSeconds(files: readonly NamedBytes[]) {
  const seconds: Recording[] = [];
  const unreadable: UnreadableFile[] = [];
  for (const file of files) {
    try {
      seconds.push(await read(file));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      unreadable.push({ name: file.name, sha256: await sha256(file.bytes), why: sentence(error) });
    }
  }
  return { seconds, unreadable };
}

const short = ({ sha256 }: Recording) => sha256.slice(0, 8);

function alignedStep({ subject, alignment }: AlignedSecond): Step {
  const { offset, segments } = alignment;
  return {
    subject,
    id: 'aligned',
    values: {
      offset: offset === null ? '' : { value: roundTo(offset.value, 's'), unit: 's' },
      segments: segments.length,
    },
  };
}

function windowStep([from, to]: Stretch, given: boolean): Step {
  const values = { from: { value: from, unit: 's' }, to: { value: to, unit: 's' } } as const;
  return { subject: 'submission', id: given ? 'window-given' : 'window-proposed', values };
}
