import type { Finding, Raised, Report, ReportMeasurement, Rule } from '../types.ts';
import { fill } from './words/fill.ts';
import { levelWords } from './words/grade.ts';
import { requirementNames } from './words/names.ts';
import { limit, quantity, range } from './words/number.ts';
import { reasonInFull, reasonInShort } from './words/reasons.ts';
import { capital, foreign, type Sentence } from './words/sentence.ts';
import { subjectName } from './words/subject.ts';

/** The levels that ask for something, the gravest first. */
export const gravestFirst = ['refer', 'query', 'note'] as const satisfies readonly Raised[];

/** A finding with the words that every form tells it in. */
export interface Told {
  readonly finding: Finding;
  /** Null when a report names a rule that it does not hold. */
  readonly rule: Rule | null;
  /** Place in the report, from 1: a name for links that no rule file can choose. */
  readonly number: number;
  readonly title: string;
  /** What the rule asks: heads a check that found nothing, where the title would read like a finding. */
  readonly question: string;
  readonly about: string;
  readonly claim: Sentence;
  /** The value with its interval; null when withheld. */
  readonly value: string | null;
  /** "query at least 8 %; refer at least 20 %", or null. */
  readonly limits: string | null;
  /** What to mind beside the number, each a sentence. */
  readonly remarks: readonly Sentence[];
}

export interface Unchecked {
  readonly because: string;
  readonly checks: readonly {
    readonly question: string;
    readonly about: string;
    readonly why: Sentence;
  }[];
}

/** What every form of the report tells, in the order in which it is told. */
export interface Outline {
  readonly raised: readonly { readonly level: Raised; readonly findings: readonly Told[] }[];
  readonly fine: readonly Told[];
  /** Grouped by reason, the largest group first; broken checks always first. */
  readonly unchecked: readonly Unchecked[];
  /** The findings that the grade rests on. */
  readonly rests: readonly Told[];
  /** What to do next: what would settle the raised findings, least burdensome first, with whom it serves. */
  readonly next: readonly { readonly what: string; readonly settles: readonly Told[] }[];
}

export function outline(report: Report): Outline {
  const rules = new Map(report.rules.items.map((rule) => [rule.id, rule]));
  const told = report.findings.map((finding, index) => tell(report, rules, finding, index + 1));
  const raised = gravestFirst
    .map((level) => ({ level, findings: told.filter((one) => one.finding.level === level) }))
    .filter((group) => group.findings.length > 0);
  return {
    raised,
    fine: told.filter((one) => one.finding.level === 'none'),
    unchecked: unchecked(report, rules),
    rests: raised.find((group) => group.level === report.grade)?.findings ?? queriesThatAddUp(report, raised),
    next: next(report, raised),
  };
}

/** A referral may rest on queries that add up. */
function queriesThatAddUp(report: Report, raised: Outline['raised']): readonly Told[] {
  return report.grade === 'refer' ? (raised.find((group) => group.level === 'query')?.findings ?? []) : [];
}

function tell(report: Report, rules: ReadonlyMap<string, Rule>, finding: Finding, number: number): Told {
  const rule = rules.get(finding.rule) ?? null;
  return {
    finding,
    rule,
    number,
    title: rule?.title ?? finding.rule,
    question: rule?.question ?? finding.rule,
    about: subjectName(report, finding.subject),
    claim: claim(rule, finding),
    value: valueSaid(finding),
    limits: limitsSaid(finding),
    remarks: remarksSaid(finding, rules),
  };
}

/** Our own numbers under their own names come last, so that a detail cannot stand in for the value judged. */
function claim(rule: Rule | null, finding: Finding): Sentence {
  const template = rule?.claims[finding.summary.id];
  if (finding.value === null || finding.interval === null) {
    return ['The number is withheld: it would give health data away.'];
  }
  if (template === undefined) return [`${foreign(finding.rule).foreign}: ${valueSaid(finding)}.`];
  const { value, unit, interval, limits, level } = finding;
  const passed = level === 'none' ? undefined : limits[level];
  const bound = passed?.atLeast ?? passed?.atMost ?? null;
  return capital(
    fill(template, {
      ...finding.summary.values,
      value: { value, unit },
      size: { value: Math.abs(value), unit },
      low: { value: interval[0], unit },
      high: { value: interval[1], unit },
      ...(bound === null ? {} : { limit: { value: bound, unit } }),
    }),
  );
}

/** "14.2 % (11 to 17 %)". */
function valueSaid({ value, unit, interval }: Finding): string | null {
  if (value === null || interval === null) return null;
  const between = range(interval, unit);
  return between === null ? quantity(value, unit) : `${quantity(value, unit)} (${between})`;
}

/** The measure's own words, what held the level down, and which other finding accounts for this one. */
function remarksSaid(
  { remarks, ceiling, explainedBy }: Finding,
  rules: ReadonlyMap<string, Rule>,
): readonly Sentence[] {
  const other = explainedBy === null ? null : (rules.get(explainedBy)?.title ?? explainedBy);
  return [
    ...(other === null ? [] : [`Another finding accounts for this one as well: ${other}`]),
    ...(ceiling === null ? [] : [`Not raised further: ${ceiling}`]),
    ...remarks,
  ].map((words) => capital([/[.!?]$/.test(words) ? words : `${words}.`]));
}

function limitsSaid({ limits, unit }: Finding): string | null {
  const said = [...gravestFirst].reverse().flatMap((level) => {
    const one = limits[level];
    const words = one === undefined ? null : limit(one, unit);
    return words === null ? [] : [`${levelWords[level]} ${words}`];
  });
  return said.length === 0 ? null : said.join('; ');
}

function unchecked(report: Report, rules: ReadonlyMap<string, Rule>): readonly Unchecked[] {
  const groups = new Map<string, ReportMeasurement[]>();
  for (const measurement of report.measurements) {
    if (measurement.state === 'measured' || measurement.reason === null) continue;
    const group = groups.get(measurement.reason.id) ?? [];
    group.push(measurement);
    groups.set(measurement.reason.id, group);
  }
  return [...groups.values()]
    .sort(
      (a, b) => Number(b[0]!.state === 'failed') - Number(a[0]!.state === 'failed') || b.length - a.length,
    )
    .map((group) => ({
      because: reasonInShort(group[0]!.reason!.id),
      checks: group.map((measurement) => ({
        question: rules.get(measurement.rule)?.question ?? measurement.rule,
        about: subjectName(report, measurement.subject),
        why: reasonInFull(measurement.reason!),
      })),
    }));
}

function next(report: Report, raised: Outline['raised']): Outline['next'] {
  const steps = new Map<string, Told[]>(
    report.missing.map((one) => [`Ask for ${requirementNames[one]}: the event requires it.`, []]),
  );
  for (const { level, findings } of raised) {
    if (level === 'note') continue;
    for (const told of findings) {
      for (const what of new Set(told.rule?.settles)) steps.set(what, [...(steps.get(what) ?? []), told]);
    }
  }
  return [...steps].map(([what, settles]) => ({ what, settles }));
}
