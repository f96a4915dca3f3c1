import type { Rule } from '../../src/types.ts';
import type { Fault } from '../make/faults/fault.ts';
import { faults as allFaults } from '../make/faults/index.ts';
import type { Cohort } from '../make/meters.ts';
import { shareOf } from './bounds.ts';
import budget from './budget.json' with { type: 'json' };
import type { Counted } from './counts.ts';
import { type DoseCurve, doseCurve, type Trial } from './dose.ts';
import type { Figures } from './figures.ts';
import { cohorts, type StrengthName, sizesOf, strengthsOf } from './plan.ts';
import {
  askedRank,
  countFrom,
  honestGroups,
  nameOf,
  rateOf,
  relativeTrials,
  targetsOf,
  trialsOf,
} from './results.ts';
import type { RunLog } from './runs.ts';
import { faultGroup, type Group, spreadRules, type Tally } from './tally.ts';
import { percent, plainNumber, table, withLeast, withMost } from './text.ts';

/** Everything that RESULTS.md says, out of the counts. */
export function resultsPage(counted: Counted, rules: readonly Rule[], log: RunLog, figures: Figures): string {
  const { tally } = counted;
  return [
    '# How often faults are found, and honest riders asked',
    '',
    'Made by `npm run truth`; do not edit. How the corpus is made and how to run it: [README.md](README.md). The same in pictures: [charts.html](charts.html).',
    '',
    'Shares are of all submissions drawn: one to which a rule could not be applied counts as not found, and as not asked. Bounds (≥, ≤) are one-sided, at 95 % (Clopper & Pearson 1934). `query` always means query or worse. All of it is about simulated submissions: it says how this program behaves where the truth is known, not how many riders are honest.',
    '',
    ...runLines(counted),
    '## Targets',
    '',
    '*Met*: the bound lies inside. *Not shown*: the measured share lies inside, but so few draws do not prove it. *Missed*: the measured share itself lies outside.',
    '',
    ...targetTable(tally, rules),
    '',
    '## Rules: honest submissions against the budget',
    '',
    `An honest submission may reach query in at most ${percent(budget.query)} of cases and refer in ${percent(budget.refer)}; [budget.json](budget.json) shares this out over the rules. Bold: more than its share, beyond what chance explains. As found, ${spreadRules.join(', ')} say no more than how far apart such meters lie; their queries are not held against the budget.`,
    '',
    ...budgetTable(tally, rules),
    '',
    '## Rules: how strong a fault must be',
    '',
    'All faults that a rule is meant for together, strengths as multiples of the one called moderate in the next section.',
    '',
    ...ruleTable(tally, rules),
    '',
    '## Faults',
    '',
    'A right rule is one that names the fault: the rule of the heading, and those in brackets. *Highest*: the rule of the heading’s highest level, by a right rule. *Not applicable*: the rule of the heading could not be applied.',
    '',
    ...faultSections(tally, rules),
    ...cohorts.flatMap((cohort) => [`## Honest, ${cohort}`, '', ...honestTable(tally, cohort), '']),
    '## Pairs, intervals, likeness',
    '',
    ...besides(tally, figures),
    '',
    '## Runs of the generator that reports',
    '',
    'Every run of it is listed here, so that nobody can try until it fits.',
    '',
    ...logTable(log),
    '',
  ].join('\n');
}

const counted = (count: number) => count.toLocaleString('en-GB');

