import type {
  Alignment,
  AlignmentReason,
  Defect,
  DefectId,
  LeftOut,
  Origin,
  Report,
  Step,
  StepId,
} from '../../types.ts';
import { driftSaid, offsetSaid } from './clocks.ts';
import { fill } from './fill.ts';
import { channelNames } from './names.ts';
import { duration, figure, number, quantity } from './number.ts';
import { capital, plain, type Sentence } from './sentence.ts';
import { recordingName } from './subject.ts';

/** What was wrong with a file, and what reading did about it. */
const defects: Readonly<Record<DefectId, string>> = {
  truncated:
    'The file ends early: {kept|record was|records were} kept, {lostBytes|byte was|bytes were} lost.',
  'size-impossible':
    'The file’s header states {stated|byte|bytes}, more than any recording holds, and the file has {held}: {kept|record was|records were} read, to the end of its messages. Copy the file from the head unit again.',
  'checksum-wrong': 'The file’s stored checksum does not match its content. It was read all the same.',
  'never-closed': 'The recorder never closed the file: {kept|record was|records were} recovered from it.',
  chained: 'The file holds {parts|recording|recordings} one behind another; they were read as one.',
  'several-sessions': 'The file holds {sessions|session|sessions}; they were read as one ride.',
  'colliding-field': 'An added field bears the name of a standard one ({name}); the standard value was kept.',
  'odd-power-type': 'Power is stored in an unusual type ({type}).',
  'markup-ends-early': 'The file stops or breaks in the middle, at line {line}; what came before was read.',
  'unreadable-values': '{count|cell|cells} of column {column} hold no number and count as missing.',
  'trailing-bytes': '{bytes|byte|bytes} behind the recording belong to none and were left aside.',
  'power-in-developer-field': 'There is no standard power; the added field {name} stands in for it.',
  'zone-assumed': 'The clock times state no time zone; they were taken as UTC.',
  'no-clock': 'The file counts time from its own start: it says nothing of the date.',
  'unit-assumed': 'Column {column} states no unit; {unit} was assumed.',
};

/** What was done to the data, in order. */
const steps: Readonly<Record<StepId, string>> = {
  read: 'Read as {format}: {records|record|records}.',
  'doubled-seconds': '{count|second|seconds} held several records; their values were averaged.',
  'backward-steps': '{count|record|records} put back in order of time.',
  'far-records-dropped': '{count|record|records} far from the body of the ride left out.',
  gaps: 'Missing in all: {missing:s}; the longest gap {longest:s}. Gaps stay empty.',
  pauses: 'Pauses: {count}, together {seconds:s}.',
  bridged: '{seconds:s} between records of an irregular recorder carried over, at most {longest:s} at once.',
  aligned: 'Put on the primary’s clock: {offset:s} added.',
  'extra-meter': 'A further meter found inside the file: {name}.',
  'window-given': 'Race window as given: from {from:at} to {to:at} of the ride.',
  'window-proposed': 'No race window was given; proposed from the ride itself: from {from:at} to {to:at}.',
};

/** The same where the clocks run together in stretches only. */
const alignedInParts =
  'Put on the primary’s clock in {segments} stretches, each with an offset of its own; that of one is {offset:s}.';

const alignments: Readonly<Record<AlignmentReason, string>> = {
  'power-agrees': 'the power of both fits at one offset and at no other',
  'clock-chose': 'the power fits at several offsets; the clocks of the files chose one of them',
  'channel-chose': 'the power fits at several offsets; cadence or heart rate chose one of them',
  'no-overlap': 'the two recordings do not overlap in time',
  'too-short': 'too little of the ride was recorded by both',
  'nothing-fits': 'at no offset do the two agree better than chance would let them',
  'several-lags-fit': 'regular efforts make several offsets look equally good',
  'only-surges-agree':
    'power agrees only as far as that of any two riders of one race, and neither cadence nor heart rate bears it out',
  'same-recorder': 'both meters are in one file, on one clock',
  'no-power': 'the second recording holds no power',
};

const origins: Readonly<Record<Origin, string>> = {
  independent: 'a measurement of its own',
  'same sensor': 'the same sensor on two recorders: no second opinion',
  derived: 'computed from the primary',
  unknown: 'cannot be told',
};

