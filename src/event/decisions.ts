import { type Fault, faultsOf, problemsOf } from '../schema.ts';
import {
  type besideRules,
  type Decision,
  type EventRecord,
  type EventRow,
  type EventView,
  type Matter,
  type Standing,
  standings,
} from '../types.ts';
import schema from './decisions.schema.json' with { type: 'json' };
import { byText } from './entries.ts';

type BesideRules = (typeof besideRules)[number];

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
    const hint = 'Add it, on the command line like --by "chief commissaire"';
    faults.push({ path, what: 'a decision needs “by”: who decided, by role', hint });
  }
  if (made !== undefined && why === undefined) {
    const hint = 'Add it, on the command line like --why "The second meter decides."';
    faults.push({ path, what: 'a decision needs “why”: the reason in a few words', hint });
  }
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

/**
 * Where each matter of a rider stands: every finding that asks for something and stands by itself, and what
 * is missing; what is open stands first, and of equals what is due first. A decision changes no measurement and
 * no grade.
 *
 * @param others what only the event as a whole shows about this rider: rules that it raised, a shared device
 * @param today a calendar day: an answer that was due before it is overdue
 */
export function mattersOf(
  row: EventRow,
  event: EventRecord['event'],
  decisions: readonly Decision[],
  others: readonly string[],
  today: string,
): readonly Matter[] {
  const asking = row.findings.filter(({ level, explainedBy }) => level !== 'note' && explainedBy === null);
  const lacking: BesideRules[] = row.missing.length > 0 || row.state === 'not audited' ? ['missing'] : [];
  const rules = [...new Set([...asking.map(({ rule }) => rule), ...others, ...lacking])];
  return (
    rules
      .map((rule) => {
        const about = decisions.filter((one) => one.rule === rule);
        const own = about.find((one) => one.rider === row.number && (one.event ?? event.name) === event.name);
        return { rule, ...(own === undefined ? byEarlier(row, event, about) : byOwn(own, today)) };
      })
      // It is told, and no rule asks about it: whoever is asked is asked by people alone.
      .filter(({ rule, decision }) => rule !== ('shared-device' satisfies BesideRules) || decision !== null)
      .sort(
        (a, b) => standings.indexOf(a.standing) - standings.indexOf(b.standing) || byText(dueOf(a), dueOf(b)),
      )
  );
}

/** The day an answer is due; none comes after all. */
const dueOf = ({ decision }: Matter) => decision?.due ?? '~';

type Stand = Pick<Matter, 'standing' | 'decision'>;

function byOwn(decision: Decision, today: string): Stand {
  const { asked, due, answered, appeal, decision: made } = decision;
  const standing = (): Standing => {
    if (appeal === 'open') return 'to decide';
    if (made === 'explained') return 'explained';
    if (made !== undefined) return 'decided';
    if (answered !== undefined) return 'to decide';
    if (asked === undefined) return 'to ask';
    return due !== undefined && due < today ? 'overdue' : 'asked';
  };
  return { standing: standing(), decision };
}

/** The explanation accepted at another event that holds longest: shown also when it holds no longer. */
function byEarlier(
  { id }: EventRow,
  { name, race }: EventRecord['event'],
  about: readonly Decision[],
): Stand {
  const accepted = about
    .filter((one) => id !== null && one.id === id && (one.event ?? name) !== name && one.until !== undefined)
    .sort((a, b) => byText(b.until!, a.until!));
  const decision = accepted[0] ?? null;
  const day = race.start?.slice(0, 10);
  const holds = decision !== null && day !== undefined && day <= decision.until!;
  return { standing: holds ? 'explained' : 'to ask', decision };
}

/** A record with what people did about it. */
export function viewOf(
  record: EventRecord,
  decisions: readonly Decision[],
  changes: EventView['changes'],
  today: string,
): EventView {
  const { shared = [], devices = [] } = record.crossChecks ?? {};
  const raised = ({ number }: EventRow): string[] => [
    ...shared
      .filter(({ a, b, level }) => level !== 'note' && (a.number === number || b.number === number))
      .map(({ rule }) => rule),
    ...(devices.some(({ riders }) => riders.includes(number)) ? ['shared-device' satisfies BesideRules] : []),
  ];
  const matters = record.rows.map(
    (row) => [row.number, mattersOf(row, record.event, decisions, raised(row), today)] as const,
  );
  return { record, matters: new Map(matters), changes, today };
}
