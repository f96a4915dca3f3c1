/** How numbers and tables stand in the pages of this folder. */
import type { Share } from './bounds.ts';

export function percent(share: number, digits = 1): string {
  return Number.isNaN(share) ? '–' : `${(100 * share).toFixed(digits)} %`;
}

/** A share of which a promise is that it is high, with the least that it may truly be. */
export function withLeast({ share, lower }: Share, digits = 0): string {
  return Number.isNaN(share) ? '–' : `${percent(share, digits)} (≥ ${percent(lower, digits)})`;
}

/** A share of which a promise is that it is low, with the most that it may truly be. */
export function withMost({ share, upper }: Share, digits = 2): string {
  return Number.isNaN(share) ? '–' : `${percent(share, digits)} (≤ ${percent(upper, digits)})`;
}

/** Two figures. */
export function plainNumber(value: number): string {
  return Number(value.toPrecision(2)).toString();
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  return rows.length === 0
    ? ['None in this run.']
    : [
        `| ${head.join(' | ')} |`,
        `|${head.map(() => ' --- |').join('')}`,
        ...rows.map((cells) => `| ${cells.join(' | ')} |`),
      ];
}
