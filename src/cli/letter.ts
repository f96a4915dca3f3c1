import { Option } from 'commander';
import { Problem } from '../problem.ts';
import type { LetterFrame } from '../report/index.ts';

/** What the organiser puts into a letter, as options. */
export interface LetterOptions {
  readonly letter?: string;
  readonly to?: string;
  readonly organiser?: string;
  readonly event?: string;
  readonly due?: string;
  readonly reply?: string;
  readonly note?: string;
}

export const letterOptions = (): readonly Option[] => [
  new Option('--letter <file>', 'write the draft of a letter to the rider, in plain words, to a text file'),
  new Option('--to <name>', 'whom the letter greets'),
  new Option('--organiser <name>', 'who signs the letter'),
  new Option('--event <name>', 'how the letter calls the event'),
  new Option('--due <day>', 'until when the letter asks for an answer, as it is to be said'),
  new Option('--reply <address>', 'where an answer to the letter goes'),
  new Option('--note <text>', "words of the organiser's own, before the letter's closing"),
];

/** The letter's frame. A name is kept out of what is redacted. @throws Problem `usage` */
export function frameGiven(given: LetterOptions, redacted: boolean): LetterFrame {
  const { letter, to, organiser, event, due: by, reply, note } = given;
  const parts = { rider: redacted ? undefined : to, organiser, event, by, reply, note };
  const frame = Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined));
  if (letter === undefined && (to !== undefined || Object.keys(frame).length > 0)) {
    throw new Problem({
      code: 'usage',
      what: 'there are words for a letter, and no file to write it to',
      where: '--letter',
      hint: 'Name one, like --letter letter.txt',
    });
  }
  return frame;
}
