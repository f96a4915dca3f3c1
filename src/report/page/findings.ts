import type { Chart, Finding, Rule, Stretch } from '../../types.ts';
import { gauge } from '../chart/gauge.ts';
import { type Hole, html, type Markup } from '../markup.ts';
import type { Named, Told } from '../outline.ts';
import { levelHeadings } from '../words/grade.ts';
import { shadingSaid } from '../words/honest.ts';
import { oneIn, span } from '../words/number.ts';
import { capital, plain } from '../words/sentence.ts';
import { falseAlarmSaid, sourceSaid } from '../words/source.ts';
import { averagedOver } from './averaging.ts';
import { bothWidths, figure } from './figure.ts';
import { chartId, findingId, isOverview, isWholeRide, type Layout } from './layout.ts';
import { bullets, said, section, terms } from './said.ts';

/** Stretches named before "and n more". */
const mostStretches = 8;

/** The whole ride on one time axis, with the stretches marked that raised findings argue from; and where the meters agree. */
export function overview(layout: Layout): Markup | null {
  const charts = layout.report.charts.filter(isOverview);
  if (charts.length === 0) return null;
  return section(
    'ride',
    'The ride at a glance',
    charts.map((chart) => figure(layout, chart)),
  );
}

/** Findings that ask for something, by level. */
export function raisedFindings(layout: Layout): Markup {
  return html`${layout.told.raised.map(({ level, findings }) =>
    section(
      `level-${level}`,
      levelHeadings[level],
      findings.map((told) => finding(layout, told)),
      level,
    ),
  )}`;
}

function finding(layout: Layout, told: Told): Markup {
  const { rule, finding, accountedBy, accountsFor, under } = told;
  const charts = layout.report.charts.filter(
    (chart) => finding.charts.includes(chart.id) && !isWholeRide(chart),
  );
  return html`<article class="finding" id="${findingId(told.number)}"><p class="eyebrow">${plain(capital([told.about]))}<code>${finding.rule}</code></p><h3>${told.title}</h3><p class="claim">${said(told.claim)}</p>${told.remarks.map(
    (remark) => html`<p>${said(remark)}</p>`,
  )}${accountedBy !== null && html`<p>Accounted for by another finding: ${linked(accountedBy)}.</p>`}${
    accountsFor.length > 0 &&
    html`<p>It accounts as well for: ${accountsFor.map((one, index) => html`${index > 0 && '; '}${linked(one)}`)}.</p>`
  }${scale(told)}${charts.map((chart) => chartOf(layout, chart, told))}${rule !== null && accountedBy === null && (under === null ? sides(rule) : html`<p>What it may innocently be, what would settle it, and where the limits come from stand under ${linked(under)}.</p>`)}${basis(layout, told)}</article>`;
}

/** Another finding, by its title. */
const linked = ({ number, title }: Named) => html`<a href="#${findingId(number)}">${title}</a>`;

function sides({ innocent, settles }: Rule): Markup {
  return html`<div class="sides">${innocent.length > 0 && html`<div><h4>It may be innocent</h4>${bullets(innocent)}</div>`}${settles.length > 0 && html`<div><h4>What would settle it</h4>${bullets(settles)}</div>`}</div>`;
}

function basis(layout: Layout, { finding, honest, rule, under, accountedBy }: Told): Markup {
  const { stretches, chance } = finding;
  // Where another finding leads, the rule's own words stand once, under how numbers were worked out.
  const source = under === null && accountedBy === null ? rule : null;
  return terms([
    ['When', stretches.length > 0 ? when(layout, stretches, rule) : null],
    ['Where honest submissions lie', honest],
    [
      'How often honest riders show this',
      chance === null
        ? null
        : `${plain(capital([oneIn(chance)]))}. This does not say how likely this rider is to be honest.`,
    ],
    ['Where the limits come from', source === null ? null : sourceSaid(source)],
    ['False alarms', source === null ? null : falseAlarmSaid(source)],
  ]);
}

/** The stretches as links: to the ride above, and with the page's script to their very seconds. */
function when(layout: Layout, stretches: readonly Stretch[], rule: Rule | null): Hole {
  const averaged = (rule === null ? null : averagedOver(rule)) ?? '';
  const ride = layout.report.charts.find(isWholeRide);
  const more = stretches.length - mostStretches;
  const links = stretches
    .slice(0, mostStretches)
    .map((stretch, index) => [
      index > 0 && ', ',
      ride === undefined
        ? span(stretch)
        : html`<a href="#${chartId(layout, ride)}" data-from="${stretch[0]}" data-to="${stretch[1]}" data-averaged="${averaged}">${span(stretch)}</a>`,
    ]);
  return [...links, more > 0 && ` and ${more} more`];
}

/** The number with its interval against its limits, drawn and in words. */
function scale({ finding, number, value, limits, byCautiousEnd }: Told): Markup | null {
  if (value === null) return null;
  const words = [value, limits].filter((part) => part !== null).join('; ');
  const draw = gauge(finding, '', words);
  return html`<figure><figcaption>${words}</figcaption>${draw !== null && bothWidths((width, id) => gauge(finding, id, words)!(width), `gauge-${number}`)}<p class="fine-print">${scaleKey(finding, byCautiousEnd)}</p></figure>`;
}

/** How to read the scale. */
function scaleKey(finding: Finding, byCautiousEnd: boolean): string {
  const { interval } = finding;
  const dot =
    interval !== null && interval[0] === interval[1]
      ? 'Dot: the number, counted and not estimated.'
      : 'Dot and bar: the number with its 95 % interval.';
  const end = byCautiousEnd ? 'Its end nearer to innocence is held against the limits.' : null;
  return [dot, end, shadingSaid(finding)].filter((part) => part !== null).join(' ');
}

function chartOf(layout: Layout, chart: Chart, told: Told): Markup {
  const drawnAt = layout.place.get(chart.id);
  return drawnAt === undefined || drawnAt === told
    ? figure(layout, chart)
    : html`<p class="fine-print"><a href="#${chartId(layout, chart)}">Its chart stands under “${drawnAt.title}”.</a></p>`;
}
