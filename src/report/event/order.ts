import { type EventRow, type EventView, grades, type Matter, standings } from '../../types.ts';

/** A submission and what people have to deal with in it, what is most urgent first. */
export interface Line {
  readonly row: EventRow;
  readonly own: readonly Matter[];
}

/**
 * The submissions in the order in which people want them: what is open first, of what waits for an answer what is
 * due first, then the grade. Equal ones stay in the order of their numbers.
 */
export function inOrder({ record, matters }: EventView): readonly Line[] {
  return record.rows
    .map((row) => {
      const own = matters.get(row.number) ?? [];
      return { row, own, urgency: urgency(own), due: answerDue(own) ?? noDay, gravity: gravity(row) };
    })
    .sort(
      (a, b) => a.urgency - b.urgency || (a.due < b.due ? -1 : a.due > b.due ? 1 : a.gravity - b.gravity),
    );
}

/** Where the most urgent matter stands, as a number to sort by; the highest where there is none. */
export function urgency([first]: readonly Matter[]): number {
  return first === undefined ? standings.length : standings.indexOf(first.standing);
}

/** The grade as a number to sort by, the worst first; what was not audited lacks more than what is incomplete. */
export function gravity({ grade, state }: EventRow): number {
  return state === 'audited' ? -grades.indexOf(grade) : -grades.indexOf('incomplete') - 0.5;
}

/** After every day. */
const noDay = '~';

/** The day on which the first answer is due that has not come; null where none is awaited. */
export function answerDue(own: readonly Matter[]): string | null {
  const days = own.flatMap(({ standing, decision }) =>
    standing === 'overdue' || standing === 'asked' ? (decision?.due ?? []) : [],
  );
  return days.sort()[0] ?? null;
}
