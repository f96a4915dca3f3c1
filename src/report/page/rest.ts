import type { Report } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import type { Outline, Told } from '../outline.ts';
import { number } from '../words/number.ts';
import { capital, plain } from '../words/sentence.ts';
import { figure } from './figure.ts';
import { part, said, section, terms } from './said.ts';

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
  const answers = terms(
    fine.map((told) => [
      told.several ? `${told.question} (${told.about})` : told.question,
      html`${said(told.claim)} <span class="fine-print">${[told.value, told.limits].filter((part) => part !== null).join('; ')}</span>`,
    ]),
  );
  return section(
    'fine',
    'Checked and found fine',
    html`${answers}${charts.length > 0 && html`<details><summary>Charts of these checks</summary>${charts.map((chart) => figure(report, chart, []))}</details>`}`,
    'checks',
  );
}

/** What could not be checked, and why: never to be mistaken for a pass. */
export function uncheckedMeasures({ unchecked }: Outline): Markup | null {
  if (unchecked.length === 0) return null;
  const groups = unchecked.map(({ because, checks }) =>
    part(
      `${plain(capital([because]))} (${number(checks.length)})`,
      html`<ul>${checks.map(
        ({ question, about, why }) =>
          html`<li>${question} <span class="quiet">(${about}${plain(why) !== because && html`: ${said(why)}`})</span></li>`,
      )}</ul>`,
    ),
  );
  return section('unchecked', 'What could not be checked, and why', groups);
}
