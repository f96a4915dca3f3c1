/**
 * THE function: read → normalise → align → find sections → measure → judge. Start reading here.
 */

import { align, alignExtra } from './align/index.ts';
import { assemble } from './assemble.ts';
import { historyFor } from './history/before.ts';
import { gradeOf, reachOf } from './judge/grade.ts';
import { judge } from './judge/judge.ts';
import { missingOf } from './judge/requirements.ts';
import { measureAll } from './measure/all.ts';
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
  type Report,
  type RiderFacts,
  type RuleSet,
  type Series,
  type Step,
  type Stretch,
  type Subjects,
} from './types.ts';

export interface Submission {
  readonly primary: NamedBytes;
  readonly seconds: readonly NamedBytes[];
  readonly rider: RiderFacts;
  readonly race: RaceFacts;
  /** The rider's past rides; null when none were handed in. */
  readonly profile: Profile | null;
  /** Files beside the recordings that the answer depends on: facts, profile. */
  readonly otherInputs: Report['inputs'];
}

export type Stage = 'reading' | 'aligning' | 'measuring' | 'judging';

/**
 * Audits one submission.
 *
 * @param onStage told before each stage begins
 * @throws Problem when the primary cannot be read; a second that cannot be read is stated in the report
 */
export async function audit(
  submission: Submission,
  rules: RuleSet,
  onStage: (stage: Stage) => void = () => {},
): Promise<Report> {
  onStage('reading');
  const { series: primary, steps } = normalise(await read(submission.primary), 'primary');
  const { seconds, unreadable } = await readSeconds(submission.seconds);

  onStage('aligning');
  const { stretch: window, given: windowGiven } = raceWindow(primary, submission.race);
  const aligned = [
    ...seconds.map(({ series }) => align(primary, series, `pair:${short(series)}`, window)),
    ...primary.extraMeters.map((meter, i) =>
      alignExtra(primary, meter, `pair:${short(primary)}.${i + 1}`, window),
    ),
  ];

  onStage('measuring');
  const { rider, race, profile } = submission;
  const history =
    profile === null ? null : historyFor(profile, primary.start, primary.start + primary.length);
  const sections = findSections({ primary, seconds: aligned }, window);
  const all: Subjects = { primary, seconds: aligned, sections, window, rider, race, history };
  const measured = measureAll(all, rules.rules);

  onStage('judging');
  const { measurements, findings } = judge(measured, rules);
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
  const seconds: { series: Series; steps: Step[] }[] = [];
  const unreadable: { name: string; why: string }[] = [];
  for (const file of files) {
    try {
      const recording = await read(file);
      seconds.push(normalise(recording, `second:${recording.sha256.slice(0, 8)}`));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      unreadable.push({ name: file.name, why: sentence(error) });
    }
  }
  return { seconds, unreadable };
}

const short = ({ recording }: Series) => recording.sha256.slice(0, 8);

function alignedStep({ subject, alignment }: AlignedSecond): Step {
  const { offset, segments } = alignment;
  return {
    subject,
    id: 'aligned',
    values: {
      offset: offset === null ? '' : { value: offset.value, unit: 's' },
      segments: { value: segments.length, unit: 'count' },
    },
  };
}

function windowStep([from, to]: Stretch, given: boolean): Step {
  const values = { from: { value: from, unit: 's' }, to: { value: to, unit: 's' } } as const;
  return { subject: 'submission', id: given ? 'window-given' : 'window-proposed', values };
}