const leftOut: Readonly<Record<LeftOut, string>> = {
  'other sport': 'of another sport',
  'no power': 'without power',
  unreadable: 'unreadable',
  duplicate: 'twice there',
  flawed: 'flawed',
  'too short': 'too short',
};

export function defectSaid(defect: Defect): Sentence {
  return fill(defects[defect.id], defect.values);
}

/** Faults of a file that a reader must know before the grade: part of the ride may be missing or wrong. */
const damages: ReadonlySet<DefectId> = new Set([
  'truncated',
  'size-impossible',
  'checksum-wrong',
  'never-closed',
  'markup-ends-early',
]);

/** What is damaged among the files, in one line; null when nothing is. */
export function damageSaid(report: Report): string | null {
  const { primary, seconds } = report.submission;
  const found = [primary, ...seconds].flatMap((one) =>
    one.defects
      .filter(({ id }) => damages.has(id))
      .map(
        (defect) => `${plain(capital([recordingName(report, one)]))}, damaged: ${plain(defectSaid(defect))}`,
      ),
  );
  return found.length === 0 ? null : found.join(' ');
}

export function stepSaid(step: Step): Sentence {
  if (step.id === 'aligned' && step.values.offset === '')
    return ['Not put on the primary’s clock: no offset fits.'];
  const { segments } = step.values;
  const inParts = step.id === 'aligned' && typeof segments === 'number' && segments > 1;
  if (inParts) return fill(alignedInParts, step.values);
  return fill(steps[step.id], step.values);
}

export function alignmentSaid(alignment: Alignment): string {
  return `${alignment.secure ? 'Secure' : 'Not secure'}: ${alignments[alignment.reason]}.`;
}

/** No more than anyone reads of a number that is sure to a few per cent at best. */
const whole = (value: number) => number(Math.round(value));

/** The evidence for an alignment, one fact a line: what it is, and its number. */
export function alignmentFacts(alignment: Alignment): readonly (readonly [what: string, value: string])[] {
  const facts: [string, string][] = [];
  const [offset, drift] = [offsetSaid(alignment), driftSaid(alignment)];
  if (offset !== null) facts.push(['Its clock is', offset]);
  if (alignment.zoneSlip !== 0) {
    facts.push([
      'Of this a slip of whole and quarter hours (time zone)',
      duration(Math.abs(alignment.zoneSlip)),
    ]);
  }
  if (drift !== null) facts.push(['Its clock runs', drift]);
  facts.push(['Share of the race that both recorded', quantity(alignment.coverage, 'share')]);
  facts.push(['Agreement of fast changes at this offset', figure(alignment.peak, 'r')]);
  facts.push(['Highest agreement that chance reaches', figure(alignment.surrogatePeak, 'r')]);
  facts.push(['Lead over every other offset (log-likelihood)', whole(alignment.margin)]);
  facts.push(['Where the second’s power comes from', origins[alignment.origin]]);
  if (alignment.sameAs !== null)
    facts.push(['A further opinion', 'no: an earlier second recording shows the same sensor']);
  if (alignment.originEvidence !== null) {
    const { left, noise, gain, dynamics } = alignment.originEvidence;
    facts.push(['Its fast detail that the primary does not explain', quantity(left, 'share')]);
    facts.push(['The same as noise of single readings, of mean power', quantity(noise, 'share')]);
    facts.push(['Its gain over the primary', figure(gain, 'ratio')]);
    facts.push(['Misfit where power moves fast, over that where it hardly moves', figure(dynamics, 'ratio')]);
  }
  facts.push(['Agreement second by second', figure(alignment.correlation, 'r')]);
  for (const { channel, lag, correlation } of alignment.byChannel) {
    facts.push([
      `Remaining lag of ${channelNames[channel]}`,
      `${quantity(lag, 's')} (agreement ${figure(correlation, 'r')})`,
    ]);
  }
  return facts;
}

export function leftOutSaid(counts: Readonly<Record<string, number>>): string {
  return Object.entries(counts)
    .map(
      ([why, count]) =>
        `${number(count)} ${Object.hasOwn(leftOut, why) ? leftOut[why as LeftOut] : 'for another reason'}`,
    )
    .join(', ');
}
