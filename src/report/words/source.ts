import type { Raised, Rule } from '../../types.ts';
import { oneIn } from './number.ts';

/** Where a rule's limits come from, in one sentence. The text is the rule author's. */
export function sourceSaid({ source }: Rule): string {
  switch (source.kind) {
    case 'published':
      return `Published: ${source.citation}`;
    case 'common practice':
      return `Common practice, no published source: ${source.note}`;
    case 'from memory':
      return `From memory, to be checked: ${source.note}`;
    case 'measured':
      return `Measured: ${source.note}`;
  }
}

/** How often honest submissions reach each level by this rule; null where it was not measured. */
export function falseAlarmSaid({ source, limits }: Rule): string | null {
  if (source.kind !== 'measured') return null;
  const said = (['query', 'refer'] as const satisfies readonly Raised[])
    .filter((level) => limits[level] !== undefined)
    .map((level) => `${level}: ${oneIn(source.falseAlarm[level])}`);
  return said.length === 0 ? null : `Honest submissions that reach it, ${said.join('; ')}.`;
}
