/** The counts of a run as one file, so that pages and rates can be made from it again. */
import { readFileSync, writeFileSync } from 'node:fs';
import type { Plan } from './plan.ts';
import type { RunRecord } from './runs.ts';
import { type Group, groupKey, type RuleCounts, type Tally } from './tally.ts';

/** A run that is over. */
export interface Counted {
  readonly plan: Plan;
  readonly run: RunRecord;
  readonly tally: Tally;
}

type Kept<T> = Omit<T, 'reasons'> & { readonly reasons: readonly (readonly [string, number])[] };
type KeptGroup = Omit<Group, 'byRule'> & {
  readonly byRule: readonly (readonly [string, Kept<RuleCounts>])[];
};
interface File {
  readonly run: RunRecord;
  readonly plan: Plan;
  readonly pairs: Tally['pairs'];
  readonly rows: number;
  readonly groups: readonly KeptGroup[];
}

export function writeCounts(file: string, counted: Counted): void {
  writeFileSync(file, countsText(counted));
}

export function readCounts(file: string): Counted {
  return countedFrom(readFileSync(file, 'utf8'));
}

export function countsText({ plan, run, tally: { groups, pairs, rows } }: Counted): string {
  const kept: File = {
    run,
    plan,
    pairs,
    rows,
    groups: [...groups.values()].map((group) => ({
      ...group,
      byRule: [...group.byRule].map(([rule, counts]) => [
        rule,
        { ...counts, reasons: [...counts.reasons].sort() },
      ]),
    })),
  };
  return `${JSON.stringify(kept)}\n`;
}

export function countedFrom(text: string): Counted {
  const { run, plan, pairs, rows, groups } = JSON.parse(text) as File;
  const restored = groups.map((group): Group => {
    const byRule = group.byRule.map(
      ([rule, counts]) => [rule, { ...counts, reasons: new Map(counts.reasons) }] as const,
    );
    return { ...group, byRule: new Map(byRule) };
  });
  return {
    plan,
    run,
    tally: {
      groups: new Map(restored.map((group) => [groupKey(group.lot, group.strength), group])),
      pairs,
      rows,
    },
  };
}
