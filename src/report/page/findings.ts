import type { Chart, Raised, Report } from '../../types.ts';
import { gauge } from '../chart/gauge.ts';
import { html, type Markup } from '../markup.ts';
import type { Outline, Told } from '../outline.ts';
import { levelHeadings, levelWords } from '../words/grade.ts';
import { oneIn, spans } from '../words/number.ts';
import { falseAlarmSaid, sourceSaid } from '../words/source.ts';
import { bothWidths, chartPlace, figure } from './figure.ts';
import { bullets, said, terms } from './said.ts';
import { anchor } from './top.ts';

/** Stretches named before "and n more". */
const mostStretches = 8;

/** Findings that ask for something, by level. `place` says where each chart is drawn, once for the page. */
export function raisedFindings(
  report: Report,
  { raised }: Outline,
  place: ReadonlyMap<string, Told>,
): Markup {
  return html`${raised.map(
    ({ level, findings }) =>
      html`<section aria-labelledby="level-${level}"><h2 id="level-${level}">${levelHeadings[level]}</h2>${findings.map((told) => finding(report, told, level, place))}</section>`,
  )}`;
}

function finding(report: Report, told: Told, level: Raised, place: ReadonlyMap<string, Told>): Markup {
  const { rule, finding } = told;
  const charts = report.charts.filter((chart) => finding.charts.includes(chart.id));
  return html`<article class="finding ${level} row" id="${anchor(told)}"><p class="kind">${levelWords[level]}<span>${told.about}</span><span class="code">${finding.rule}</span></p><div class="flow"><h3>${told.title}</h3><p class="claim">${said(told.claim)}</p>${told.remarks.map((remark) => html`<p>${said(remark)}</p>`)}${scale(told)}${charts.map((chart) => chartOf(report, chart, told, place))}${
    rule !== null &&
    html`<div class="pair">${rule.innocent.length > 0 && html`<div><h4>It may be innocent</h4>${bullets(rule.innocent)}</div>`}${rule.settles.length > 0 && html`<div><h4>What would settle it</h4>${bullets(rule.settles)}</div>`}</div>${terms(
      [
        ['When', finding.stretches.length > 0 ? spans(finding.stretches, mostStretches) : null],
        ['Mind', finding.remarks.length > 0 ? finding.remarks.join('; ') : null],
        ['Accounted for by', finding.explainedBy],
        [
          'How often honest riders show this',
          finding.chance === null
            ? null
            : `${oneIn(finding.chance)}. This does not say how likely this rider is honest.`,
        ],
        ['Where the limits come from', sourceSaid(rule)],
        ['False alarms', falseAlarmSaid(rule)],
      ],
    )}`
  }</div></article>`;
}

/** The number with its interval against its limits, drawn and in words. */
function scale({ finding, number, value, limits }: Told): Markup | null {
  if (value === null) return null;
  const words = [value, limits].filter((part) => part !== null).join('; ');
  const draw = gauge(finding, '', words);
  return html`<figure><figcaption>${words}</figcaption>${draw !== null && bothWidths((width, id) => gauge(finding, id, words)!(width), `gauge-${number}`)}<p class="fine-print">Dot and bar: the number with its 95 % interval.${finding.expected !== null && ' Shaded: where about 95 of 100 honest submissions lie.'}</p></figure>`;
}

function chartOf(report: Report, chart: Chart, told: Told, place: ReadonlyMap<string, Told>): Markup {
  const drawnAt = place.get(chart.id);
  return drawnAt === undefined || drawnAt === told
    ? figure(report, chart, told.finding.stretches)
    : html`<p class="fine-print"><a href="#chart-${chartPlace(report, chart.id)}">Its chart stands under “${drawnAt.title}”.</a></p>`;
}

/** Each chart is drawn where it is first argued from. */
export function chartPlaces({ raised, fine }: Outline): ReadonlyMap<string, Told> {
  const place = new Map<string, Told>();
  for (const told of [...raised.flatMap((group) => group.findings), ...fine]) {
    for (const id of told.finding.charts) if (!place.has(id)) place.set(id, told);
  }
  return place;
}
