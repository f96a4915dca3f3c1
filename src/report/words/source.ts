import type { FalseAlarm, HonestShares, Raised, Rule } from '../../types.ts';
import { number } from './number.ts';

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
  withinClaims: 'within their makers’ claims',
  asFound: 'as found in the field',
} as const satisfies Partial<Record<keyof FalseAlarm, string>>;

/** Rare things need more places than shares have elsewhere. */
const percent = (share: number) => `${number(100 * share)}\u00a0%`;

/** How often honest submissions reach each level by this rule; null where it was not measured. */
export function falseAlarmSaid({ source, limits }: Rule): string | null {
  const { falseAlarm } = source;
  const levels = (['query', 'refer'] as const satisfies readonly Raised[]).filter(
    (level) => limits[level] !== undefined,
  );
  if (falseAlarm === undefined || levels.length === 0) return null;
  const shares = (honest: HonestShares) =>
    levels
      .map((level) => {
        const { share, atMost } = honest[level];
        return `${percent(share)} reach ${level} (at most ${percent(atMost)})`;
      })
      .join(', ');
  const said = (['withinClaims', 'asFound'] as const).map(
    (sort) =>
      `of ${number(falseAlarm[sort].submissions)} with meters ${meters[sort]} ${shares(falseAlarm[sort])}`,
  );
  return `Simulated honest submissions: ${said.join('; ')}.`;
}
