import { type Fault, faultsOf, problemsOf } from '../schema.ts';
import type { Decision, EventRecord, EventRow, EventView, Matter, Standing } from '../types.ts';
import schema from './decisions.schema.json' with { type: 'json' };

/** The record of questions, answers and decisions, beside the event file. */
export const decisionsFile = 'decisions.json';

/**
 * Decisions from parsed JSON.
 *
 * @throws AggregateError of Problems `facts-wrong`: everything that is wrong at once
 */
export async function decisionsFrom(value: unknown, where: string): Promise<readonly Decision[]> {
  const faults = await faultsOf(schema, value);
  const decisions = faults.length > 0 ? [] : (value as { decisions: readonly Decision[] }).decisions;
  const all = faults.length > 0 ? faults : decisions.flatMap(incomplete);
  if (all.length > 0) throw new AggregateError(problemsOf(all, 'facts-wrong', where));
  return decisions;
}

/** A decision on record says by whom and why; only an explanation can be taken for granted later on. */
function incomplete(decision: Decision, index: number): Fault[] {
  const path = ['decisions', String(index + 1)];
  const faults: Fault[] = [];
  const { decision: made, by, why, until, due, asked } = decision;
  if (made !== undefined && by === undefined) {
    faults.push({ path, what: 'a decision needs “by”: who decided, by role' });
  }
  if (made !== undefined && why === undefined) faults.push({ path, what: 'a decision needs “why”' });
  if (until !== undefined && made !== 'explained') {
    faults.push({ path, what: '“until” stands only beside the decision “explained”' });
  }
  if (due !== undefined && asked !== undefined && due < asked) {
    faults.push({ path, what: 'the answer is due before the question was sent' });
  }
  return faults;
}

/** The text of the file, the same for the same decisions. */
export function printDecisions(decisions: readonly Decision[]): string {
  return `${JSON.stringify({ decisions }, null, 2)}\n`;
}

/** The list with what is new laid over the entry of the same rider, rule and event. */
export function withDecision(decisions: readonly Decision[], change: Decision): readonly Decision[] {
  const at = decisions.findIndex(
    ({ rider, rule, event }) => rider === change.rider && rule === change.rule && event === change.event,
  );
  if (at < 0) return [...decisions, change];
  return decisions.map((one, index) => (index === at ? { ...one, ...change } : one));
}

/** What is open comes first: what waits for those who decide before what waits for the rider. */
export const standings = [
  'to decide',
  'to ask',
  'asked',
  'decided',
  'explained',
] as const satisfies Standing[];

/**
 * Where each matter of a rider stands: every finding that asks for something and stands by itself, and what
 * is missing. A decision changes no measurement and no grade.
 *
 * @param others rules that only the event as a whole raised about this rider
 */
export function mattersOf(
  row: EventRow,
  event: EventRecord['event'],
  decisions: readonly Decision[],
  others: readonly string[],
): readonly Matter[] {
  const asking = row.findings.filter(({ level, explainedBy }) => level !== 'note' && explainedBy === null);
  const lacking = row.missing.length > 0 || row.state === 'not audited' ? ['missing'] : [];
  const rules = [...new Set([...asking.map(({ rule }) => rule), ...others, ...lacking])];
  return rules
    .map((rule) => {
      const decision = decisionOn(row, rule, event, decisions);
      return { rule, decision, standing: standingOf(decision, event) };
    })
    .sort((a, b) => standings.indexOf(a.standing) - standings.indexOf(b.standing));
}

/** The decision made here, or an explanation accepted at another event that still holds. */
function decisionOn(
  { number, id }: EventRow,
  rule: string,
  event: EventRecord['event'],
  decisions: readonly Decision[],
): Decision | null {
  const about = decisions.filter((one) => one.rule === rule);
  const own = about.find((one) => one.rider === number && (one.event ?? event.name) === event.name);
  if (own !== undefined) return own;
  const day = event.race.start?.slice(0, 10);
  const held = about.find(
    (one) => id !== null && one.id === id && one.until !== undefined && day !== undefined && day <= one.until,
  );
  return held ?? null;
}

function standingOf(decision: Decision | null, { name }: EventRecord['event']): Standing {
  if (decision === null) return 'to ask';
  if (decision.event !== undefined && decision.event !== name) return 'explained';
  if (decision.appeal === 'open') return 'to decide';
  if (decision.decision === 'explained') return 'explained';
  if (decision.decision !== undefined) return 'decided';
  if (decision.answered !== undefined) return 'to decide';
  return decision.asked === undefined ? 'to ask' : 'asked';
}

/** A record with what people did about it. */
export function viewOf(
  record: EventRecord,
  decisions: readonly Decision[],
  changes: EventView['changes'],
): EventView {
  const shared = record.crossChecks?.shared ?? [];
  const raised = ({ number }: EventRow) =>
    shared
      .filter(({ a, b, level }) => level !== 'note' && (a.number === number || b.number === number))
      .map(({ rule }) => rule);
  const matters = record.rows.map(
    (row) => [row.number, mattersOf(row, record.event, decisions, raised(row))] as const,
  );
  return { record, matters: new Map(matters), changes };
}
