import type { Report } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import type { Outline, Told } from '../outline.ts';
import { number } from '../words/number.ts';
import { capital, plain } from '../words/sentence.ts';
import { figure } from './figure.ts';
import { said, table } from './said.ts';

/** What was checked and found fine, with the charts that only these checks argue from. */
export function fineFindings(
  report: Report,
  { fine }: Outline,
  place: ReadonlyMap<string, Told>,
): Markup | null {
  if (fine.length === 0) return null;
  const charts = report.charts.filter((chart) => {
    const told = place.get(chart.id);
    return told !== undefined && told.finding.level === 'none';
  });
  return html`<section aria-labelledby="fine"><h2 id="fine">Checked and found fine</h2>${table(
    'Checks that found nothing',
    ['check', 'about', 'what was found', 'number', 'limits'],
    fine.map((told) => [told.question, told.about, said(told.claim), told.value, told.limits]),
  )}${charts.length > 0 && html`<details><summary>Charts of these checks</summary>${charts.map((chart) => figure(report, chart, []))}</details>`}</section>`;
}

/** What could not be checked, and why: never to be mistaken for a pass. */
export function uncheckedMeasures({ unchecked }: Outline): Markup | null {
  if (unchecked.length === 0) return null;
  return html`<section aria-labelledby="unchecked"><h2 id="unchecked">What could not be checked, and why</h2><div class="flow">${unchecked.map(
    ({ because, checks }) =>
      html`<div class="row"><h3 class="kind">${plain(capital([because]))} (${number(checks.length)})</h3><ul>${checks.map(
        ({ question, about, why }) =>
          html`<li>${question} <span class="quiet">(${about})</span>${plain(why) !== because && html`: ${said(why)}`}</li>`,
      )}</ul></div>`,
  )}</div></section>`;
}
