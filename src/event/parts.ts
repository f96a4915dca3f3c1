import { sha256 } from '../math/digest.ts';
import { Problem } from '../problem.ts';
import type { EventRecord, EventRow } from '../types.ts';
import { byNumber } from './entries.ts';

export interface Part {
  readonly index: number;
  readonly of: number;
}

/** More machines than this at once are a mistyped number. */
const mostParts = 1000;

/** "2/5": the second of five. */
export function partFrom(text: string): Part {
  const match = /^(\d{1,4})\/(\d{1,4})$/.exec(text);
  const [index, of] = [Number(match?.[1]), Number(match?.[2])];
  if (match === null || index < 1 || index > of || of > mostParts) {
    throw new Problem({
      code: 'usage',
      what: `“${text}” is no part of an event`,
      where: '--part',
      hint: 'Give its place and how many there are, like 2/5',
    });
  }
  return { index, of };
}

/**
 * The numbers that fall to a part. Dealt in turn in the order of a digest of each number: parts differ by one
 * submission at most, and heavy submissions that stand together in the list are spread.
 */
export async function deal(numbers: readonly string[], { index, of }: Part): Promise<ReadonlySet<string>> {
  const keyed = await Promise.all(
    numbers.map(async (number) => ({ number, key: await sha256(new TextEncoder().encode(number)) })),
  );
  keyed.sort((a, b) => (a.key < b.key ? -1 : 1));
  return new Set(keyed.filter((_, at) => at % of === index - 1).map(({ number }) => number));
}

/** A part as it lies on disk. */
export interface PartFound {
  /** How it is called in a sentence. */
  readonly where: string;
  readonly record: EventRecord;
}

/**
 * The rows of all parts together, in order.
 *
 * @param numbers every number of the event
 * @param plan digest of the event that the parts must belong to
 * @throws AggregateError of Problems: parts that are missing, doubled or of another event, rules or version
 */
export async function joinParts(
  parts: readonly PartFound[],
  numbers: readonly string[],
  plan: string,
): Promise<readonly EventRow[]> {
  const problems: Problem[] = [];
  const refuse = (where: string, what: string, hint: string) =>
    problems.push(new Problem({ code: 'report-wrong', what, where, hint }));
  const again = 'Audit this part anew, with the same event file, rules and version as the others';
  const of = parts.find(({ record }) => record.part !== null)?.record.part?.of ?? 0;
  const seen = new Map<number, string>();
  for (const { where, record } of parts) {
    if (record.part === null) {
      refuse(where, 'this is a whole event, not a part of one', 'Leave it out');
      continue;
    }
    const { index } = record.part;
    const before = seen.get(index);
    if (before !== undefined) refuse(where, `part ${index} is there twice: also ${before}`, 'Name it once');
    seen.set(index, where);
    if (record.part.of !== of)
      refuse(where, `this is one of ${record.part.of} parts, others are of ${of}`, again);
    else if (record.plan !== plan) {
      refuse(where, 'it was made from another event file, other rules or another version', again);
    } else {
      const expected = await deal(numbers, record.part);
      const there = new Set(record.rows.map(({ number }) => number));
      const same = there.size === expected.size && [...expected].every((number) => there.has(number));
      if (!same || record.rows.length !== there.size)
        refuse(where, 'it does not hold its share of the submissions', again);
    }
  }
  const missing = Array.from({ length: of }, (_, i) => i + 1).filter((index) => !seen.has(index));
  if (parts.length === 0 || missing.length > 0) {
    const which =
      missing.length === 0 ? 'no part is named' : `of ${of} parts these are missing: ${missing.join(', ')}`;
    refuse('parts', which, 'Name every part');
  }
  if (problems.length > 0) throw new AggregateError(problems);
  return parts.flatMap(({ record }) => record.rows).sort((a, b) => byNumber(a.number, b.number));
}
