import { counted } from './number.ts';

/** Behind the title of something folded away, where it is not printed. */
export const notPrinted = 'folded away on the page, and left out on paper';

/** In place of the workings, which would be longer than all the rest. */
export function workingsNotPrinted(rules: number): string {
  return `The workings of ${counted(rules, 'check')} and the numbers behind the charts are left out on paper. The page holds them, and so does the JSON report; what is unfolded on the page before it is printed is printed too.`;
}
