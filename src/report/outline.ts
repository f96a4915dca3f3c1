import type { Finding, Raised, Report, ReportMeasurement, Rule } from '../types.ts';
import { fill } from './words/fill.ts';
import { levelWords } from './words/grade.ts';
import { honestSaid } from './words/honest.ts';
import { requirementNames } from './words/names.ts';
import { limit, quantity, range } from './words/number.ts';
import { reasonInFull, reasonInShort } from './words/reasons.ts';
import { capital, foreign, foreignText, join, plain, type Sentence } from './words/sentence.ts';
import { meterName, subjectName } from './words/subject.ts';

/** The levels that ask for something, the gravest first. */
export const gravestFirst = ['refer', 'query', 'note'] as const satisfies readonly Raised[];

/** A finding with the words that every form tells it in. */
export interface Told {
  readonly finding: Finding;
  /** Null when a report names a rule that it does not hold. */
  readonly rule: Rule | null;
  /** Place among all findings in the order in which they are told, from 1. */
  readonly number: number;
  readonly title: string;
  /** What the rule asks: heads a check that found nothing, where the title would read like a finding. */
  readonly question: string;
  readonly about: string;
  /** True when the same rule was put to more than one subject. */
  readonly several: boolean;
  readonly claim: Sentence;
  /** The value with its interval; null when withheld. */
  readonly value: string | null;
  /** "query at least 8 %; refer at least 20 %", or null. */
  readonly limits: string | null;
  /** True where the end of the interval that is nearer to innocence is held against the limits, not the number. */
  readonly byCautiousEnd: boolean;
  /** Where honest submissions lie, in a sentence; null where the measure cannot say. */
  readonly honest: string | null;
  /** What to mind beside the number, each a sentence. */
  readonly remarks: readonly Sentence[];
  /** The finding that accounts for this one as well, so that one fault is told once; null: stands alone. */
  readonly accountedBy: Named | null;
  /** What this finding accounts for as well. */
  readonly accountsFor: readonly Named[];
  /** An earlier finding of the same rule, under which the rule's own words stand; null: they stand here. */
  readonly under: Named | null;
}

/** A finding by its place among all findings, as others refer to it. */
export interface Named {
  readonly title: string;
  readonly number: number;
}

