import type { Report } from '../types.ts';
import { clean } from './clean.ts';
import { outline, type Told } from './outline.ts';
import { type LetterFrame, letter } from './words/letter.ts';
import { plain } from './words/sentence.ts';
import { wrap } from './wrap.ts';

const width = 76;

/**
 * A letter to the rider in plain words and plain text: what was seen, what it may innocently be, what to
 * send, by when and where, and that nothing is decided yet.
 */
export function renderLetter(report: Report, frame: LetterFrame = {}): string {
  const asked = outline(report)
    .raised.filter(({ level }) => level !== 'note')
    .flatMap(({ findings }) => findings.filter((told) => told.accountedBy === null));
  const { unreadable } = report.submission;
  const open = asked.length > 0 || report.missing.length > 0 || unreadable.length > 0;
  const parts = [
    letter.greeting(frame),
    letter.opening(report, frame),
    ...(open ? [] : [letter.nothing]),
    ...(asked.length > 0 ? [letter.questions(asked.length)] : []),
    ...asked.map((told, index) => question(told, index + 1)),
    ...unreadable.map(letter.unreadable),
    ...(report.missing.length > 0 ? [letter.missing(report)] : []),
    ...(open ? [letter.asking(frame), letter.rights, letter.enclosed] : []),
    ...(frame.note === undefined ? [] : [frame.note]),
    letter.closing(frame),
  ];
  return `${parts.map(paragraph).join('\n\n')}\n`;
}

/** The rule's own words stand under its first question where several pairs raised it. */
function question(told: Told, number: number): string {
  const { question, claim, under } = told;
  const rule = under === null ? told.rule : null;
  const head = told.several ? `${question} (${told.about})` : question;
  const items = (heading: string, all: readonly string[]) =>
    all.length === 0 ? [] : ['', heading, ...all.map((item) => `- ${clean(item)}`)];
  return [
    `${number}. ${clean(head)}`,
    '',
    `${letter.seen} ${clean(plain(claim))}`,
    ...items(letter.innocent, rule?.innocent ?? []),
    ...items(letter.settles, rule?.settles ?? []),
    ...(under === null ? [] : ['', letter.asAbove]),
  ].join('\n');
}

/** Wraps each line by itself; what hangs from a dash or a number hangs under its text. */
function paragraph(text: string): string {
  return text
    .split('\n')
    .flatMap((line) => {
      const hang = /^(- |\d+\. )/.exec(line)?.[0].length ?? 0;
      return wrap(clean(line), width - hang).map((one, index) =>
        index === 0 ? one : ' '.repeat(hang) + one,
      );
    })
    .join('\n');
}
