import type { Report } from '../types.ts';
/** One row a check: the findings, then the checks that could not be made, which look like no pass. */
export declare function renderCsv(report: Report): string;
