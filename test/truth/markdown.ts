import type { Rule } from '../../src/types.ts';
import { shareOf } from './bounds.ts';
import budget from './budget.json' with { type: 'json' };
import {
  askedRank,
  cohorts,
  faultGroups,
  faultOf,
  halfFound,
  honestGroups,
  percent,
  rateOf,
  targetsOf,
} from './results.ts';
import type { RunLog, RunRecord } from './runs.ts';
import { type Group, groupKey, type LevelCounts, type Tally } from './tally.ts';

/** Everything that RESULTS.md says, out of the counts. */
export function resultsPage(tally: Tally, rules: readonly Rule[], run: RunRecord, log: RunLog): string {
  return [
    '# How often faults are found, and honest riders asked',
    '',
    'Made by `npm run truth`; do not edit. Shares are of all submissions drawn: one to which a rule could not be applied counts as not found. Bounds are one-sided, 95 % (Clopper & Pearson 1934). How the corpus is made: [README.md](README.md). The same as curves: [charts.html](charts.html).',
    '',
    ...runLines(run, tally),
    '## Targets',
    '',
    ...targets(tally, rules),
    '',
    '## Rules: honest submissions against the budget',
    '',
    ...budgetTable(tally, rules),
    '',
    '## Faults',
    '',
    'Each fault’s first rule is the one meant; `right` counts every rule that names it. `reached` is the share at the first rule’s highest level.',
    '',
    ...faultTable(tally, rules),
    '',
    ...cohorts.flatMap((cohort) => [`## Honest, ${cohort}`, '', ...honestTable(tally, cohort), '']),
    '## Runs of the generator that reports',
    '',
    ...logTable(log),
    '',
  ].join('\n');
}

function runLines(run: RunRecord, tally: Tally): string[] {
  return [
    `Generator \`${run.build}\`, seed \`${run.seed}\`, scale ${run.scale}, ${run.rules} rules: ${tally.rows} submissions in ${Math.round(run.seconds / 60)} min (${(tally.rows / run.seconds).toFixed(1)} a second with ${run.workers} workers, at most ${Math.round(run.memory / 1e6)} MB).`,
    ...(run.build === 'tuning'
      ? ['', '**These are figures of the generator that limits are tuned on**, not of the one that reports.']
      : []),
    '',
  ];
}

export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] =>
  rows.length === 0
    ? ['None in this run.']
    : [
        `| ${head.join(' | ')} |`,
        `|${head.map(() => ' --- |').join('')}`,
        ...rows.map((cells) => `| ${cells.join(' | ')} |`),
      ];

function targets(tally: Tally, rules: readonly Rule[]): string[] {
  return table(
    ['figure', 'measured', 'bound', 'target', 'met', 'worst'],
    targetsOf(tally, rules).map(({ what, share, atMost, atLeast, met, worst }) => [
      what,
      `${percent(share.share, 2)} of ${share.of}`,
      atMost === undefined ? `≥ ${percent(share.lower, 2)}` : `≤ ${percent(share.upper, 2)}`,
      atMost === undefined ? `≥ ${percent(atLeast!, 1)}` : `≤ ${percent(atMost, 1)}`,
      met ? 'yes' : 'no',
      worst,
    ]),
  );
}

function budgetTable(tally: Tally, rules: readonly Rule[]): string[] {
  const shares: { readonly [rule: string]: { readonly query: number; readonly refer: number } } =
    budget.rules;
  return table(
    [
      'rule',
      'applied',
      ...cohorts.flatMap((cohort) => [`query, ${cohort}`, `refer, ${cohort}`]),
      'budget',
      'worst kind',
      'broke',
    ],
    Object.entries(shares).map(([rule, share]) => {
      if (!rules.some(({ id }) => id === rule)) return [rule, 'no rule yet', '', '', '', '', '', '', ''];
      const rates = cohorts.map((cohort) => rateOf(tally, cohort, rule));
      const [claims, found] = rates;
      return [
        rule,
        percent(claims!.applied, 0),
        ...rates.flatMap(({ query, refer }) => [over(query, share.query), over(refer, share.refer)]),
        `${percent(share.query, 2)} / ${percent(share.refer, 2)}`,
        claims!.worst || found!.worst,
        String(claims!.failed + found!.failed),
      ];
    }),
  );
}

