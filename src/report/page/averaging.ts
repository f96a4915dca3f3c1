import type { Rule } from '../../types.ts';
import type { Layout } from './layout.ts';

/** Options by which measures say over how many seconds they take means before they compare. */
const spans = ['blockSeconds', 'stretchSeconds'];
/** Measures that call it otherwise. */
const ownSpans: Readonly<Record<string, string>> = {
  'unresponsive-share': 'windowSeconds',
  'torque-share': 'holdSeconds',
};

/** Seconds that a rule averages over; null: it looks at seconds as recorded. */
export function averagedOver({ measure, options }: Rule): number | null {
  const name = Object.hasOwn(ownSpans, measure)
    ? ownSpans[measure]!
    : spans.find((span) => Object.hasOwn(options, span));
  const seconds = name === undefined ? undefined : options[name];
  return typeof seconds === 'number' && seconds > 1 ? Math.round(seconds) : null;
}

/** How the ride was averaged to be judged, each span with the rules that used it: the gravest findings' first. */
export function averagings({ told: { raised, fine } }: Layout): ReadonlyMap<number, readonly string[]> {
  const spans = new Map<number, string[]>();
  for (const { rule, title } of [...raised.flatMap(({ findings }) => findings), ...fine]) {
    const seconds = rule === null ? null : averagedOver(rule);
    if (seconds === null) continue;
    const titles = spans.get(seconds) ?? [];
    if (!titles.includes(title)) titles.push(title);
    spans.set(seconds, titles);
  }
  return spans;
}
