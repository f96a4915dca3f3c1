import type { EventRow, EventView, Matter } from '../../types.ts';
import { script } from '../client/overview-script.ts';
import { type Hole, html, type Markup } from '../markup.ts';
import { said } from '../page/said.ts';
import { shell } from '../page/shell.ts';
import { levelWords } from '../words/grade.ts';
import { counted } from '../words/number.ts';
import { foreignText } from '../words/sentence.ts';
import { miniature } from './miniature.ts';
import { gravity, inOrder, urgency } from './order.ts';
import { style } from './style.ts';
import {
  changeWords,
  countsSaid,
  crossCheckLines,
  doneSaid,
  effectInShort,
  findingSaid,
  gradeSaid,
  lackSaid,
  onlyOfEvent,
  openSaid,
  reachInShort,
  standingWords,
  titleOf,
} from './words.ts';

/**
 * The event on one page: every submission a row, what is open first. It works from disk, and for all that it
 * says without script; with it rows can be sorted and sifted.
 */
export async function renderOverview(view: EventView): Promise<string> {
  const { record } = view;
  const name = foreignText(record.event.name);
  const body = html`<main>${head(view)}${onlyTogether(view)}<h2 id="all">Submissions</h2>${tools(view)}${table(view)}${unmatched(view)}</main>`;
  return shell(`Overview: ${name}`, body, { style, script });
}

function head(view: EventView): Markup {
  const { record, changes } = view;
  const gone = [...(changes ?? [])].filter(([, change]) => change === 'gone').map(([number]) => number);
  const { tool, part } = record;
  return html`<h1>${record.event.name}</h1><p class="lead">${counted(record.rows.length, 'submission')}. ${countsSaid(record)}. ${openSaid(view)}</p>${part !== null && html`<p>This is part ${part.index} of ${part.of}.</p>`}${
    gone.length > 0 && html`<p>No longer there since the earlier run: ${gone.join(', ')}.</p>`
  }<p>A flag is a question, not a verdict. Each rider’s report shows the evidence, the innocent explanations and what would settle it.</p><p class="quiet">Pictures: the number with its interval and the limits; shaded, where honest submissions lie; below, where nine in ten of the field lie, and its median. Made by ${tool.name} ${tool.version}.</p>`;
}

function onlyTogether({ record }: EventView): Markup | null {
  const lines = crossCheckLines(record);
  if (lines.length === 0) return null;
  const shown = lines.map(({ said: sentence, riders }) => {
    const links = riders.map((number) => html` <a href="#rider-${number}">${number}</a>`);
    return html`<li>${said(sentence)} <span class="quiet">Rows:${links}</span></li>`;
  });
  return html`<h2 id="together">Seen only in the event as a whole</h2><p class="quiet">None of this changes a rider’s own report or grade.</p><ul>${shown}</ul>`;
}

function tools({ record, matters }: EventView): Markup {
  const { rows } = record;
  const unique = (all: readonly string[]) => [...new Set(all)].sort();
  const choice = (label: string, name: string, values: readonly (readonly [value: string, text: string])[]) =>
    values.length > 0 &&
    html`<label>${label}<select name="${name}"><option value="">all</option>${values.map(
      ([value, text]) => html`<option value="${value}">${text}</option>`,
    )}</select></label>`;
  const same = (all: readonly string[]) => unique(all).map((one) => [one, one] as const);
  const rules = unique(rows.flatMap(({ findings }) => findings.map(({ rule }) => rule)))
    .map((rule) => [rule, titleOf(record, rule)] as const)
    .sort(([, a], [, b]) => (a < b ? -1 : 1));
  return html`<form id="tools" hidden><label>Rider or words<input name="words" type="search" autocomplete="off"></label>${choice(
    'Grade',
    'grade',
    same(rows.map(gradeSaid)),
  )}${choice('Finding', 'rules', rules)}${choice(
    'Category',
    'category',
    same(rows.flatMap(({ category }) => category ?? [])),
  )}${choice(
    'Stands',
    'open',
    same([...matters.values()].flat().map(({ standing }) => standingWords[standing])),
  )}<button type="reset">Show all</button><output></output></form>`;
}

