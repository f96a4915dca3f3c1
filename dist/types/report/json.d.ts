import type { Report } from '../types.ts';
/**
 * The report as JSON: keys in the order of the schema, names of free maps sorted, lists of plain values on
 * one line. One report has one text, byte for byte, however the object was put together.
 */
export declare function renderJson(report: Report): string;
