import type { Chart, Finding, Report, Rule } from '../../types.ts';
import { gauge } from '../chart/gauge.ts';
import { html, type Markup } from '../markup.ts';
import type { Outline, Told } from '../outline.ts';
import { levelHeadings } from '../words/grade.ts';
import { oneIn, spans } from '../words/number.ts';
import { capital, plain } from '../words/sentence.ts';
import { falseAlarmSaid, sourceSaid } from '../words/source.ts';
import { bothWidths, chartPlace, figure } from './figure.ts';
import { bullets, said, section, terms } from './said.ts';
import { anchor } from './top.ts';

/** Stretches named before "and n more". */
const mostStretches = 8;

/** Findings that ask for something, by level. `place` says where each chart is drawn, once for the page. */
export function raisedFindings(
  report: Report,
  { raised }: Outline,
  place: ReadonlyMap<string, Told>,
): Markup {
  return html`${raised.map(({ level, findings }) =>
    section(
      `level-${level}`,
      levelHeadings[level],
      findings.map((told) => finding(report, told, place)),
      level,
    ),
  )}`;
}

function finding(report: Report, told: Told, place: ReadonlyMap<string, Told>): Markup {
  const { rule, finding, accountedBy } = told;
  const charts = report.charts.filter((chart) => finding.charts.includes(chart.id));
  return html`<article class="finding" id="${anchor(told.number)}"><p class="eyebrow">${plain(capital([told.about]))}<code>${finding.rule}</code></p><h3>${told.title}</h3><p class="claim">${said(told.claim)}</p>${told.remarks.map(
    (remark) => html`<p>${said(remark)}</p>`,
  )}${
    accountedBy !== null &&
    html`<p>Accounted for by another finding: <a href="#${anchor(accountedBy.number)}">${accountedBy.title}</a>.</p>`
  }${scale(told)}${charts.map((chart) => chartOf(report, chart, told, place))}${
    rule !== null && html`${accountedBy === null && sides(rule)}${basis(rule, finding)}`
  }</article>`;
}

function sides({ innocent, settles }: Rule): Markup {
  return html`<div class="sides">${innocent.length > 0 && html`<div><h4>It may be innocent</h4>${bullets(innocent)}</div>`}${settles.length > 0 && html`<div><h4>What would settle it</h4>${bullets(settles)}</div>`}</div>`;
}

function basis(rule: Rule, { stretches, chance }: Finding): Markup {
  return terms([
    ['When', stretches.length > 0 ? spans(stretches, mostStretches) : null],
    [
      'How often honest riders show this',
      chance === null ? null : `${oneIn(chance)}. This does not say how likely this rider is honest.`,
    ],
    ['Where the limits come from', sourceSaid(rule)],
    ['False alarms', falseAlarmSaid(rule)],
  ]);
}

/** The number with its interval against its limits, drawn and in words. */
function scale({ finding, number, value, limits }: Told): Markup | null {
  if (value === null) return null;
  const words = [value, limits].filter((part) => part !== null).join('; ');
  const draw = gauge(finding, '', words);
  return html`<figure><figcaption>${words}</figcaption>${draw !== null && bothWidths((width, id) => gauge(finding, id, words)!(width), `gauge-${number}`)}<p class="fine-print">Dot and bar: the number with its 95 % interval.${finding.expected !== null && ' Shaded: where about 95 of 100 honest submissions lie.'}</p></figure>`;
}

function chartOf(report: Report, chart: Chart, told: Told, place: ReadonlyMap<string, Told>): Markup {
  const link = `chart-${chartPlace(report, chart.id)}`;
  if (isWholeRide(chart))
    return html`<p class="fine-print"><a href="#${link}">The whole ride is drawn above.</a></p>`;
  const drawnAt = place.get(chart.id);
  return drawnAt === undefined || drawnAt === told
    ? figure(report, chart, told.finding.stretches)
    : html`<p class="fine-print"><a href="#${link}">Its chart stands under “${drawnAt.title}”.</a></p>`;
}

const isWholeRide = (chart: Chart) => chart.kind === 'traces';

/** The whole ride on one time axis, with the stretches marked that raised findings argue from. */
export function overview(report: Report, { raised }: Outline): Markup | null {
  const charts = report.charts.filter(isWholeRide);
  if (charts.length === 0) return null;
  const marked = raised.flatMap(({ findings }) => findings.flatMap((told) => told.finding.stretches));
  return section(
    'ride',
    'The ride at a glance',
    charts.map((chart) => figure(report, chart, marked)),
  );
}

/** Every chart but the whole ride is drawn where it is first argued from. */
export function chartPlaces(report: Report, { raised, fine }: Outline): ReadonlyMap<string, Told> {
  const whole = new Set(report.charts.filter(isWholeRide).map(({ id }) => id));
  const place = new Map<string, Told>();
  for (const told of [...raised.flatMap((group) => group.findings), ...fine]) {
    for (const id of told.finding.charts) if (!place.has(id) && !whole.has(id)) place.set(id, told);
  }
  return place;
}
