import { html, type Markup } from '../markup.ts';
import { number } from '../words/number.ts';
import { capital, plain } from '../words/sentence.ts';
import { figure } from './figure.ts';
import type { Layout } from './layout.ts';
import { folded, part, said, section, terms } from './said.ts';

/** What was checked and found fine, with the charts that only these checks argue from. */
export function fineFindings(layout: Layout): Markup | null {
  const { fine } = layout.told;
  if (fine.length === 0) return null;
  const charts = layout.report.charts.filter((chart) => layout.place.get(chart.id)?.finding.level === 'none');
  const answers = terms(
    fine.map((told) => [
      told.several ? `${told.question} (${told.about})` : told.question,
      html`${said(told.claim)}${told.remarks.map((remark) => html` ${said(remark)}`)}${told.value !== null && html` <span class="fine-print">${[told.value, told.limits].filter((part) => part !== null).join('; ')}${told.honest !== null && `. ${told.honest}`}</span>`}`,
    ]),
  );
  return section(
    'fine',
    'Checked and found fine',
    html`${answers}${
      charts.length > 0 &&
      folded(
        'Charts of these checks',
        charts.map((chart) => figure(layout, chart)),
      )
    }`,
    'checks',
  );
}

/** What could not be checked, and why: never to be mistaken for a pass. */
export function uncheckedMeasures({ told: { unchecked } }: Layout): Markup | null {
  if (unchecked.length === 0) return null;
  const groups = unchecked.map(({ because, checks }) =>
    part(
      `${plain(capital(because))} (${number(checks.length)})`,
      html`<ul>${checks.map(
        ({ question, about, why }) =>
          html`<li>${question} <span class="quiet">(${about}${why !== null && html`: ${said(why)}`})</span></li>`,
      )}</ul>`,
    ),
  );
  return section('unchecked', 'What could not be checked, and why', groups);
}