function runLines({ plan, run, tally }: Counted): string[] {
  const { kinds, faults } = sizesOf(plan);
  const drawn = (sort: Group['lot']['sort']) =>
    [...tally.groups.values()].reduce(
      (sum, { lot, submissions }) => sum + (lot.sort === sort ? submissions : 0),
      0,
    );
  const [honest, faulty] = [drawn('honest'), drawn('fault')];
  const parts = [
    ...(honest > 0 ? [`${counted(honest)} honest submissions of ${kinds} kinds`] : []),
    ...(faulty > 0 ? [`${counted(faulty)} with one of ${faults} faults`] : []),
    ...(run.cost.broken > 0
      ? [`**${run.cost.broken} draws could not be made or audited and are in no figure**`]
      : []),
  ];
  return [
    `Run of ${run.date}, commit \`${run.commit}\`, generator \`${run.build}\`, seed \`${run.seed}\`, ${run.rules} rules: ${parts.join(', ')}.`,
    ...(run.build === 'tuning'
      ? ['', '**These are figures of the generator that limits are tuned on**, not of the one that reports.']
      : []),
    '',
  ];
}

function targetTable(tally: Tally, rules: readonly Rule[]): string[] {
  return table(
    ['figure', 'mean of all', 'of', 'bound', 'target', 'outcome', 'worst kind or fault'],
    targetsOf(tally, rules).map(({ what, share, limit, outcome, worst }) => [
      what,
      percent(share.share, 2),
      counted(share.of),
      'atMost' in limit ? `≤ ${percent(share.upper, 2)}` : `≥ ${percent(share.lower, 2)}`,
      'atMost' in limit ? `≤ ${percent(limit.atMost)}` : `≥ ${percent(limit.atLeast)}`,
      outcome === 'met' ? 'met' : `**${outcome}**`,
      worst,
    ]),
  );
}

type Budget = { readonly [rule: string]: { readonly query: number; readonly refer: number } };

function budgetTable(tally: Tally, rules: readonly Rule[]): string[] {
  const shares: Budget = budget.rules;
  return table(
    [
      'rule',
      'could be applied',
      ...cohorts.flatMap((cohort) => [`query, ${cohort}`, `refer, ${cohort}`]),
      'budget: query / refer',
      'worst kind: query',
      'broke',
    ],
    rules.map(({ id }) => {
      const rates = cohorts.map((cohort) => rateOf(tally, cohort, id));
      const share = shares[id]!;
      const [claims, found] = [rates[0]!, rates[1]!];
      return [
        id,
        percent(claims.applied, 0),
        ...rates.flatMap(({ query, refer }, k) => [
          over(query, k === 1 && spreadRules.includes(id) ? 1 : share.query),
          over(refer, share.refer),
        ]),
        `${percent(share.query, 2)} / ${percent(share.refer, 2)}`,
        claims.worst || found.worst,
        String(claims.failed + found.failed),
      ];
    }),
  );
}

/** Bold where the budget lies below even the lower bound. */
function over(share: ReturnType<typeof shareOf>, budgeted: number): string {
  return share.lower > budgeted ? `**${withMost(share)}**` : withMost(share);
}

interface Meant {
  readonly rule: Rule;
  readonly faults: readonly Fault[];
}

/** Rules with the faults of this run that each is meant for. */
function meant(tally: Tally, rules: readonly Rule[]): Meant[] {
  return rules
    .map((rule) => ({
      rule,
      faults: allFaults.filter(
        (fault) =>
          fault.rules[0] === rule.id && strengthsOf(fault).some((one) => faultGroup(tally, fault.name, one)),
      ),
    }))
    .filter(({ faults }) => faults.length > 0);
}

function ruleTable(tally: Tally, rules: readonly Rule[]): string[] {
  return table(
    [
      'rule',
      'faults',
      'moderate: query',
      'worst fault',
      'clear-cut: highest',
      'worst fault',
      'half found at, of moderate',
    ],
    meant(tally, rules).map(({ rule, faults }) => {
      const at = (strength: StrengthName) =>
        faults.map((fault) => faultGroup(tally, fault.name, strength)).filter((group) => group !== null);
      const asked = (group: Group) => countFrom(group.right, askedRank(group, rules));
      const trials = relativeTrials(tally, faults);
      return [
        rule.id,
        String(faults.length),
        ...meanAndWorst(at('moderate'), asked),
        ...meanAndWorst(at('clear'), ({ reached }) => reached),
        trials.length === 0 ? '–' : halfSaid(doseCurve(trials)),
      ];
    }),
  );
}

