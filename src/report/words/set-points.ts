import type { Report, SetPoint, SetPoints } from '../../types.ts';
import { quantity, range } from './number.ts';
import { meterName } from './subject.ts';

/** Heads what the meters hold where the ride keeps to levels. */
export const setPointsTitle = 'What was held at a set-point';

/** What the targets are, and whose word they are. */
export function targetsSaid(report: Report, { steadiest }: SetPoints): string {
  return `Stretches of a minute and more in which the ride keeps to one level, as where a trainer holds a target. No file says what was asked for: the target is the middle value of the ${meterName(report, steadiest)}, which keeps closest to its levels.`;
}

/** "+14.2 W (11.8 to 16.6 W)". */
export function heldSaid({ over, low, high }: SetPoint['meters'][number]): string {
  const between = low === null || high === null ? null : range([low, high], 'W');
  const value = `${over > 0 ? '+' : ''}${quantity(over, 'W')}`;
  return between === null ? value : `${value} (${between})`;
}

/** How what a meter holds beyond the target goes with cadence or speed. */
export function trendSaid(
  report: Report,
  { subject, of, value, low, high }: SetPoints['trends'][number],
): string {
  const step = of === 'cadence' ? quantity(10, 'rpm') : quantity(10, 'km/h');
  const change = `${quantity(Math.abs(value), '%')} of the target ${value < 0 ? 'less' : 'more'}`;
  const doubt = low <= 0 && high >= 0 ? '; it may be chance' : '';
  return `From block to block, with every ${step} more the ${meterName(report, subject)} holds ${change} (${range([low, high], '%') ?? 'exact'})${doubt}.`;
}
