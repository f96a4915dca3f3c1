import { Problem } from '../../problem.ts';

/** What is thrown where the framing of a FIT file can be followed and its content makes no sense. */
export function undecodable(): Problem {
  return new Problem({
    code: 'format-damaged',
    what: 'the messages in this FIT file cannot be decoded',
    hint: 'Copy the file from the head unit again',
  });
}
