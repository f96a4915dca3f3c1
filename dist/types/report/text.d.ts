import type { Report } from '../types.ts';
export interface TextOptions {
    /** Columns of the terminal. */
    readonly width: number;
    readonly colour: boolean;
    /** Plain ASCII for terminals that know nothing else. */
    readonly ascii: boolean;
}
/** The report for a terminal: grade and reach first, then what was found, then what could not be checked. */
export declare function renderText(report: Report, options: TextOptions): string;
