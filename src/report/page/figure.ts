import type { Chart, Report, Stretch } from '../../types.ts';
import { picture } from '../chart/index.ts';
import { html, type Markup } from '../markup.ts';
import { meterName } from '../words/subject.ts';
import { table } from './said.ts';

/** A drawing is made at two widths, in CSS pixels: its letters keep their size on a telephone, without scripts. */
const widths = { wide: 760, narrow: 328 };

export function bothWidths(draw: (width: number, id: string) => Markup, id: string): Markup {
  return html`<div class="wide">${draw(widths.wide, `${id}-w`)}</div><div class="narrow">${draw(widths.narrow, `${id}-n`)}</div>`;
}

/** Place of a chart in the report, for links: ids come from measures, places do not. */
export function chartPlace(report: Report, id: string): number {
  return report.charts.findIndex((chart) => chart.id === id) + 1;
}

/** A chart with its title and the numbers that it argues from. */
export function figure(report: Report, chart: Chart, marked: readonly Stretch[]): Markup {
  const id = `chart-${chartPlace(report, chart.id)}`;
  const of = (named: string) =>
    picture(chart, { id: named, marked, meter: (subject) => meterName(report, subject) });
  const { title, description, table: numbers } = of(id);
  return html`<figure id="${id}"><figcaption>${title}</figcaption>${bothWidths((width, named) => of(named).draw(width), id)}<p class="fine-print">${description}</p>${
    numbers.rows.length > 0 &&
    html`<details><summary>The numbers</summary>${table(`${title}: the numbers`, numbers.head, numbers.rows, 'numbers')}</details>`
  }</figure>`;
}
