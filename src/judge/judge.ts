import {
  type EffectiveLimit,
  type Finding,
  type Level,
  levels,
  type Measured,
  type Measurement,
  type Quantity,
  type Raised,
  type Rule,
  type RuleSet,
} from '../types.ts';
import { explain } from './explain.ts';
import { type Comparable, canCompare, effectiveLimit, raisedLevels, type Side, sideBeyond } from './limit.ts';
import { roundMeasurement } from './round.ts';

export interface Judgement {
  /** The measurements as they were judged: rounded, in the order given. */
  readonly measurements: readonly Measurement[];
  /** One for each measurement that could be judged, in the same order. */
  readonly findings: readonly Finding[];
}

/**
 * Compares each measurement with the limits of its rule. What is not applicable or failed makes no
 * finding, and so can never be read as a pass; neither does a rule that is switched off.
 */
export function judge(measurements: readonly Measurement[], { rules }: Pick<RuleSet, 'rules'>): Judgement {
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const judged: Measurement[] = [];
  const findings: Finding[] = [];
  for (const raw of measurements) {
    const rule = byId.get(raw.rule);
    if (rule === undefined) throw new Error(`a measurement names a rule that is not in the set: ${raw.rule}`);
    const measurement = comparable(rule, roundMeasurement(raw));
    judged.push(measurement);
    if (measurement.outcome.state === 'measured' && rule.off === undefined) {
      findings.push(findingOf(rule, measurement, measurement.outcome));
    }
  }
  return { measurements: judged, findings: explain(findings, byId) };
}

/** A rule in multiples of the honest spread over a measure that states none is a failure, never a pass. */
function comparable(rule: Rule, measurement: Measurement): Measurement {
  const { outcome } = measurement;
  if (outcome.state !== 'measured' || canCompare(rule, outcome)) return measurement;
  const message = `the limits of ${rule.id} are multiples of the honest spread, but ${rule.measure} states none`;
  return { ...measurement, outcome: { state: 'failed', message } };
}

/** What held the level down is said as the reason for that, and not once more as a remark: one for each circumstance. */
function findingOf(rule: Rule, { subject, remarks }: Measurement, measured: Measured): Finding {
  const verdict = verdictOf(rule, measured);
  return {
    rule: rule.id,
    subject,
    level: verdict.level,
    value: measured.value,
    unit: measured.unit,
    interval: measured.interval,
    count: measured.count,
    limits: verdict.limits,
    expected: measured.expected ?? null,
    ceiling: verdict.ceiling,
    remarks: remarks.filter((_, i) => measured.circumstances[i] !== verdict.heldBy),
    explainedBy: null,
    stretches: measured.stretches,
    summary: { id: verdict.side ?? 'fine', values: valuesOf(measured, verdict) },
    chance: measured.chance ?? null,
    charts: measured.charts.map((chart) => chart.id),
  };
}

/** What the claim may fill in. The measure's own details give way to the five fixed names. */
function valuesOf(measured: Measured, verdict: Verdict): Finding['summary']['values'] {
  const quantity = (value: number): Quantity => ({ value, unit: measured.unit });
  return {
    ...measured.details,
    value: quantity(measured.value),
    size: quantity(Math.abs(measured.value)),
    low: quantity(measured.interval[0]),
    high: quantity(measured.interval[1]),
    ...(verdict.limit === null ? {} : { limit: quantity(verdict.limit) }),
  };
}

export interface Verdict {
  readonly level: Level;
  readonly side: Side | null;
  /** The number that was passed; within the limits, the nearest one that was not. */
  readonly limit: number | null;
  readonly limits: { readonly [L in Raised]?: EffectiveLimit };
  /** Why the level is lower than the limits alone would make it, and by which circumstance. */
  readonly ceiling: string | null;
  readonly heldBy: string | null;
}

/** The level that a rule gives a measurement: the highest whose limit is passed, held down by ceilings. */
export function verdictOf(
  rule: Pick<Rule, 'limits' | 'ceilings'>,
  measured: Comparable & { readonly circumstances?: readonly string[] | undefined },
): Verdict {
  const limits: { [L in Raised]?: EffectiveLimit } = {};
  let reached: Level = 'none';
  let side: Side | null = null;
  for (const level of raisedLevels) {
    const limit = rule.limits[level];
    const effective = limit === undefined ? null : effectiveLimit(limit, measured);
    if (effective === null) continue;
    limits[level] = effective;
    const beyond = sideBeyond(effective, measured);
    if (beyond === null) continue;
    reached = level;
    side = beyond;
  }
  const present = new Set(measured.circumstances ?? []);
  const lowest = rule.ceilings
    .filter((ceiling) => present.has(ceiling.when))
    .sort((a, b) => rank(a.level) - rank(b.level))[0];
  const held = lowest !== undefined && rank(lowest.level) < rank(reached);
  return {
    level: held ? lowest.level : reached,
    side,
    limit: numberSaid(limits, reached, side, measured),
    limits,
    ceiling: held ? lowest.why : null,
    heldBy: held ? lowest.when : null,
  };
}

/** A level's place among the levels: 0 for none. */
export function rank(level: Level): number {
  return levels.indexOf(level);
}

function numberSaid(
  limits: Verdict['limits'],
  reached: Level,
  side: Side | null,
  { value }: Comparable,
): number | null {
  if (reached !== 'none') {
    const passed = limits[reached];
    return (side === 'above' ? passed?.atLeast : passed?.atMost) ?? null;
  }
  const numbers = Object.values(limits)
    .flatMap((limit) => [limit.atLeast, limit.atMost])
    .filter((number) => number !== null)
    .sort((a, b) => Math.abs(a - value) - Math.abs(b - value));
  return numbers[0] ?? null;
}
