import { medianSorted, quantileSorted } from 'simple-statistics';
import { robustSpread } from '../math/robust-spread.ts';
import type { EventRow, FieldEffect, FieldRange, RepeatedDifference, SharedDevice } from '../types.ts';
import { roundTo } from '../units.ts';
import { byNumber } from './entries.ts';

/** Submissions below which there is no field to speak of. */
const leastField = 8;
/** A finding of at least so many, and of such a share, says more about the event than about its riders. */
const effect = { riders: 5, share: 0.25 } as const;
/** Rules that hold a recording against what the organiser wrote: where they hit everybody, look there, however few. */
const againstTerms: ReadonlySet<string> = new Set(['outside-race-window']);
const leastEverybody = 3;
/** Events at which meters must have differed the same way before it is said. */
const leastEvents = 3;
/** Riders on one serial number from whom on it is the recorder's habit, not one device in many hands. */
const mostHands = 4;

const audited = (rows: readonly EventRow[]) => rows.filter(({ state }) => state === 'audited');

function byCategory(rows: readonly EventRow[]): Map<string | null, EventRow[]> {
  const groups = new Map<string | null, EventRow[]>();
  for (const row of audited(rows)) groups.set(row.category, [...(groups.get(row.category) ?? []), row]);
  return new Map([...groups].sort(([a], [b]) => ((a ?? '') < (b ?? '') ? -1 : 1)));
}

/** Where the field lies in each check: median and reach by category, untouched by a few who lie far off. */
export function fieldRanges(rows: readonly EventRow[]): FieldRange[] {
  return [...byCategory(rows)].flatMap(([category, members]) => {
    const values = new Map<string, { unit: FieldRange['unit']; all: number[] }>();
    for (const { rule, subject, unit, value } of members.flatMap(({ numbers }) => numbers)) {
      const key = JSON.stringify([rule, subject]);
      const held = values.get(key) ?? { unit, all: [] };
      held.all.push(value);
      values.set(key, held);
    }
    return [...values]
      .filter(([, { all }]) => all.length >= leastField)
      .map(([key, { unit, all }]) => {
        const [rule, subject] = JSON.parse(key) as [string, string];
        return { category, rule, subject, unit, count: all.length, ...rangeOf(all, unit) };
      })
      .sort((a, b) => (a.rule + a.subject < b.rule + b.subject ? -1 : 1));
  });
}

function rangeOf(values: readonly number[], unit: FieldRange['unit']) {
  const sorted = [...values].sort((a, b) => a - b);
  const median = medianSorted(sorted);
  return {
    median: roundTo(median, unit),
    low: roundTo(quantileSorted(sorted, 0.05), unit),
    high: roundTo(quantileSorted(sorted, 0.95), unit),
    spread: roundTo(robustSpread(sorted.map((value) => value - median)), unit),
  };
}

/** Findings of so many of a category at once that a cause common to all is likelier than as many causes. */
export function fieldEffects(rows: readonly EventRow[]): FieldEffect[] {
  const ofCategories = effectsOfCategories(rows);
  const all = audited(rows);
  if (all.length < leastEverybody) return ofCategories;
  const ofEverybody = [...ridersByRule(all)]
    .filter(([rule, hit]) => againstTerms.has(rule) && hit.size === all.length)
    .filter(([rule]) => ofCategories.every((one) => one.rule !== rule))
    .map(([rule, hit]) => ({ category: null, rule, of: all.length, riders: [...hit] }));
  return [...ofEverybody, ...ofCategories];
}

/** Who has a finding that asks for something, rule by rule. */
function ridersByRule(rows: readonly EventRow[]): ReadonlyMap<string, ReadonlySet<string>> {
  const riders = new Map<string, Set<string>>();
  for (const row of rows) {
    for (const { rule, level } of row.findings) {
      if (level !== 'note') riders.set(rule, (riders.get(rule) ?? new Set()).add(row.number));
    }
  }
  return riders;
}

function effectsOfCategories(rows: readonly EventRow[]): FieldEffect[] {
  return [...byCategory(rows)].flatMap(([category, members]) =>
    [...ridersByRule(members)]
      .filter(([, hit]) => hit.size >= effect.riders && hit.size >= effect.share * members.length)
      .map(([rule, hit]) => ({ category, rule, of: members.length, riders: [...hit] }))
      .sort((a, b) => (a.rule < b.rule ? -1 : 1)),
  );
}

/** Devices that recorded for two riders at the same time. */
export function sharedDevices(rows: readonly EventRow[]): SharedDevice[] {
  const held = new Map<string, { number: string; sha256: string; from: number; to: number }[]>();
  for (const { number, recordings } of rows) {
    for (const { device, sha256, from, to } of recordings) {
      if (device !== null) held.set(device, [...(held.get(device) ?? []), { number, sha256, from, to }]);
    }
  }
  return [...held]
    .map(([device, spans]) => {
      const riders = spans.filter((one) =>
        spans.some(
          (other) =>
            other.number !== one.number &&
            // One file in two riders' names is told as shared content.
            other.sha256 !== one.sha256 &&
            other.from < one.to &&
            one.from < other.to,
        ),
      );
      return { device, riders: [...new Set(riders.map(({ number }) => number))].sort(byNumber) };
    })
    .filter(({ riders }) => riders.length > 1 && riders.length < mostHands)
    .sort((a, b) => (a.device < b.device ? -1 : 1));
}

/** Rows of another event, by its name. */
export interface EarlierRows {
  readonly event: string;
  readonly rows: readonly EventRow[];
}

/** Differences between a rider's meters that were beyond doubt, in the same direction, at event after event. */
export function repeatedDifferences(
  rows: readonly EventRow[],
  earlier: readonly EarlierRows[],
  rules: readonly string[],
): RepeatedDifference[] {
  return rows.flatMap((row) =>
    row.id === null
      ? []
      : rules.flatMap((rule) => {
          const now = numberOf(row, rule);
          if (now === null || sideOf(now.interval) === 0) return [];
          const before = earlier.flatMap(({ event, rows: theirs }) => {
            const same = theirs.find(({ id }) => id === row.id);
            const then = same === undefined ? null : numberOf(same, rule);
            return then === null ? [] : [{ event, then }];
          });
          const alike = before.every(({ then }) => sideOf(then.interval) === sideOf(now.interval));
          if (!alike || before.length + 1 < leastEvents) return [];
          const values = before.map(({ event, then: { value, unit } }) => ({ event, value, unit }));
          return [{ number: row.number, rule, values }];
        }),
  );
}

function numberOf({ numbers }: EventRow, rule: string) {
  return numbers.find((one) => one.rule === rule && one.subject === 'pair') ?? null;
}

const sideOf = ([low, high]: readonly [number, number]) => (low > 0 ? 1 : high < 0 ? -1 : 0);
