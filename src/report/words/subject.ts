import type { Device, Report, ReportRecording, Subject } from '../../types.ts';
import { foreign, join, type Sentence } from './sentence.ts';

const codeOf = (subject: Subject) => subject.slice(subject.indexOf(':') + 1);

/** "second recording", numbered only when there are several. */
function secondName({ submission: { seconds } }: Report, subject: Subject, noun: string): string {
  const index = seconds.findIndex((one) => codeOf(one.subject) === codeOf(subject));
  return `second${noun}${seconds.length > 1 && index >= 0 ? ` ${index + 1}` : ''}`;
}

/** What a finding is about, in our own words. */
export function subjectName(report: Report, subject: Subject): string {
  if (subject === 'primary') return 'primary recording';
  if (subject === 'rider') return 'rider';
  if (subject === 'submission') return 'submission';
  // Where no second recording was handed in there is no pair to name.
  if (subject === 'pair') return 'primary against another recording';
  const second = secondName(report, subject, ' recording');
  return subject.startsWith('pair:') ? `primary against ${second}` : second;
}

/** The recording itself, also where the subject names the pair that it makes with the primary. */
export function recordingName(report: Report, { role, subject }: ReportRecording): string {
  return role === 'primary' ? 'primary recording' : secondName(report, subject, ' recording');
}

/** For a chart's legend. */
export function meterName(report: Report, subject: Subject): string {
  return subject === 'primary' ? 'primary' : secondName(report, subject, '');
}

/** Maker, product and serial number as the file states them. */
export function deviceSaid({ maker, product, serial }: Device): Sentence {
  const named = [maker, product].filter((part) => part !== null);
  const name = named.length === 0 ? ['not stated'] : [foreign(named.join(' '))];
  return serial === null ? name : join([...name, ', serial number ', foreign(serial)]);
}
