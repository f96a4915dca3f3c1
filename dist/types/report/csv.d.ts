import type { Report } from '../types.ts';
type Cell = string | number | null;
/** One row a check: the findings, then the checks that could not be made, which look like no pass. */
export declare function renderCsv(report: Report): string;
/** One line of a table for spreadsheets. */
export declare function csvRow(cells: readonly Cell[]): string;
export {};
