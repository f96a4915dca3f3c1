import type { EventRow, EventView, Matter, Standing } from '../../types.ts';
import { script } from '../client/overview-script.ts';
import { type Hole, html, type Markup } from '../markup.ts';
import { said } from '../page/said.ts';
import { shell } from '../page/shell.ts';
import { levelWords } from '../words/grade.ts';
import { counted } from '../words/number.ts';
import { foreignText } from '../words/sentence.ts';
import { miniature } from './miniature.ts';
import { style } from './style.ts';
import {
  changeWords,
  countsSaid,
  crossCheckLines,
  gradeSaid,
  lackSaid,
  numberSaid,
  openSaid,
  reachInShort,
  standingWords,
  titleOf,
} from './words.ts';

/** What is open first; what needs nobody last. */
const standingOrder: readonly Standing[] = ['to decide', 'to ask', 'asked', 'decided', 'explained'];
const gradeOrder = ['refer', 'query', 'incomplete', 'clear'];

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

function head({ record, matters, changes }: EventView): Markup {
  const standings = [...matters.values()].flat().map(({ standing }) => standing);
  const open = openSaid(standings);
  const gone = [...(changes ?? [])].filter(([, change]) => change === 'gone').map(([number]) => number);
  const { tool, part } = record;
  return html`<h1>${record.event.name}</h1><p class="lead">${counted(record.rows.length, 'submission')}. ${countsSaid(record)}. ${
    open === null ? 'Nothing is open.' : `Open: ${open}.`
  }</p>${part !== null && html`<p>This is part ${part.index} of ${part.of}.</p>`}${
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

function table({ record, matters, changes }: EventView): Markup {
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
  const lines = record.rows.map((row) => ({ row, matters: matters.get(row.number) ?? [] }));
  lines.sort((a, b) => weight(a.row, a.matters) - weight(b.row, b.matters));
  const cells = (row: EventRow, own: readonly Matter[]): Hole => [
    rider(row),
    withCategory && html`<td role="cell" class="few">${row.category}</td>`,
    withPlace && html`<td role="cell" class="few" data-key="${row.place ?? ''}">${row.place}</td>`,
    grade(row),
    html`<td role="cell" class="few" data-key="${row.reach.judged}">${reachInShort(row)}</td>`,
    html`<td role="cell" class="seen">${seen(record, row)}</td>`,
    html`<td role="cell" class="shown" data-key="${row.findings[0]?.rule ?? ''}">${miniature(record, row)}</td>`,
    html`<td role="cell" class="stands" data-key="${own.length === 0 ? '' : standingOrder.indexOf(own[0]!.standing)}">${stands(record, own)}</td>`,
    changes !== null &&
      html`<td role="cell" class="few">${changeWords[changes.get(row.number) ?? 'new']}</td>`,
  ];
  return html`<div class="scroll" role="group" tabindex="0" aria-labelledby="all"><table id="submissions" role="table"><thead role="rowgroup"><tr role="row">${columns.map(
    ([kind, column]) =>
      html`<th role="columnheader" scope="col" class="${kind}"><button type="button">${column}</button></th>`,
  )}</tr></thead><tbody role="rowgroup">${lines.map(
    ({ row, matters: own }) =>
      html`<tr role="row" id="rider-${row.number}" data-grade="${gradeSaid(row)}" data-rules="${rulesOf(row)}" data-category="${row.category ?? ''}" data-open="${own.map(({ standing }) => standingWords[standing]).join('@')}">${cells(row, own)}</tr>`,
  )}</tbody></table></div>`;
}

const rulesOf = ({ findings }: EventRow) => findings.map(({ rule }) => rule).join('@');

/** What is open, then the grade; equal ones stay in the order of their numbers. */
function weight({ grade: own, state }: EventRow, [first]: readonly Matter[]): number {
  const standing = first === undefined ? standingOrder.length : standingOrder.indexOf(first.standing);
  return standing * 10 + (state === 'audited' ? gradeOrder.indexOf(own) : 2);
}

function rider({ number, name, report }: EventRow): Markup {
  const shown = html`${number}${name !== null && html` <bdi>${foreignText(name)}</bdi>`}`;
  return html`<th role="rowheader" scope="row" class="who" data-key="${number}">${
    report === null ? shown : html`<a href="reports/rider-${number}/report.html">${shown}</a>`
  }</th>`;
}

function grade(row: EventRow): Markup {
  const lacks = row.state !== 'audited' || row.grade === 'incomplete';
  const key = gradeOrder.indexOf(row.grade) + (row.state === 'audited' ? 0 : 0.5);
  return html`<td role="cell" class="grade ${lacks ? 'lacks' : row.grade}" data-key="${key}">${gradeSaid(row)}</td>`;
}

function seen(record: EventView['record'], row: EventRow): Markup {
  const lack = lackSaid(row);
  const shown = row.findings
    .filter(({ explainedBy }) => explainedBy === null)
    .map(
      (one) =>
        html`<li title="${one.claim}">${titleOf(record, one.rule)} ${numberSaid(one)} <span class="quiet">${levelWords[one.level]}</span></li>`,
    );
  return html`<ul>${shown}${lack !== null && html`<li>${said(lack)}</li>`}</ul>`;
}

function stands(record: EventView['record'], own: readonly Matter[]): Markup {
  const lines = own.map(({ rule, standing, decision }) => {
    const more = [
      decision?.due !== undefined && standing === 'asked' ? `due ${decision.due}` : null,
      decision?.decision ?? null,
      decision?.by === undefined ? null : `by ${decision.by}`,
      decision?.appeal === undefined ? null : `appeal ${decision.appeal}`,
      decision?.until === undefined ? null : `until ${decision.until}`,
    ].filter((one) => one !== null);
    return html`<li title="${decision?.why ?? ''}">${standingWords[standing]}${more.length > 0 && ` (${more.join(', ')})`} <span class="quiet">${titleOf(record, rule)}</span></li>`;
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