function meanAndWorst(groups: readonly Group[], value: (group: Group) => number): [string, string] {
  if (groups.length === 0) return ['–', ''];
  const sum = (of: (group: Group) => number) => groups.reduce((total, group) => total + of(group), 0);
  const share = shareOf(
    sum(value),
    sum(({ submissions }) => submissions),
  );
  const rate = (group: Group) => value(group) / group.submissions;
  const worst = groups.reduce((a, b) => (rate(b) < rate(a) ? b : a));
  const alike = rate(worst) >= share.share;
  return [withLeast(share), alike ? '' : `${percent(rate(worst), 0)}: ${nameOf(worst)}`];
}

export function halfSaid({ half, beyond }: DoseCurve): string {
  const sign = beyond === 'below' ? '< ' : beyond === 'above' ? '> ' : '';
  return `${sign}${plainNumber(half)}`;
}

const strengthSaid = {
  borderline: 'borderline',
  moderate: 'moderate',
  clear: 'clear-cut',
  any: 'any between',
} as const;

function faultSections(tally: Tally, rules: readonly Rule[]): string[] {
  return meant(tally, rules).flatMap(({ rule, faults }) => [
    `### ${rule.id}`,
    '',
    ...faults.map((fault) => `- ${aboutFault(fault, trialsOf(tally, fault))}`),
    '',
    ...table(
      [
        'fault',
        'strength',
        'draws',
        'right rule: query',
        'refer',
        'highest',
        'any rule: query',
        'refer',
        'not applicable',
      ],
      faults.flatMap((fault) => strengthsOf(fault).flatMap((strength) => faultRow(tally, fault, strength))),
    ),
    '',
  ]);
}

function aboutFault(fault: Fault, trials: readonly Trial[]): string {
  const others = fault.rules.slice(1);
  const named = others.length === 0 ? fault.name : `${fault.name} (also ${others.join(', ')})`;
  const half =
    strengthsOf(fault).length > 1 && trials.length > 0
      ? `; half are found at ${halfSaid(doseCurve(trials))}`
      : '';
  return `${named}: ${fault.measure}${half}.`;
}

function faultRow(tally: Tally, fault: Fault, strength: StrengthName): string[][] {
  const group = faultGroup(tally, fault.name, strength);
  if (group === null) return [];
  const { submissions } = group;
  const share = (count: number) => withLeast(shareOf(count, submissions));
  const dose = strength === 'any' || strengthsOf(fault).length === 1 ? '' : ` ${fault.strengths[strength]}`;
  return [
    [
      fault.name,
      `${strengthSaid[strength]}${dose}`,
      String(submissions),
      share(countFrom(group.right, 2)),
      share(group.right[3]),
      share(group.reached),
      percent(countFrom(group.any, 2) / submissions, 0),
      percent(group.any[3] / submissions, 0),
      percent(group.rightNotApplicable / submissions, 0),
    ],
  ];
}

function honestTable(tally: Tally, cohort: Cohort): string[] {
  const groups = honestGroups(tally, cohort);
  if (groups.length === 0) return ['None in this run.'];
  const rate = ({ any, submissions }: Group) => countFrom(any, 2) / submissions;
  const worst = groups.reduce((a, b) => (rate(b) > rate(a) ? b : a));
  const head = ['kind', 'submissions', 'note', 'query', 'refer', 'asked by', 'noted by'];
  return [
    ...table(head, [
      ['**all of them**', ...honestCells(groups)],
      ...(rate(worst) > 0 ? [[`**worst: ${nameOf(worst)}**`, ...honestCells([worst])]] : []),
      ...groups.map((group) => [nameOf(group), ...honestCells([group])]),
    ]),
  ];
}

