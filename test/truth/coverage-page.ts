import { type Share, shareOf } from './bounds.ts';
import { type CoverageRow, designCount } from './coverage.ts';
import type { Figures } from './figures.ts';
import type { Lot, Plan } from './plan.ts';
import type { RunRecord } from './runs.ts';
import { hundredths, percent, table } from './text.ts';

interface Cell {
  checks: number;
  silent: number;
  held: number;
  below: number;
  above: number;
  bias: number;
  squares: number;
  width: number;
}

/** What became of each rule's intervals in each kind of ride. */
export type CoverageTally = Map<number, Map<string, Cell>>;

export function countCoverage(tally: CoverageTally, { lot, checks, silent }: CoverageRow): void {
  const byRule = tally.get(lot) ?? new Map<string, Cell>();
  tally.set(lot, byRule);
  const cellOf = (rule: string) => {
    const cell = byRule.get(rule) ?? {
      checks: 0,
      silent: 0,
      held: 0,
      below: 0,
      above: 0,
      bias: 0,
      squares: 0,
      width: 0,
    };
    byRule.set(rule, cell);
    return cell;
  };
  for (const rule of silent) cellOf(rule).silent++;
  for (const { rule, truth, value, interval } of checks) {
    const cell = cellOf(rule);
    cell.checks++;
    if (truth < interval[0]) cell.below++;
    else if (truth > interval[1]) cell.above++;
    else cell.held++;
    cell.bias += value - truth;
    cell.squares += (value - truth) ** 2;
    cell.width += interval[1] - interval[0];
  }
}

/** Shares that a 95 % interval may hold the truth in. */
const promised = { least: 0.92, most: 0.98 };

/** What RESULTS.md quotes: how many pairings of a ride and a rule hold what a 95 % interval promises. */
export function coverageFigures(
  tally: CoverageTally,
  { lots }: Plan,
  run: RunRecord,
): NonNullable<Figures['coverage']> {
  const cells = [...tally].flatMap(([k, byRule]) => {
    const lot = lots[k] as Extract<Lot, { sort: 'coverage' }>;
    return [...byRule]
      .filter(([, { checks }]) => checks > 0)
      .map(([rule, cell]) => ({ what: `${rule}, ${rideName(lot)}`, held: shareOf(cell.held, cell.checks) }));
  });
  const sorted = cells.sort((a, b) => a.held.share - b.held.share);
  const said = ({ what, held }: (typeof cells)[number]) => ({ what, share: held.share });
  return {
    date: run.date,
    commit: run.commit,
    draws: drawsOf({ lots }, run),
    inside: cells.filter(({ held }) => held.share >= promised.least && held.share <= promised.most).length,
    outside: cells.filter(({ held }) => !holds(held)).length,
    of: cells.length,
    least: said(sorted[0]!),
    most: said(sorted.at(-1)!),
  };
}

const drawsOf = ({ lots }: Pick<Plan, 'lots'>, { submissions }: RunRecord) =>
  Math.floor(submissions / lots.length / designCount);

/** One line a rule: in how many rides its intervals do what they promise. */
function summary(tally: CoverageTally, { lots }: Plan, rules: readonly string[]): string[] {
  const rows = rules.map((rule) => {
    const found = lots
      .flatMap((lot, k) => {
        const cell = tally.get(k)?.get(rule);
        return cell === undefined || cell.checks === 0 || lot.sort !== 'coverage'
          ? []
          : [{ ride: rideName(lot), held: shareOf(cell.held, cell.checks) }];
      })
      .sort((a, b) => a.held.share - b.held.share);
    const [least, most] = [found[0], found.at(-1)];
    const named = (one: typeof least) =>
      one === undefined ? '–' : `${percent(one.held.share)}: ${one.ride}`;
    const count = (which: (held: Share) => boolean) => String(found.filter(({ held }) => which(held)).length);
    return [
      rule,
      String(found.length),
      count(holds),
      count(({ upper }) => upper < promised.least),
      count(({ lower }) => lower > promised.most),
      named(least),
      named(most),
    ];
  });
  return table(['rule', 'rides', 'as promised', 'too seldom', 'too often', 'least', 'most'], rows);
}

/** What a 95 % interval promises, as far as so many draws can tell. */
const holds = ({ lower, upper }: Share) => upper >= promised.least && lower <= promised.most;
const rideName = ({ kind, minutes }: Extract<Lot, { sort: 'coverage' }>) => `${kind}, ${minutes} min`;

const units: { readonly [rule: string]: string } = { 'zero-offset': 'N·m' };

export function coveragePage(tally: CoverageTally, plan: Plan, run: RunRecord): string {
  const rules = [...new Set([...tally.values()].flatMap((byRule) => [...byRule.keys()]))];
  return [
    '# How often intervals hold the true value',
    '',
    'Made by `npm run truth -- --coverage`; do not edit. A 95 % interval is to hold the true value in 92 to 98 of 100 rides of every kind; bold: outside beyond what chance explains. Fewer is a promise that is not kept; more only means that intervals are wider than they need be. *Bias* is the mean of value less truth, *typical error* its root mean square. The truth is known from how the meters were made: the ratio of the two without noise in this ride (`mean-bias`), the growth of the gain without wander (`late-drift`, `late-power-rise`), the planted error over the range used (`cadence-dependent-bias`, `power-dependent-bias`), the planted torque (`zero-offset`), the planted surplus of the sprints that the rule found over the rest (`sprint-overshoot`). So a meter’s slow wander, and a heart’s, is part of the ratio in this ride and an error of everything else: intervals have to hold it.',
    '',
    `Generator \`${run.build}\`, seed \`${run.seed}\`, ${run.date}, commit \`${run.commit}\`: ${run.submissions} pairs, about ${drawsOf(plan, run)} draws of each ride.`,
    '',
    ...summary(tally, plan, rules),
    '',
    ...rules.flatMap((rule) => [
      `## ${rule}`,
      '',
      ...table(
        [
          'ride',
          'intervals',
          'hold the truth',
          'bounds',
          'truth below / above',
          'bias',
          'typical error',
          'half width',
          'not applicable',
        ],
        plan.lots.flatMap((lot, k) => {
          const cell = tally.get(k)?.get(rule);
          return cell === undefined || lot.sort !== 'coverage' ? [] : [lineOf(lot, cell, units[rule] ?? '%')];
        }),
      ),
      '',
    ]),
  ].join('\n');
}

function lineOf(lot: Extract<Lot, { sort: 'coverage' }>, cell: Cell, unit: string): string[] {
  const name = rideName(lot);
  const all = cell.checks + cell.silent;
  if (cell.checks === 0) return [name, '0', '–', '–', '–', '–', '–', '–', percent(cell.silent / all, 0)];
  const held = shareOf(cell.held, cell.checks);
  const text = percent(held.share);
  return [
    name,
    String(cell.checks),
    holds(held) ? text : `**${text}**`,
    `${percent(held.lower)} – ${percent(held.upper)}`,
    `${percent(cell.below / cell.checks)} / ${percent(cell.above / cell.checks)}`,
    `${hundredths(cell.bias / cell.checks)} ${unit}`,
    `${hundredths(Math.sqrt(cell.squares / cell.checks))} ${unit}`,
    `${hundredths(cell.width / cell.checks / 2)} ${unit}`,
    percent(cell.silent / all, 0),
  ];
}
