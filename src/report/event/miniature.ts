import type {
  EffectiveLimit,
  EventFinding,
  EventNumber,
  EventRecord,
  EventRow,
  FieldRange,
} from '../../types.ts';
import { type Markup, svg } from '../markup.ts';
import { type HonestEnds, honestEnds } from '../words/honest.ts';
import { quantity } from '../words/number.ts';
import { fieldSaid, titleOf } from './words.ts';

const width = 160;
const height = 36;
const middle = 14;
const fieldAt = 29;

/** One number of a submission with what it is to be seen against. */
interface Evidence extends Pick<EventNumber, 'rule' | 'subject' | 'unit' | 'value' | 'interval'> {
  readonly limits: readonly number[];
  readonly honest: HonestEnds | null;
}

/**
 * The weightiest number of a submission on a scale: above with its interval, the limits and where honest
 * submissions lie, below where the field lies. Null when there is no number to show.
 */
export function miniature(record: EventRecord, row: EventRow): Markup | null {
  const evidence = evidenceOf(row);
  if (evidence === null) return null;
  const { rule, subject, unit, value, interval, limits, honest } = evidence;
  const field = fieldOf(record, row, rule, subject);
  if (limits.length === 0 && field === null) return null; // Nothing to see it against.
  const known = [
    value,
    ...interval,
    ...limits,
    ...[honest?.low, honest?.high].filter((end) => typeof end === 'number'),
    ...(field === null ? [] : [field.low, field.high]),
  ];
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const margin = (high - low) * 0.06 || Math.max(Math.abs(high) * 0.2, 1);
  const x = (at: number) => round(4 + ((at - low + margin) / (high - low + 2 * margin)) * (width - 8));
  const from = typeof honest?.low === 'number' ? x(honest.low) : 4;
  const to = typeof honest?.high === 'number' ? x(honest.high) : width - 4;
  const said = `${titleOf(record, rule)}: ${quantity(value, unit)}.${field === null ? '' : ` ${fieldSaid(field)}`}`;
  return svg`<svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${said}"><title>${said}</title>${
    honest !== null &&
    svg`<rect class="honest" x="${from}" y="${middle - 8}" width="${round(to - from)}" height="16"/>`
  }<path class="axis" d="M4 ${middle}H${width - 4}"/>${limits.map(
    (at) => svg`<path class="limit" d="M${x(at)} ${middle - 10}V${middle + 10}"/>`,
  )}<path class="between" d="M${x(interval[0])} ${middle}H${x(interval[1])}"/><circle class="at" cx="${x(value)}" cy="${middle}" r="4"/>${
    field !== null &&
    svg`<path class="field" d="M${x(field.low)} ${fieldAt}H${x(field.high)}"/><path class="middle" d="M${x(field.median)} ${fieldAt - 5}V${fieldAt + 5}"/>`
  }</svg>`;
}

const round = (value: number) => Math.round(value * 10) / 10;

function evidenceOf({ findings, numbers }: EventRow): Evidence | null {
  const finding = findings.find(({ value, explainedBy }) => value !== null && explainedBy === null);
  if (finding !== undefined) return ofFinding(finding);
  const pair = numbers.find(({ subject }) => subject === 'pair');
  return pair === undefined ? null : { ...pair, limits: [], honest: null };
}

function ofFinding({
  rule,
  subject,
  unit,
  value,
  interval,
  limits,
  expected,
}: EventFinding): Evidence | null {
  if (value === null || interval === null) return null;
  const numbers = Object.values(limits).flatMap(({ atLeast, atMost }: EffectiveLimit) => [atLeast, atMost]);
  const honest = expected === null ? null : honestEnds({ limits }, expected);
  return { rule, subject, unit, value, interval, limits: numbers.filter((one) => one !== null), honest };
}

/** Where the field of the rider's category lies in a check. */
export function fieldOf(
  { crossChecks }: EventRecord,
  { category }: EventRow,
  rule: string,
  subject: string,
): FieldRange | null {
  const found = crossChecks?.field.find(
    (one) => one.rule === rule && one.subject === subject && one.category === category,
  );
  return found ?? null;
}