function honestCells(groups: readonly Group[]): string[] {
  const sum = (value: (group: Group) => number) => groups.reduce((total, group) => total + value(group), 0);
  const all = sum(({ submissions }) => submissions);
  const by = (from: number, to: number) => {
    const counts = new Map<string, number>();
    for (const { byRule } of groups) {
      for (const [rule, { levels }] of byRule) {
        const count = countFrom(levels, from) - countFrom(levels, to);
        if (count > 0) counts.set(rule, (counts.get(rule) ?? 0) + count);
      }
    }
    return [...counts].sort(([, a], [, b]) => b - a).map(([rule, count]) => `${rule} ${count}`);
  };
  const referred = by(3, 4).map((text) => `${text} to refer`);
  return [
    counted(all),
    percent(sum(({ any }) => any[1]) / all),
    withMost(
      shareOf(
        sum(({ any }) => countFrom(any, 2)),
        all,
      ),
    ),
    withMost(
      shareOf(
        sum(({ any }) => any[3]),
        all,
      ),
    ),
    [...referred, ...by(2, 3)].join(', '),
    by(1, 2).join(', '),
  ];
}

function besides({ pairs }: Tally, { coverage, realism }: Figures): string[] {
  const secure = shareOf(pairs.right, pairs.secure);
  return [
    pairs.total === 0
      ? '- Pairs: none in this run.'
      : `- Pairs of honest submissions: ${counted(pairs.secure)} of ${counted(pairs.total)} were called secure; of those ${withLeast(secure, 2)} lie within 1 s of the true lag of power in every segment, the farthest ${pairs.worst.toFixed(1)} s off.`,
    coverage === undefined
      ? '- Intervals: not measured yet (`npm run truth -- --coverage --keep`).'
      : `- Intervals ([COVERAGE.md](COVERAGE.md); ${coverage.date}, commit \`${coverage.commit}\`): of ${coverage.of} pairings of a ride and a rule, ${counted(coverage.draws)} draws each, ${coverage.inside} held the true value in 92 to 98 of 100 rides, and ${coverage.outside} lie outside beyond what chance explains. The least: ${percent(coverage.least.share)} (${coverage.least.what}); the most: ${percent(coverage.most.share)} (${coverage.most.what}).`,
    realism === undefined
      ? '- Likeness to real rides: not measured yet (`npm run truth -- --real FOLDER --keep`).'
      : `- Likeness to ${realism.recordings} real rides, which are not published (${realism.date}, commit \`${realism.commit}\`): ${realism.inside} of ${realism.of} figures of their traces lie in the middle 95 % of simulated rides. A simple classifier that sees ten minutes tells real from simulated in ${percent(realism.toldApart, 0)} of cases (50 %: cannot tell; 100 %: always). Odd against even seconds of each real ride: ${realism.oddAgainstEven} agreement rules asked (none may).`,
  ];
}

function logTable(log: RunLog): string[] {
  const figure = (share: number | undefined) => (share === undefined ? '–' : percent(share, 2));
  return table(
    [
      'date',
      'commit',
      'seed',
      'what',
      'scale: honest / faults',
      'submissions',
      'within claims: query / refer',
      'as found: query / refer',
      'moderate',
      'clear-cut',
      'lag',
      'targets met',
      'took',
    ],
    log.map(({ date, commit, seed, part, scale, submissions, figures, met, cost }) => [
      date,
      `\`${commit}\``,
      seed,
      part,
      `${scale.honest} / ${scale.faults}`,
      counted(submissions),
      `${figure(figures['claims query'])} / ${figure(figures['claims refer'])}`,
      `${figure(figures['found query'])} / ${figure(figures['found refer'])}`,
      figure(figures.moderate),
      figure(figures['clear-cut']),
      figure(figures.lag),
      met[1] === 0 ? '–' : `${met[0]} of ${met[1]}`,
      `${Math.round(cost.seconds / 60)} min with ${cost.workers} workers, ${Math.round(cost.memory / 1e6)} MB`,
    ]),
  );
}
