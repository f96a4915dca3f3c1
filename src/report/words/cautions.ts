import type { Report } from '../../types.ts';
import { quantity } from './number.ts';
import { recordingName } from './subject.ts';

/** How to read any report; said before the findings, in every form. */
const always: readonly string[] = [
  'A flag is a question, not a verdict. Each one lists its innocent explanations; most flags have one.',
  'How often honest riders show such a value does not say how likely this rider is to be honest.',
  'People decide, under the organiser’s own rules, and the rider has the right to answer.',
];

const withSecond =
  'Two meters that disagree cannot say which of them is off, and two that agree can be wrong together.';
const withoutSecond =
  'Without a second recording, nothing here says whether the meter reads right, only whether its recording behaves like a measurement.';
const health =
  'Heart rate and body mass are health data: keep this report among those who decide, or share a redacted one.';
const redacted =
  'This report is redacted: names are codes; heart rate, body mass and what would give them away are left out.';

/** Below this share of the race, what two meters say of each other is said of a part. */
const nearlyAll = 0.9;

/** Of which part of the race comparisons speak, where it is not nearly all of it. */
function ofAPart(report: Report): readonly string[] {
  return report.submission.seconds.flatMap((one) => {
    const alignment = report.alignment.find(({ subject }) => subject === one.subject);
    if (alignment === undefined || !alignment.secure || alignment.coverage >= nearlyAll) return [];
    const name = recordingName(report, one);
    return [
      `The ${name} shares ${quantity(alignment.coverage, 'share')} of the race with the primary: what is said of the two is said of that part, and nothing of the rest.`,
    ];
  });
}

export function cautions(report: Report): readonly string[] {
  const { seconds } = report.submission;
  return [
    always[0]!,
    seconds.length > 0 ? withSecond : withoutSecond,
    ...ofAPart(report),
    ...always.slice(1),
    report.settings.redacted ? redacted : health,
  ];
}
