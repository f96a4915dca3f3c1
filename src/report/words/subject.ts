import type { Device, Report, Subject } from '../../types.ts';
import { foreign, join, type Sentence } from './sentence.ts';

/** Which of the second recordings a "second:…" or "pair:…" subject means: its place in the list, from 0. */
function secondIndex(report: Report, subject: Subject): number {
  const code = subject.slice(subject.indexOf(':') + 1);
  return report.submission.seconds.findIndex(
    (one) => one.subject === subject || one.subject === `second:${code}`,
  );
}

/** "second recording", numbered only when there are several. */
function secondName(report: Report, subject: Subject, noun: string): string {
  const index = secondIndex(report, subject);
  return report.submission.seconds.length > 1 && index >= 0
    ? `second ${noun} ${index + 1}`
    : `second ${noun}`;
}

/** What a finding is about, in our own words. */
export function subjectName(report: Report, subject: Subject): string {
  if (subject === 'primary') return 'primary recording';
  if (subject === 'rider') return 'rider';
  if (subject === 'submission') return 'submission';
  if (subject.startsWith('pair:')) return `primary against ${secondName(report, subject, 'recording')}`;
  return secondName(report, subject, 'recording');
}

/** For a chart's legend. */
export function meterName(report: Report, subject: Subject): string {
  if (subject === 'primary') return 'primary';
  const index = secondIndex(report, subject);
  return report.submission.seconds.length > 1 && index >= 0 ? `second ${index + 1}` : 'second';
}

/** Maker, product and serial number as the file states them. */
export function deviceSaid({ maker, product, serial }: Device): Sentence {
  const named = [maker, product].filter((part) => part !== null);
  const name = named.length === 0 ? ['not stated'] : [foreign(named.join(' '))];
  return serial === null ? name : join([...name, ', serial number ', foreign(serial)]);
}
