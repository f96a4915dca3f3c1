import type { Grade, Raised, Report } from '../../types.ts';
import { requirementNames } from './names.ts';
import { counted, number } from './number.ts';
import { reasonInShort } from './reasons.ts';
import { list, plain } from './sentence.ts';

/** The grade in one word, and what it asks of whoever decides. */
const grades: Readonly<Record<Grade, { readonly word: string; readonly means: string }>> = {
  clear: { word: 'Clear', means: 'Nothing was found that needs an answer.' },
  query: { word: 'Query', means: 'Ask the rider before deciding.' },
  refer: { word: 'Refer', means: 'Put this before the jury.' },
  incomplete: { word: 'Incomplete', means: 'Something that should be there is missing or cannot be read.' },
};

export function gradeWord(grade: Grade): string {
  return grades[grade].word;
}
export function gradeMeans(grade: Grade): string {
  return grades[grade].means;
}

/** What each level asks for; heads its group of findings. */
export const levelHeadings: Readonly<Record<Raised, string>> = {
  refer: 'To put before the jury',
  query: 'To ask the rider about',
  note: 'Worth knowing',
};

/** Levels as words inside a sentence. */
export const levelWords: Readonly<Record<Raised, string>> = {
  refer: 'refer',
  query: 'query',
  note: 'note',
};

/** "in 17 of the 36 checks; 19 could not be made". Not checked and broken never look like a pass. */
export function reachSaid({ reach }: Report): string {
  const all = reach.judged + reach.notApplicable + reach.failed;
  const broken = reach.failed === 0 ? '' : `; ${counted(reach.failed, 'check')} broke`;
  const open = reach.notApplicable === 0 ? '' : `; ${number(reach.notApplicable)} could not be made`;
  return `${number(reach.judged)} of ${counted(all, 'check')} could be judged${open}${broken}.`;
}

/** Reasons for which there was nothing to ask: they stood in nobody's way. */
const nothingToAsk: ReadonlySet<string> = new Set([
  'no-drift',
  'no-crossing',
  'nothing-required',
  'switched-off',
]);

/** Why much could not be judged, the weightiest first; null when everything could. */
export function becauseSaid({ reach }: Report): string | null {
  const inTheWay = reach.because.filter(({ id }) => !nothingToAsk.has(id));
  if (inTheWay.length === 0) return null;
  const said = inTheWay.slice(0, 3).map(({ id, count }) => `${reasonInShort(id)} (${number(count)})`);
  const more = inTheWay.length > said.length ? '; and other reasons' : '';
  return `What stood in the way: ${said.join('; ')}${more}.`;
}

/** Second recordings that were handed in and could not be read; null when there are none. */
export function unreadableSaid({ submission: { unreadable } }: Report): string | null {
  if (unreadable.length === 0) return null;
  return unreadable.map(({ why }) => `A second recording could not be read. ${why}`).join(' ');
}

/** What the event requires and does not have; null when nothing is missing. */
export function missingSaid({ missing }: Report): string | null {
  if (missing.length === 0) return null;
  return `The event requires ${plain(list(missing.map((one) => requirementNames[one])))}, not found in this submission.`;
}
