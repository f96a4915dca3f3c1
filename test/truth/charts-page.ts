import { html } from '../../src/report/markup.ts';
import { section } from '../../src/report/page/said.ts';
import { shell } from '../../src/report/page/shell.ts';
import { style } from '../../src/report/page/style.ts';
import type { Rule } from '../../src/types.ts';
import { faults as allFaults } from '../make/faults/index.ts';
import { shareOf } from './bounds.ts';
import budget from './budget.json' with { type: 'json' };
import { type DetectionPanel, detectionCurves, type SharePoint, shareRows } from './charts.ts';
import type { Counted } from './counts.ts';
import { cohorts } from './plan.ts';
import {
  countFrom,
  honestGroups,
  nameOf,
  rateOf,
  relativeTrials,
  type Target,
  targetsOf,
} from './results.ts';
import { spreadRules, type Tally } from './tally.ts';

/** RESULTS.md in pictures: one page that needs nothing else. */
export function chartsPage({ tally, run }: Counted, rules: readonly Rule[]): Promise<string> {
  const targets = targetsOf(tally, rules);
  const pictures = [
    picture(
      'high',
      'Found',
      'Dot: measured. Line: to the least that it may truly be. Tick: target.',
      targetRows(targets, 'atLeast'),
      [0.7, 1],
    ),
    picture(
      'low',
      'Asked in vain',
      'Dot: measured. Line: to the most that it may truly be. Tick: target.',
      targetRows(targets, 'atMost'),
    ),
    curves(tally, rules),
    ...cohorts.map((cohort, k) =>
      picture(
        `rules-${k}`,
        `Query by rule, ${cohort}`,
        'Tick: the rule’s part of the budget. Rules that asked nobody are left out.',
        rules.flatMap(({ id }): SharePoint[] => {
          const { query } = rateOf(tally, cohort, id);
          const free = k === 1 && spreadRules.includes(id);
          const limit = (budget.rules as { readonly [rule: string]: { query: number } })[id]!.query;
          return query.count === 0
            ? []
            : [{ name: id, share: query, bound: 'upper', ...(free ? {} : { limit }) }];
        }),
      ),
    ),
    ...cohorts.map((cohort, k) =>
      picture(
        `kinds-${k}`,
        `Query by kind of honest submission, ${cohort}`,
        'By any rule; line: to the most that it may truly be.',
        honestGroups(tally, cohort).map((group) => ({
          name: nameOf(group),
          share: shareOf(countFrom(group.any, 2), group.submissions),
          bound: 'upper',
        })),
      ),
    ),
  ];
  const title = 'How often faults are found, and honest riders asked';
  const body = html`<main><header class="row mast"><div></div><div class="flow"><h1>${title}</h1><p class="fine-print">Run of ${run.date}, commit ${run.commit}, generator ${run.build}, seed ${run.seed}. The numbers: RESULTS.md.</p></div></header>${pictures}</main>`;
  return shell(title, body, { style, script: '' });
}

function targetRows(targets: readonly Target[], side: 'atMost' | 'atLeast'): SharePoint[] {
  const names: { readonly [id in Target['id']]: string } = {
    'claims refer': 'within claims: refer',
    'claims query': 'within claims: query or worse',
    'found refer': 'as found: refer',
    'found query': 'as found: query, but for spread',
    'clear-cut': 'clear-cut faults: highest level',
    moderate: 'moderate faults: query',
    lag: 'lag within 1 s',
  };
  return targets.flatMap(({ id, share, limit }): SharePoint[] =>
    side === 'atMost'
      ? 'atMost' in limit
        ? [{ name: names[id], share, bound: 'upper', limit: limit.atMost }]
        : []
      : 'atLeast' in limit
        ? [{ name: names[id], share, bound: 'lower', limit: limit.atLeast }]
        : [],
  );
}

function picture(
  id: string,
  title: string,
  key: string,
  rows: readonly SharePoint[],
  domain: readonly [number, number] = [
    0,
    Math.max(0.01, ...rows.map(({ share, limit }) => Math.max(share.upper, limit ?? 0))),
  ],
) {
  if (rows.length === 0) return null;
  return section(
    id,
    title,
    html`<p class="fine-print">${key}</p><div class="scroll">${shareRows(id, title, rows, domain)}</div>`,
  );
}

function curves(tally: Tally, rules: readonly Rule[]) {
  const panels = rules
    .map(
      ({ id }): DetectionPanel => ({
        rule: id,
        faults: allFaults
          .filter((fault) => fault.rules[0] === id)
          .map((fault) => ({ name: fault.name, trials: relativeTrials(tally, [fault]) }))
          .filter(({ trials }) => trials.length > 0),
      }),
    )
    .filter(({ faults }) => faults.length > 0);
  if (panels.length === 0) return null;
  const title = 'Found against strength';
  return section(
    'curves',
    title,
    html`<p class="fine-print">Share in which a right rule asks, against strength as a multiple of the moderate one (the line at 1). Dots: draws of like strength; line: the curve fitted to them.</p><div class="scroll">${detectionCurves('curves-drawing', title, panels)}</div>`,
  );
}
