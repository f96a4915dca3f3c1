import type { Report } from '../types.ts';
/** What a report states of how it was made: all that it takes to make it again. */
export interface Recorded {
    readonly inputs: Report['inputs'];
    /** Facts in the shape of facts, and not yet checked as facts. */
    readonly settings: Report['settings'];
    readonly rules: Pick<Report['rules'], 'name' | 'sha256'>;
    readonly unreadable: Report['submission']['unreadable'];
    /** Whether past rides were looked at. */
    readonly hadHistory: boolean;
}
/**
 * Reads a report from its JSON text, which may be anybody's.
 *
 * @param file as sentences call it
 * @returns the value as it stands, and the part of it that was checked
 * @throws Problem `report-wrong`: no report, another version's, or one that does not state how it was made
 */
export declare function readReport(text: string, file: string): Promise<{
    whole: unknown;
    recorded: Recorded;
}>;
