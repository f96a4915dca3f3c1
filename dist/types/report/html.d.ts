import type { Report } from '../types.ts';
/** The report as one page that needs nothing else: no network, and for all that it says no script. */
export declare function renderHtml(report: Report): Promise<string>;
