/** What other runs found and RESULTS.md quotes: written by them when they are told to keep it. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

export interface Figures {
  readonly coverage?: {
    readonly date: string;
    readonly commit: string;
    readonly draws: number;
    /** Pairings of a ride and a rule: intervals that held the truth in 92 to 98 of 100 rides, out of all. */
    readonly inside: number;
    /** Those that lie outside beyond what chance explains. */
    readonly outside: number;
    readonly of: number;
    readonly least: { readonly what: string; readonly share: number };
    readonly most: { readonly what: string; readonly share: number };
  };
  readonly realism?: {
    readonly date: string;
    readonly commit: string;
    readonly recordings: number;
    /** Share of ten-minute pieces, real and simulated alike in weight, that the classifier tells rightly. */
    readonly toldApart: number;
    /** Figures of the traces inside the middle 95 % of simulated rides, out of all. */
    readonly inside: number;
    readonly of: number;
    /** Agreement rules that asked about the two halves of one recording. */
    readonly oddAgainstEven: number;
  };
}

export function readFigures(file: string): Figures {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Figures) : {};
}

export function keepFigures(file: string, more: Figures): void {
  writeFileSync(file, `${JSON.stringify({ ...readFigures(file), ...more }, null, 2)}\n`);
}