/** Bold where the budget lies below even the lower bound. */
function over({ share, lower }: ReturnType<typeof shareOf>, budgeted: number): string {
  const text = percent(share, 2);
  return lower > budgeted ? `**${text}**` : text;
}

function faultTable(tally: Tally, rules: readonly Rule[]): string[] {
  const clear = faultGroups(tally, 'clear');
  return table(
    [
      'rule',
      'fault',
      'right: query at borderline',
      'moderate',
      'clear-cut',
      'right: refer',
      'reached',
      'any: query, moderate / clear-cut',
      'not applicable',
      'half found at',
    ],
    clear
      .map((group) => ({ group, fault: faultOf(group) }))
      .sort((a, b) => a.fault.rules[0]!.localeCompare(b.fault.rules[0]!))
      .map(({ group, fault }) => {
        const at = (strength: Group['strength']) => tally.groups.get(groupKey(group.lot, strength)) ?? null;
        const [borderline, moderate, any] = [at('borderline'), at('moderate'), at('any')];
        const asked = (one: Group | null) =>
          one === null ? '–' : share(one.right, one, askedRank(one, rules));
        const half = any === null ? null : halfFound(everyDose([borderline, moderate, group, any]));
        const rule = rules.find(({ id }) => id === fault.rules[0]);
        return [
          fault.rules[0]!,
          fault.name,
          ...(rule === undefined
            ? ['no rule yet', '', '', '', '']
            : [
                asked(borderline),
                asked(moderate),
                asked(group),
                share(group.right, group, 3),
                percent(group.reached / group.submissions, 0),
              ]),
          `${moderate === null ? '–' : share(moderate.any, moderate, 2)} / ${share(group.any, group, 2)}`,
          percent(group.rightNotApplicable / group.submissions, 0),
          half === null ? '–' : Number(half.toPrecision(2)).toString(),
        ];
      }),
  );
}

function everyDose(groups: readonly (Group | null)[]): Group {
  const there = groups.filter((group) => group !== null);
  return { ...there[0]!, doses: there.flatMap(({ doses }) => doses) };
}

function share(levels: LevelCounts, { submissions }: Group, rank: number): string {
  return percent(levels.slice(rank).reduce((a, b) => a + b, 0) / submissions, 0);
}

function honestTable(tally: Tally, cohort: (typeof cohorts)[number]): string[] {
  return table(
    ['kind', 'submissions', 'note', 'query', 'refer', 'query or worse, bound', 'by'],
    honestGroups(tally, cohort).map((group) => {
      const { submissions, any } = group;
      const asked = shareOf(any[2] + any[3], submissions);
      const by = [...group.byRule]
        .map(([rule, { levels }]) => ({ rule, count: levels[2] + levels[3] }))
        .filter(({ count }) => count > 0)
        .sort((a, b) => b.count - a.count)
        .map(({ rule, count }) => `${rule} ${count}`);
      return [
        group.lot.sort === 'honest' ? group.lot.kind : '',
        String(submissions),
        percent(any[1] / submissions),
        percent(any[2] / submissions),
        percent(any[3] / submissions),
        `≤ ${percent(asked.upper)}`,
        by.join(', '),
      ];
    }),
  );
}

function logTable(log: RunLog): string[] {
  return table(
    [
      'date',
      'commit',
      'seed',
      'scale',
      'submissions',
      'honest query / refer, within claims',
      'as found',
      'clear-cut',
      'moderate',
      'targets met',
    ],
    log.map((run) => [
      run.date,
      run.commit,
      run.seed,
      String(run.scale),
      String(run.submissions),
      run.figures.claims,
      run.figures.found,
      run.figures.clear,
      run.figures.moderate,
      run.figures.met,
    ]),
  );
}
