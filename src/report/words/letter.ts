import type { Report, UnreadableFile } from '../../types.ts';
import { clean } from '../clean.ts';
import { requirementNames } from './names.ts';
import { clock, counted, number } from './number.ts';
import { foreign, list, plain, say } from './sentence.ts';

/** What the organiser puts into a letter; every part may be left out. */
export interface LetterFrame {
  /** Who is written to, and from whom. */
  readonly rider?: string;
  readonly organiser?: string;
  readonly event?: string;
  /** Until when an answer is asked for, as it is to be said: "Friday, 20 March". */
  readonly by?: string;
  /** Where an answer goes. */
  readonly reply?: string;
  /** Words of the organiser's own, before the closing. */
  readonly note?: string;
}

/** The letter's fixed words, paragraph by paragraph. */
export const letter = {
  greeting: ({ rider }: LetterFrame) => `Dear ${rider ?? 'rider'},`,

  opening: ({ submission, reach }: Report, { event }: LetterFrame) => {
    const all = reach.judged + reach.notApplicable + reach.failed;
    const race = event === undefined ? 'your race' : event;
    return plain(
      say`Your result in ${race} rests on the recording ${foreign(submission.primary.name)}, which begins at ${clock(submission.primary.start)}. We ran the same checks on it as on every other: ${number(reach.judged)} of ${counted(all, 'check')} could be made.`,
    );
  },

  nothing: 'They raised nothing that needs an answer from you. Thank you for handing in your recording.',

  questions: (count: number) =>
    `${count === 1 ? 'One of them raised a question' : `${number(count)} of them raised questions`} that we cannot answer without you. That is all this letter is: ${count === 1 ? 'a question' : 'questions'}. Nothing is decided, and nothing will be decided before we have read your answer.`,

  missing: ({ missing }: Report) =>
    `The event also requires ${plain(list(missing.map((one) => requirementNames[one])))}, which we did not find. Please send it, or tell us why it is not there.`,

  unreadable: ({ why }: UnreadableFile) =>
    `A second recording that came with it could not be read. ${clean(why)} Please send it again, as the device wrote it.`,

  seen: 'What was seen:',
  innocent: 'What it may innocently be:',
  settles: 'What would settle it; any one of these helps:',
  asAbove: 'What it may innocently be, and what would settle it, are the same as above.',

  asking: ({ by, reply }: LetterFrame) => {
    const where = reply === undefined ? 'by answering this letter' : `to ${reply}`;
    const when = by === undefined ? '' : ` by ${by}`;
    return `Please send what you can ${where}${when}, in your own words. If something we did not think of explains it, tell us that. If you need more time, say so.`;
  },

  rights:
    'People decide about your result, under the organiser’s own rules, and they will have your answer before them. How often honest riders show such values is stated in the report; it does not say how likely you are honest.',

  enclosed:
    'The full report is enclosed. It shows the evidence for every question, says where every limit comes from, and names the checksums with which anyone can run the same checks again. Heart rate and body mass in it are health data; only those who decide see them.',

  closing: ({ organiser }: LetterFrame) => `Kind regards\n${organiser ?? 'The organiser'}`,
} as const;