function table(view: EventView): Markup {
  const { record, changes } = view;
  const withCategory = record.rows.some(({ category }) => category !== null);
  const withPlace = record.rows.some(({ place }) => place !== null);
  const columns = [
    ['who', 'Rider'],
    ...(withCategory ? [['few', 'Category']] : []),
    ...(withPlace ? [['few', 'Place']] : []),
    ['grade', 'Grade'],
    ['few', 'Checks made'],
    ['seen', 'What was seen'],
    ['shown', 'Evidence'],
    ['stands', 'Stands'],
    ...(changes === null ? [] : [['few', 'Since']]),
  ] as const;
  const cells = (row: EventRow, own: readonly Matter[]): Hole => [
    rider(row),
    withCategory && html`<td role="cell" class="few">${row.category}</td>`,
    withPlace && html`<td role="cell" class="few" data-key="${row.place ?? ''}">${row.place}</td>`,
    grade(row),
    html`<td role="cell" class="few" data-key="${row.reach.judged}">${reachInShort(row)}</td>`,
    html`<td role="cell" class="seen">${seen(record, row, own)}</td>`,
    html`<td role="cell" class="shown" data-key="${row.findings[0]?.rule ?? ''}">${miniature(record, row)}</td>`,
    html`<td role="cell" class="stands" data-key="${own.length === 0 ? '' : urgency(own)}">${stands(record, own)}</td>`,
    changes !== null &&
      html`<td role="cell" class="few">${changeWords[changes.get(row.number) ?? 'new']}</td>`,
  ];
  return html`<div class="scroll" role="group" tabindex="0" aria-labelledby="all"><table id="submissions" role="table"><thead role="rowgroup"><tr role="row">${columns.map(
    ([kind, column]) =>
      html`<th role="columnheader" scope="col" class="${kind}"><button type="button">${column}</button></th>`,
  )}</tr></thead><tbody role="rowgroup">${inOrder(view).map(
    ({ row, own }) =>
      html`<tr role="row" id="rider-${row.number}" data-grade="${gradeSaid(row)}" data-rules="${rulesOf(row)}" data-category="${row.category ?? ''}" data-open="${own.map(({ standing }) => standingWords[standing]).join('@')}">${cells(row, own)}</tr>`,
  )}</tbody></table></div>`;
}

const rulesOf = ({ findings }: EventRow) => findings.map(({ rule }) => rule).join('@');

function rider({ number, name, report }: EventRow): Markup {
  const shown = html`${number}${name !== null && html` <bdi>${foreignText(name)}</bdi>`}`;
  return html`<th role="rowheader" scope="row" class="who" data-key="${number}">${
    report === null ? shown : html`<a href="reports/rider-${number}/report.html">${shown}</a>`
  }</th>`;
}

function grade(row: EventRow): Markup {
  const lacks = row.state !== 'audited' || row.grade === 'incomplete';
  return html`<td role="cell" class="grade ${lacks ? 'lacks' : row.grade}" data-key="${gravity(row)}">${gradeSaid(row)}</td>`;
}

function seen(record: EventView['record'], row: EventRow, own: readonly Matter[]): Markup {
  const lack = lackSaid(row);
  const shown = row.findings
    .filter(({ explainedBy }) => explainedBy === null)
    .map((one) => {
      const common = effectInShort(record, row, one.rule);
      return html`<li title="${one.claim}">${findingSaid(record, one)} <span class="quiet">${levelWords[one.level]}${
        common !== null && html`, ${common}`
      }</span></li>`;
    });
  const together = onlyOfEvent(row, own).map(
    (rule) =>
      html`<li>${titleOf(record, rule)} <span class="quiet">seen <a href="#together">only together</a></span></li>`,
  );
  return html`<ul>${shown}${together}${lack !== null && html`<li>${said(lack)}</li>`}</ul>`;
}

function stands(record: EventView['record'], own: readonly Matter[]): Markup {
  const lines = own.map((matter) => {
    const { rule, standing, decision } = matter;
    const done = doneSaid(matter, record.event.name);
    const stand = standingWords[standing];
    const marked = standing === 'overdue' ? html`<strong>${stand}</strong>` : stand;
    const whole = html`${marked}${done.length > 0 && ` (${done.join(', ')})`}: <span class="quiet">${titleOf(record, rule)}</span>`;
    return decision?.why === undefined
      ? html`<li>${whole}</li>`
      : html`<li title="${decision.why}">${whole}</li>`;
  });
  return html`<ul>${lines}</ul>`;
}

function unmatched({ record }: EventView): Markup | null {
  if (record.unmatched.length === 0) return null;
  const lines = record.unmatched.map(
    ({ file, why, hint }) =>
      html`<li><q><bdi>${file}</bdi></q>: ${why}. <span class="quiet">${hint}.</span></li>`,
  );
  return html`<h2 id="unmatched">Files that nobody was matched with</h2><ul>${lines}</ul>`;
}
