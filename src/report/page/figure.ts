import type { Chart } from '../../types.ts';
import { picture } from '../chart/index.ts';
import type { NumberTable } from '../chart/picture.ts';
import { isLive, type LiveData, packChart } from '../client/pack.ts';
import { html, jsonBlock, type Markup } from '../markup.ts';
import { judgedBy, live } from '../words/live.ts';
import { meterName } from '../words/subject.ts';
import { averagings } from './averaging.ts';
import { chartId, isWholeRide, type Layout, markedOn } from './layout.ts';
import { table } from './said.ts';

/** A drawing is made at two widths, in CSS pixels: its letters keep their size on a telephone, without scripts. */
const widths = { wide: 760, narrow: 328 };
/** A table no longer than this is shown at once. */
const shortTable = 8;
/** A longer one than this is thinned: nobody reads it here, and the JSON holds it whole. */
const longTable = 60;

export function bothWidths(draw: (width: number, id: string) => Markup, id: string): Markup {
  return html`<div class="wide">${draw(widths.wide, `${id}-w`)}</div><div class="narrow">${draw(widths.narrow, `${id}-n`)}</div>`;
}

/** A chart with its title and the numbers that it argues from. */
export function figure(layout: Layout, chart: Chart): Markup {
  const { report } = layout;
  const marked = markedOn(layout, chart);
  const id = chartId(layout, chart);
  const of = (named: string) =>
    picture(chart, { id: named, marked, meter: (subject) => meterName(report, subject) });
  const { title, description, table: numbers } = of(id);
  const shown = numbersOf(title, numbers);
  return html`<figure id="${id}"><figcaption>${title}</figcaption>${steering(layout, chart)}${isLive(chart) && host(chart)}${bothWidths((width, named) => of(named).draw(width), id)}<p class="fine-print">${description}</p>${
    numbers.rows.length === 0
      ? null
      : numbers.rows.length <= shortTable
        ? html`<details open="open"><summary>The numbers</summary>${shown}</details>`
        : html`<details><summary>The numbers</summary>${shown}</details>`
  }</figure>`;
}

function numbersOf(title: string, { head, rows }: NumberTable): Markup {
  const step = Math.ceil(rows.length / longTable);
  const caption =
    step === 1 ? `${title}: the numbers` : `${title}: one row in ${step}; all stand in the JSON report`;
  return table(
    caption,
    head,
    rows.filter((_, index) => index % step === 0),
    'numbers',
  );
}

/** Where the page's script draws again; hidden without it. */
function host(chart: Chart): Markup {
  return isWholeRide(chart)
    ? html`<div class="live" tabindex="0" role="group" aria-label="${live.chart}" hidden="hidden"></div>`
    : html`<div class="live" hidden="hidden"></div>`;
}

/** What the whole ride is steered by; hidden without the script. */
function steering(layout: Layout, chart: Chart): Markup | null {
  if (!isWholeRide(chart)) return null;
  const button = (what: string, text: string) =>
    html`<button type="button" data-do="${what}">${text}</button>`;
  const judged = [...averagings(layout)].map(
    ([seconds, titles]) => html`<option value="${seconds}">${judgedBy(seconds, titles)}</option>`,
  );
  return html`<div class="tools" role="group" aria-label="${live.tools}" hidden="hidden">${button('in', live.zoomIn)}${button('out', live.zoomOut)}${button('whole', live.whole)}<select aria-label="${live.averaging}"><option value="">${live.recorded}</option>${judged}</select><output>${live.hint}</output></div>`;
}

/** What the page's script needs, as JSON: the charts that it draws again, and the meters' names. */
export function liveData(layout: Layout): Markup | null {
  const { report } = layout;
  const all = report.charts.filter(isLive);
  if (!all.some(isWholeRide)) return null;
  const subjects = ['primary', ...report.submission.seconds.map(({ subject }) => subject)];
  const data: LiveData = {
    meters: Object.fromEntries(subjects.map((subject) => [subject, meterName(report, subject)])),
    charts: all.map((chart) => ({
      figure: chartId(layout, chart),
      marked: markedOn(layout, chart),
      chart: packChart(chart),
    })),
  };
  return jsonBlock('live-data', data);
}
