import type { FalseAlarm, HonestShares, Raised, Rule } from '../../types.ts';
import { aboutIn, atMostIn, number } from './number.ts';

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

const meters = {
  withinClaims: 'simulated honest submissions with meters within their makers’ claims',
  asFound: 'with meters as found in the field',
} as const satisfies Partial<Record<keyof FalseAlarm, string>>;

/** How often honest submissions reach each level by this rule; null where it was not measured. */
export function falseAlarmSaid({ source, limits }: Rule): string | null {
  const { falseAlarm } = source;
  const levels = (['query', 'refer'] as const satisfies readonly Raised[]).filter(
    (level) => limits[level] !== undefined,
  );
  if (falseAlarm === undefined || levels.length === 0) return null;
  return (['withinClaims', 'asFound'] as const)
    .map((sort) => {
      const honest = falseAlarm[sort];
      return `Of ${number(honest.submissions)} ${meters[sort]}, ${reached(honest, levels).join('; ')}.`;
    })
    .join(' ');
}

/** How many reach each level. Where none reaches the first, none reaches a higher one. */
function reached(honest: HonestShares, [level, ...higher]: readonly ('query' | 'refer')[]): string[] {
  if (level === undefined) return [];
  const { share, atMost } = honest[level];
  const count = Math.round(share * honest.submissions);
  const bound = `(at most ${atMostIn(atMost)})`;
  if (count === 0) return [`none reaches ${level} ${bound}`];
  const about = aboutIn(count, honest.submissions);
  const some = `${number(count)} ${count === 1 ? 'reaches' : 'reach'} ${level}`;
  return [`${some}${about === null ? '' : `, about ${about}`} ${bound}`, ...reached(honest, higher)];
}
