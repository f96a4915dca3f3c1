import { marksOf } from '../../src/event/fingerprint.ts';
import { crossChecks } from '../../src/event.ts';
import type { EventRow, Recording, RuleSet, SharedContent } from '../../src/types.ts';
import { rowOf } from '../event/make.ts';
import type { Submission } from '../make/submission.ts';
import type { Answer } from './row.ts';

/** What comparing a submission with the others of its race says of it; null where it was alone. */
export function comparedInEvent({ primary, others }: Submission, set: RuleSet): Answer | null {
  const rule = set.rules.find(({ measure }) => measure === 'shared-seconds');
  if (others.length === 0 || rule === undefined) return null;
  const rows = [primary, ...others].map(rowWith);
  const event = { name: 'field', race: {}, entries: [], unmatched: [] };
  const { shared } = crossChecks(event, rows, new Map([[null, set]]), []);
  const own = shared.filter(({ a, b }) => [a.number, b.number].includes(rows[0]!.number));
  const nothing: Pick<SharedContent, 'level' | 'seconds'> = { level: 'none', seconds: 0 };
  const most = own.reduce((a, b) => (b.seconds > a.seconds ? b : a), nothing);
  return {
    rule: rule.id,
    subject: 'primary',
    state: 'measured',
    level: most.level,
    value: most.seconds,
    interval: [most.seconds, most.seconds],
    count: primary.time.length,
    declared: null,
    field: null,
    reason: null,
    held: false,
  };
}

function rowWith(recording: Recording, index: number): EventRow {
  const { name: file, sha256 } = recording;
  const kept = { role: 'primary', file, sha256, from: 0, to: 0, device: null, marks: marksOf(recording) };
  return rowOf(String(index + 1), { recordings: [kept] });
}
