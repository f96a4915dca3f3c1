import type { Stretch } from '../../types.ts';
import { position, span } from './number.ts';
import { foreignText } from './sentence.ts';

/** What the page's own controls say. */
export const live = {
  tools: 'Look closer at the ride',
  zoomIn: 'Closer',
  zoomOut: 'Wider',
  whole: 'Whole ride',
  averaging: 'How power is drawn',
  recorded: 'As recorded',
  chart:
    'The ride: arrow keys read second by second (with Shift ten at once), plus and minus zoom, 0 shows the whole ride',
  hint: 'Point at the chart to read it, drag across it to zoom in.',
  showing: (within: Stretch) => `Showing ${span(within)}.`,
} as const;

/** What every meter reads at one second of the ride. */
export function readout(
  at: number,
  readings: readonly { readonly name: string; readonly value: string | null }[],
): string {
  const said = readings.map(({ name, value }) => `${name} ${value ?? 'not recorded'}`);
  return [position(at), ...said].join(' · ');
}

/** A way of averaging, by the rules that judged so: the first two by name. */
export function judgedBy(seconds: number, titles: readonly string[]): string {
  const more = titles.length - 2;
  const named = titles.slice(0, 2).map(foreignText).join(', ');
  return `As judged, means over ${seconds} s: ${named}${more > 0 ? ` and ${more} more` : ''}`;
}
