import type { ReportSection, SectionKind, Subject } from '../../types.ts';
import { sectionNames } from './names.ts';
import { counted, quantity, range } from './number.ts';

/** Every ride has one of these: there is nothing in counting them. */
export const everyRide: readonly SectionKind[] = ['first third', 'last third'];

/** "13 sprints", "first third". */
export function kindSaid(kind: SectionKind, count: number): string {
  const [one, many] = sectionNames[kind];
  return everyRide.includes(kind) ? one : counted(count, one, many);
}

/** "3.2 % (2.9 to 3.5 %)": how the primary differs from a meter there; empty where it cannot be told. */
export function differenceSaid({ differences }: Pick<ReportSection, 'differences'>, meter: Subject): string {
  const found = differences.find(({ subject }) => subject === meter);
  if (found === undefined) return '';
  const { percent, low, high } = found;
  const between = low === null || high === null ? null : range([low, high], '%');
  return between === null ? quantity(percent, '%') : `${quantity(percent, '%')} (${between})`;
}
