import type { Report } from '../types.ts';
/**
 * A report fit to publish: codes for names, heart rate and body mass left out of every number, chart and
 * sentence, checksums kept so that it can still be matched with its files. Levels and grade stay.
 */
export declare function redact(report: Report): Report;