export interface Unchecked {
  /** With its numbers or names where they are those of every check in the group. */
  readonly because: Sentence;
  readonly checks: readonly {
    readonly question: string;
    readonly about: string;
    readonly several: boolean;
    /** The reason with its numbers or names; null where the group's says all. */
    readonly why: Sentence | null;
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
  /** What to do next: what would settle the raised findings, and which of them; none: it completes the submission. */
  readonly next: readonly { readonly whats: readonly string[]; readonly settles: readonly Told[] }[];
}

export function outline(report: Report): Outline {
  const context = contextOf(report);
  const told = context.findings.map((finding, index) => tell(context, finding, index + 1));
  const raised = gravestFirst
    .map((level) => ({ level, findings: told.filter((one) => one.finding.level === level) }))
    .filter((group) => group.findings.length > 0);
  return {
    raised,
    fine: told.filter((one) => one.finding.level === 'none'),
    unchecked: unchecked(context),
    rests: restsOn(report, raised),
    next: next(report, raised),
  };
}

/** The report with its findings as they are told, its rules by name, and those put to more than one subject. */
interface Context {
  readonly report: Report;
  readonly findings: readonly Finding[];
  readonly rules: ReadonlyMap<string, Rule>;
  readonly several: ReadonlySet<string>;
}

function contextOf(report: Report): Context {
  const seen = new Set<string>();
  const several = new Set<string>();
  for (const { rule } of report.measurements) (seen.has(rule) ? several : seen).add(rule);
  // What leads is told before what it accounts for.
  const findings = [...gravestFirst, 'none' as const].flatMap((level) => {
    const own = report.findings.filter((finding) => finding.level === level);
    return [...own.filter(leads), ...own.filter((finding) => !leads(finding))];
  });
  return { report, findings, rules: new Map(report.rules.items.map((rule) => [rule.id, rule])), several };
}

const leads = ({ explainedBy }: Finding) => explainedBy === null;
const standsAlone = (told: Told) => told.accountedBy === null;

/** Findings that bear one title, as several pairs' do, together: each title where it first comes. */
export function byTitle(findings: readonly Told[]): readonly (readonly [string, readonly Told[]])[] {
  const groups = new Map<string, Told[]>();
  for (const told of findings) groups.set(told.title, [...(groups.get(told.title) ?? []), told]);
  return [...groups];
}

/** Findings of the grade's own level, or the queries that add up to a referral. */
function restsOn({ grade }: Report, raised: Outline['raised']): readonly Told[] {
  const of = (level: string) => raised.find((group) => group.level === level)?.findings ?? [];
  const own = of(grade);
  return own.length === 0 && grade === 'refer' ? of('query').filter(standsAlone) : own.filter(standsAlone);
}

function tell({ report, findings, rules, several }: Context, finding: Finding, number: number): Told {
  const rule = rules.get(finding.rule) ?? null;
  const named = (index: number): Named => ({
    title: rules.get(findings[index]!.rule)?.title ?? findings[index]!.rule,
    number: index + 1,
  });
  const found = (test: (other: Finding, index: number) => boolean) =>
    findings.flatMap((other, index) => (test(other, index) ? [named(index)] : []));
  const explains = (one: Finding, other: Finding) =>
    other.explainedBy === one.rule && other.subject === one.subject;
  return {
    finding,
    rule,
    number,
    title: rule?.title ?? finding.rule,
    question: rule?.question ?? finding.rule,
    about: subjectName(report, finding.subject),
    several: several.has(finding.rule),
    claim: claim(report, rule, finding),
    value: valueSaid(finding),
    limits: limitsSaid(finding),
    byCautiousEnd: byCautiousEnd(finding),
    honest: honestSaid(finding),
    remarks: remarksSaid(finding),
    accountedBy: found((other) => explains(other, finding))[0] ?? null,
    accountsFor: found((other) => explains(finding, other)),
    under:
      found(
        (other, index) =>
          index + 1 < number && other.rule === finding.rule && leads(other) && other.level !== 'none',
      )[0] ?? null,
  };
}

/** The rule's sentence, filled with what the judge put beside it; the finding's own numbers stand in. */
function claim(report: Report, rule: Rule | null, finding: Finding): Sentence {
  const { value, unit, interval, count, summary } = finding;
  if (value === null || interval === null) {
    return ['The number is withheld: it would give health data away.'];
  }
  const template = rule?.claims[summary.id];
  if (template === undefined) return join([foreign(finding.rule), `: ${valueSaid(finding)}.`]);
  const own = {
    value: { value, unit },
    size: { value: Math.abs(value), unit },
    low: { value: interval[0], unit },
    high: { value: interval[1], unit },
  };
  return capital(
    fill(template, { count, ...own, ...summary.values }, (subject) => meterName(report, subject)),
  );
}

/** "14.2 % (11 to 17 %)". */
function valueSaid({ value, unit, interval }: Finding): string | null {
  if (value === null || interval === null) return null;
  const between = range(interval, unit);
  return between === null ? quantity(value, unit) : `${quantity(value, unit)} (${between})`;
}

/** What held the level down, and the measure's own words. */
function remarksSaid({ remarks, ceiling }: Finding): readonly Sentence[] {
  return [...(ceiling === null ? [] : [`Not raised further: ${ceiling}`]), ...remarks].map((words) =>
    capital([/[.!?]$/.test(words) ? words : `${words}.`]),
  );
}

function limitsSaid({ limits, unit }: Finding): string | null {
  const said = [...gravestFirst].reverse().flatMap((level) => {
    const one = limits[level];
    const words = one === undefined ? null : limit(one, unit);
    return words === null ? [] : [`${levelWords[level]} ${words}`];
  });
  return said.length === 0 ? null : said.join('; ');
}

function byCautiousEnd({ limits, interval }: Finding): boolean {
  const estimated = interval !== null && interval[0] !== interval[1];
  return estimated && Object.values(limits).some(({ end }) => end === 'cautious');
}

function unchecked({ report, rules, several }: Context): readonly Unchecked[] {
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
    .map((group) => {
      const because = commonReason(group);
      return {
        because,
        checks: group.map((measurement) => {
          const why = reasonInFull(measurement.reason!);
          return {
            question: rules.get(measurement.rule)?.question ?? measurement.rule,
            about: subjectName(report, measurement.subject),
            several: several.has(measurement.rule),
            why: plain(why) === plain(because) ? null : why,
          };
        }),
      };
    });
}

/** Why none of a group could be made: in full where that is the same of all, else in short. */
function commonReason(group: readonly ReportMeasurement[]): Sentence {
  const [first, ...others] = group.map(({ reason }) => reasonInFull(reason!));
  return others.every((one) => plain(one) === plain(first!)) ? first! : [reasonInShort(group[0]!.reason!.id)];
}

/** Steps that serve the same findings stand together. */
function next(report: Report, raised: Outline['raised']): Outline['next'] {
  const steps = new Map<string, Told[]>();
  for (const { level, findings } of raised) {
    if (level === 'note') continue;
    for (const told of findings.filter(standsAlone)) {
      for (const what of new Set(told.rule?.settles)) steps.set(what, [...(steps.get(what) ?? []), told]);
    }
  }
  const groups = new Map<string, { whats: string[]; settles: readonly Told[] }>();
  for (const [what, settles] of steps) {
    const key = settles.map((told) => told.number).join();
    const group = groups.get(key) ?? { whats: [], settles };
    group.whats.push(what);
    groups.set(key, group);
  }
  const asked = [
    ...report.submission.unreadable.map(({ name }) => `Ask for “${foreignText(name)}” again.`),
    ...report.missing.map((one) => `Ask for ${requirementNames[one]}.`),
  ];
  return [...(asked.length === 0 ? [] : [{ whats: asked, settles: [] }]), ...groups.values()];
}
