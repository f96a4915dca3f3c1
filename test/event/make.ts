import type { EventRecord, EventRow } from '../../src/types.ts';

/** A row with what a test does not care about filled in. */
export function rowOf(number: string, more: Partial<EventRow> = {}): EventRow {
  return {
    number,
    name: null,
    id: null,
    category: null,
    place: null,
    state: 'audited',
    why: null,
    grade: 'clear',
    reach: { judged: 20, notApplicable: 10, failed: 0 },
    missing: [],
    findings: [],
    numbers: [],
    recordings: [],
    report: `reports/rider-${number}`,
    ...more,
  };
}

export function recordOf(rows: readonly EventRow[], more: Partial<EventRecord> = {}): EventRecord {
  return {
    eventVersion: 1,
    tool: { name: 'wattassay', version: '0.1.0' },
    event: { name: 'Round 1', race: { start: '2026-03-14T19:00:00+01:00' } },
    plan: '0'.repeat(64),
    part: null,
    selected: null,
    rules: [{ folder: null, name: 'shipped', sha256: '0'.repeat(64) }],
    titles: { 'late-drift': { title: 'The difference grows through the ride', family: 'agreement' } },
    rows,
    unmatched: [],
    crossChecks: { shared: [], devices: [], field: [], effects: [], repeated: [] },
    ...more,
  };
}

export const finding = (
  rule: string,
  level: 'note' | 'query' | 'refer',
  value = 12,
): EventRow['findings'][number] => ({
  rule,
  subject: 'pair',
  level,
  value,
  unit: '%',
  interval: [value - 1, value + 1],
  limits: { query: { atLeast: 8, atMost: null, end: 'cautious' } },
  expected: { centre: 0, spread: 2 },
  explainedBy: null,
  claim: 'The difference grows.',
});
