import { type Change, type EventRecord, type EventRow, grades } from '../types.ts';

/** What became of each rider since an earlier run, by number. */
export function changesSince(before: EventRecord, now: EventRecord): ReadonlyMap<string, Change> {
  const then = new Map(before.rows.map((row) => [row.number, row]));
  const changes = new Map<string, Change>();
  for (const row of now.rows) {
    const old = then.get(row.number);
    changes.set(row.number, old === undefined ? 'new' : changeOf(old, row));
    then.delete(row.number);
  }
  for (const number of then.keys()) changes.set(number, 'gone');
  return changes;
}

/** By grade, and within a grade by the number of findings of each level. */
function changeOf(before: EventRow, now: EventRow): Change {
  const weights = (row: EventRow) => [
    grades.indexOf(row.grade),
    ...(['refer', 'query', 'note'] as const).map(
      (level) => row.findings.filter((finding) => finding.level === level).length,
    ),
    row.missing.length,
  ];
  const [a, b] = [weights(before), weights(now)];
  const at = a.findIndex((weight, i) => weight !== b[i]);
  if (at < 0) return 'same';
  return b[at]! > a[at]! ? 'worse' : 'better';
}
