/** How numbers and tables stand in the pages of this folder. */
import type { Share } from './bounds.ts';

export function percent(share: number, digits = 1): string {
  return Number.isNaN(share) ? '–' : `${(100 * share).toFixed(digits)} %`;
}

/** A share of which a promise is that it is high, with the least that it may truly be where that is something. */
export function withLeast({ share, lower }: Share, digits = 0): string {
  const least = percent(lower, digits);
  return Number.isNaN(share) || least === percent(0, digits)
    ? percent(share, digits)
    : `${percent(share, digits)} (≥ ${least})`;
}

/** A share of which a promise is that it is low, with the most that it may truly be. */
export function withMost({ share, upper }: Share, digits = 2): string {
  if (Number.isNaN(share)) return percent(share);
  return `${share === 0 ? 'none' : percent(share, digits)} (≤ ${percent(upper, digits)})`;
}

/** With two decimals; what rounds to nought has no sign. */
export function hundredths(value: number): string {
  return (Math.round(100 * value) / 100 + 0).toFixed(2);
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
